/** A cue as it stands in a file, before its text is cleaned. `line` counts from 1. */
export interface RawCue {
  readonly startMs: number;
  /** Null where the format gives no end. */
  readonly endMs: number | null;
  readonly rows: readonly string[];
  readonly line: number;
}

/** A line of a file that could not be read. */
export interface UnreadLine {
  readonly line: number;
  readonly content: string;
}

/** What a format's reader found. `unread` holds what it had to leave out, in file order. */
export interface RawCaptions {
  readonly cues: readonly RawCue[];
  readonly unread: readonly UnreadLine[];
}
