import { parseTimingLine, readArrowCues } from './arrow-cues';
import type { RawCaptions } from './cue';

/** SubRip has no header: its mark is a timing line, whatever the file is called. */
export const isSubRip = (text: string): boolean =>
  text.split('\n').some((line) => parseTimingLine(line) !== null);

/** Placement codes that some writers put into the text: `{\an8}`. */
const PLACEMENT = /\{\\[^{}]{0,60}\}/g;

export function readSubRip(text: string): RawCaptions {
  const { cues, unread } = readArrowCues(text.split('\n'), 0, true);
  const plain = (row: string): string => row.replace(PLACEMENT, '');
  return { cues: cues.map((cue) => ({ ...cue, rows: cue.rows.map(plain) })), unread };
}
