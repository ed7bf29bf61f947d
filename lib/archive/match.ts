/**
 * A prepared word as FTS5 takes it for plain words, whatever it holds. Words that the tokenizer would part are asked
 * for one by one: the index keeps no places, so it knows no phrases. Null where nothing is left to ask for.
 */
export function matchOf(word: string): string | null {
  // The tokenizer parts words at signs that stand on letters, as in Thai. Letters beyond the basic plane are younger than the tokenizer (Unicode 6.1), which would part words at them.
  const tokens = word.match(/[\p{L}\p{N}]+/gu)?.filter((token) => !/[\u{10000}-\u{10ffff}]/u.test(token));
  if (!tokens || tokens.length === 0) return null;
  return tokens.map((token) => `"${token}"`).join(' AND ');
}

/** One of these words, and all of these tags. Null where there is no word to ask for. */
export function matchAny(words: readonly string[], tags: readonly string[] = []): string | null {
  const each = words.flatMap((word) => matchOf(word) ?? []);
  if (each.length === 0) return null;
  return [`(${each.map((match) => `(${match})`).join(' OR ')})`, ...tags.map((tag) => `"${tag}"`)].join(
    ' AND ',
  );
}
