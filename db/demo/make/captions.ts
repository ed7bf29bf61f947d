/** Milliseconds as a WebVTT timestamp with hours (W3C WebVTT, section 4.3). */
function timestamp(ms: number): string {
  const part = (value: number, digits: number) => String(Math.floor(value)).padStart(digits, '0');
  return `${part(ms / 3_600_000, 2)}:${part((ms / 60_000) % 60, 2)}:${part((ms / 1000) % 60, 2)}.${part(ms % 1000, 3)}`;
}

/** The spoken lines as a WebVTT file. */
export function toWebVtt(lines: Array<{ startMs: number; endMs: number; text: string }>): string {
  const cues = lines.map(
    (line, i) => `${i + 1}\n${timestamp(line.startMs)} --> ${timestamp(line.endMs)}\n${line.text}\n`,
  );
  return `WEBVTT\n\n${cues.join('\n')}`;
}
