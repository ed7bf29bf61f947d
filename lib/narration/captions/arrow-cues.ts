import type { RawCaptions, RawCue, UnreadLine } from './cue';
import { parseTimestamp } from './timestamps';

interface Timing {
  readonly startMs: number;
  readonly endMs: number;
}

/** `start --> end settings`; settings and SubRip's coordinates after the end are left aside. */
export function parseTimingLine(line: string): Timing | null {
  const arrow = line.indexOf('-->');
  if (arrow < 0) return null;
  const startMs = parseTimestamp(line.slice(0, arrow).trim());
  const endMs = parseTimestamp(
    line
      .slice(arrow + 3)
      .trim()
      .split(/\s/, 1)[0] ?? '',
  );
  if (startMs === null || endMs === null) return null;
  return { startMs, endMs: Math.max(startMs, endMs) };
}

const isCounter = (line: string): boolean => /^\s*\d+\s*$/.test(line);

/** The rows of text from `at` to the blank line, the next timing line, or the counter before one. */
function textRows(lines: readonly string[], at: number, counters: boolean): readonly string[] {
  const rows: string[] = [];
  for (let next = at; next < lines.length; next++) {
    const line = lines[next] ?? '';
    if (line.trim() === '' || line.includes('-->')) break;
    if (counters && isCounter(line) && (lines[next + 1] ?? '').includes('-->')) break;
    rows.push(line);
  }
  return rows;
}

/**
 * Cues of the form that WebVTT and SubRip share: an optional name or number, a timing line, rows of text.
 * A line that belongs to no cue goes to `unread`.
 */
export function readArrowCues(lines: readonly string[], from: number, counters: boolean): RawCaptions {
  const cues: RawCue[] = [];
  const unread: UnreadLine[] = [];
  for (let at = from; at < lines.length; at++) {
    const line = lines[at] ?? '';
    if (line.trim() === '') continue;
    const timing = parseTimingLine(line);
    if (timing === null) {
      if (!(lines[at + 1] ?? '').includes('-->')) unread.push({ line: at + 1, content: line.trim() });
      continue;
    }
    const rows = textRows(lines, at + 1, counters);
    cues.push({ ...timing, rows, line: at + 1 });
    at += rows.length;
  }
  return { cues, unread };
}
