/** One spelling for signs that look alike: ohm signs, micro signs, minus signs, inch marks; single spaces. */
export function plainLine(line: string): string {
  return line
    .replace(/\u2126/g, 'Ω')
    .replace(/\u03bc/g, 'µ')
    .replace(/[\u2212\u2010\u2011\u2013\u2014]/g, '-')
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
}
