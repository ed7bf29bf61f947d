import type { CaptionFormat, CaptionsRead, NarrationLine } from '@/shared/narration';
import { decodeCaptionBytes } from './bytes';
import type { RawCaptions, RawCue } from './cue';
import { cueTexts } from './cue-text';
import { CaptionsError } from './errors';
import { unroll } from './rolling';
import { isSubRip, readSubRip } from './subrip';
import { isTimedText, readTimedText } from './timed-text';
import { isWebVtt, readWebVtt } from './webvtt';

interface Format {
  readonly name: CaptionFormat;
  readonly recognise: (text: string) => boolean;
  readonly read: (text: string) => RawCaptions;
  /** Whether `<v Name>` names a speaker. */
  readonly voices: boolean;
}

/** Tried in this order, by what the file holds: its name is not trusted. */
const FORMATS: readonly Format[] = [
  { name: 'webvtt', recognise: isWebVtt, read: readWebVtt, voices: true },
  { name: 'subrip', recognise: isSubRip, read: readSubRip, voices: false },
  { name: 'timed-text', recognise: isTimedText, read: readTimedText, voices: false },
];

/** A line without a written end lasts to the next one, but no longer than slow speech would take. */
const MS_PER_WORD_AT_MOST = 600;
const SHORTEST_LINE_MS = 2000;

function endOf(cue: RawCue, next: RawCue | undefined): number {
  if (cue.endMs !== null) return cue.endMs;
  const words = cue.rows.join(' ').split(/\s+/).length;
  const spoken = cue.startMs + Math.max(SHORTEST_LINE_MS, words * MS_PER_WORD_AT_MOST);
  return next && next.startMs > cue.startMs ? Math.min(spoken, next.startMs) : spoken;
}

/** Several voices in one cue share its time by the length of what each says. */
function linesOf(cue: RawCue, endMs: number, voices: boolean): NarrationLine[] {
  const parts = cueTexts(cue.rows);
  const total = parts.reduce((sum, part) => sum + part.text.length, 0);
  let said = 0;
  return parts.map((part) => {
    const at = (share: number): number => Math.round(cue.startMs + ((endMs - cue.startMs) * share) / total);
    const line = { startMs: at(said), endMs: at(said + part.text.length), text: part.text };
    said += part.text.length;
    return voices && part.voice !== null ? { ...line, voice: part.voice } : line;
  });
}

const byTime = (a: RawCue, b: RawCue): number =>
  a.startMs - b.startMs || (a.endMs ?? a.startMs) - (b.endMs ?? b.startMs);

function firstLine(text: string): { line: number; content: string } {
  const lines = text.split('\n');
  const at = lines.findIndex((line) => line.trim() !== '');
  return { line: Math.max(at, 0) + 1, content: (lines[at] ?? '').trim() };
}

/**
 * Reads a captions file: WebVTT, SubRip or plain timed text, told apart by content. Lines come back in order
 * of time, without markup, without the repeats of rolling captions. Single lines that could not be read are
 * listed in `unread`.
 *
 * @param filenameHint only for the words of the error.
 * @throws CaptionsError when the file holds no timed words; it names the first line that could not be read.
 */
export function readCaptions(bytes: Uint8Array, filenameHint = 'This file'): CaptionsRead {
  const text = decodeCaptionBytes(bytes);
  const format = FORMATS.find((candidate) => candidate.recognise(text));
  const raw: RawCaptions = format?.read(text) ?? { cues: [], unread: [] };
  const cues = [...raw.cues].sort(byTime);
  const lines = cues.flatMap((cue, at) => linesOf(cue, endOf(cue, cues[at + 1]), format?.voices ?? false));
  if (!format || lines.length === 0) {
    const unread = raw.unread[0] ?? firstLine(text);
    throw new CaptionsError(filenameHint, unread.line, unread.content);
  }
  return { format: format.name, lines: unroll(lines), unread: [...raw.unread] };
}
