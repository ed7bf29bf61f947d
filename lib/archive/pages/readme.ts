/** For whoever puts the set on a web host. */
export const readmeText = `Repairs on film: a set of pages

Open index.html in a browser. To publish it, put all files with their folder on any web host; nothing runs there.
The pages ask for nothing from anywhere else. The search runs in the browser; without scripts the lists are there.

moments.csv, readings.csv, conductors.csv, archive.json hold the same. The tables follow RFC 4180, in UTF-8 with a
byte order mark. Text that a spreadsheet would take for a formula, because it begins with = + - @ or a line break, has
an apostrophe before it; numbers stand as they are. Times are those of the published film.

Names, telephone numbers, addresses, serial numbers and prices were held back. Look through the pages before you
publish them: no rule finds every private word.
`;
