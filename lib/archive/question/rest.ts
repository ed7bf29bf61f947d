/** The text of a question, and what of it is still to be understood: the same characters, what is done blanked. */
export interface Rest {
  readonly text: string;
  left: string;
}

export function restOf(text: string): Rest {
  return { text, left: text };
}

/** Blanks a stretch. @returns the words as they were typed */
export function spend(rest: Rest, start: number, end: number): string {
  rest.left = rest.left.slice(0, start) + ' '.repeat(end - start) + rest.left.slice(end);
  return rest.text.slice(start, end);
}

/** Small letters, each character in its place. */
export function lowered(text: string): string {
  return text.replace(/\p{Lu}/gu, (capital) => {
    const small = capital.toLowerCase();
    return small.length === capital.length ? small : capital;
  });
}
