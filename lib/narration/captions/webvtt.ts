import { readArrowCues } from './arrow-cues';
import type { RawCaptions } from './cue';

/** W3C WebVTT, section 4.1: the file begins with `WEBVTT`, alone or followed by a space or tab. */
export const isWebVtt = (text: string): boolean => /^WEBVTT(?:[ \t\n]|$)/.test(text);

const BLOCK = /^(?:NOTE|STYLE|REGION)(?:\s|$)/;

/** Blanks the header and every NOTE, STYLE and REGION block, so that line numbers stay true. */
function withoutBlocks(lines: readonly string[]): string[] {
  let inside = true;
  return lines.map((line, at) => {
    if (line.trim() === '') inside = false;
    else if (line.includes('-->') && !BLOCK.test(line)) inside = false;
    else if (at > 0 && (lines[at - 1] ?? '').trim() === '' && BLOCK.test(line)) inside = true;
    return inside ? '' : line;
  });
}

/** Reads WebVTT leniently, as W3C WebVTT section 6.1 asks: what cannot be read is passed over and listed. */
export function readWebVtt(text: string): RawCaptions {
  return readArrowCues(withoutBlocks(text.split('\n')), 0, false);
}
