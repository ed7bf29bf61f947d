import type { RawCaptions, RawCue, UnreadLine } from './cue';
import { parseTimestamp } from './timestamps';

/** `[m:ss] words`, `(h:mm:ss) words`, `m:ss words`, `m:ss - words`. */
const TIMED_LINE = /^\s*[[(]?(\d[\d:.,]*)[\])]?[ \t]*(?:[-–—:|][ \t]+)?(.*)$/;

function timedLine(line: string): { startMs: number; words: string } | null {
  const match = TIMED_LINE.exec(line);
  const startMs = match ? parseTimestamp(match[1] ?? '') : null;
  return startMs === null ? null : { startMs, words: (match?.[2] ?? '').trim() };
}

export const isTimedText = (text: string): boolean =>
  text.split('\n').some((line) => timedLine(line) !== null);

/** Plain timed text. A line without a time goes on from the one before; before the first time it is unread. */
export function readTimedText(text: string): RawCaptions {
  const cues: (RawCue & { rows: string[] })[] = [];
  const unread: UnreadLine[] = [];
  text.split('\n').forEach((line, at) => {
    if (line.trim() === '') return;
    const timed = timedLine(line);
    const before = cues.at(-1);
    if (timed) cues.push({ startMs: timed.startMs, endMs: null, rows: [timed.words], line: at + 1 });
    else if (before) before.rows.push(line.trim());
    else unread.push({ line: at + 1, content: line.trim() });
  });
  return { cues, unread };
}
