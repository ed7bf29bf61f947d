/**
 * A rough key of how a name sounds, enough to see through the spellings that a speech model invents:
 * consonants by group, vowels only at the beginning. Not a published algorithm.
 */
export function soundKey(word: string): string {
  const plain = word
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z]/g, '');
  const spelled = plain
    .replace(/^(?:kn|gn|pn)/, 'n')
    .replace(/^wr/, 'r')
    .replace(/ough|augh/g, 'o')
    .replace(/igh/g, 'i')
    .replace(/ph/g, 'f')
    .replace(/tch|ch|sh|tio|cio/g, 'S')
    .replace(/th/g, 't')
    .replace(/ck|q/g, 'k')
    .replace(/c(?=[eiy])/g, 's')
    .replace(/g(?=[eiy])/g, 'j')
    .replace(/gh|h|w/g, '')
    .replace(/[ckg]/g, 'k')
    .replace(/[sz]/g, 's')
    .replace(/x/g, 'ks')
    .replace(/[bp]/g, 'p')
    .replace(/[dt]/g, 't')
    .replace(/[vf]/g, 'f')
    .replace(/[mn]/g, 'n')
    .replace(/y/g, 'i');
  const first = /^[aeiou]/.test(spelled) ? 'a' : '';
  return first + spelled.replace(/[aeiou]/g, '').replace(/(.)\1+/g, '$1');
}

/** Edit distance (insertions, deletions, substitutions), given up at `most` + 1. */
export function editDistance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (before[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(swap, (before[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1));
    }
    before = row;
  }
  return before[b.length] ?? most + 1;
}
