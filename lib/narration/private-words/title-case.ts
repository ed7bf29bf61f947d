const SHORTEST = 4;

/** Whether a text is written With A Capital At Every Longer Word: then a capital makes no word a name. */
export function isTitleCase(text: string): boolean {
  const [, ...more] = text.match(/\p{L}[\p{L}\p{M}]*/gu) ?? [];
  const longer = more.filter((word) => word.length >= SHORTEST);
  return longer.length >= 2 && longer.every((word) => !/^\p{Ll}/u.test(word));
}

/** In small letters, each in its place. */
export function inSmallLetters(text: string): string {
  return [...text]
    .map((character) => {
      const small = character.toLowerCase();
      return small.length === character.length ? small : character;
    })
    .join('');
}
