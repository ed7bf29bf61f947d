/**
 * Words in the names of folders and files that say nothing about a job: where recordings lie, what they are, which
 * card or camera they came from. *From memory*; a name with any other word counts as a name of its own.
 */
export const plainWords: ReadonlySet<string> = new Set(
  // What it is.
  (
    'video videos movie movies film films clip clips footage recording recordings rec raw media files file take takes ' +
    'tape tapes part parts day days week session sessions shot shots scene reel export exports edit edits proxy ' +
    // Where it lies.
    'dcim private stream avchd bdmv card cards sd cf disk disc drive usb camera cameras cam cams phone tablet mobile ' +
    'backup backups archive archives old older new copy copies unsorted sorted misc various untitled folder folders ' +
    'import imports imported upload uploads download downloads inbox done todo final ' +
    // Whose it all is.
    'bench workshop shop repair repairs job jobs work year month ' +
    // What cameras begin their names with.
    'img mov mvi vid dsc dscn pict mts ' +
    // Small words.
    'the a an and or of for in on at to from with by no nr number'
  ).split(' '),
);

/** Months as they are written in names: English in full and in short. */
export const monthsWritten = [
  ['january', 'jan'],
  ['february', 'feb'],
  ['march', 'mar'],
  ['april', 'apr'],
  ['may'],
  ['june', 'jun'],
  ['july', 'jul'],
  ['august', 'aug'],
  ['september', 'sept', 'sep'],
  ['october', 'oct'],
  ['november', 'nov'],
  ['december', 'dec'],
] as const;
