/** How strongly the talk is broken after a word: not at all, a comma or line end, a new clause, a full stop. */
export const STOP = { none: 0, soft: 1, clause: 2, full: 3 } as const;
export type Stop = number;

/** One word of the talk with its own time, interpolated within its line. */
export interface Token {
  /** Lower case, straight apostrophes, no punctuation. `'s` is a word of its own. */
  readonly word: string;
  /** As it stands in the captions, for showing. */
  readonly text: string;
  readonly startMs: number;
  readonly endMs: number;
  /** Index of the line it was said in. */
  readonly line: number;
  readonly stop: Stop;
}

/** Tokens from `from` up to, not including, `to`. */
export interface TokenSpan {
  readonly from: number;
  readonly to: number;
}
