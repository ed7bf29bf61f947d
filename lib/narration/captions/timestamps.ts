/** `m:ss`, `mm:ss.mmm`, `h:mm:ss,mmm`: what WebVTT, SubRip and hand-typed times have in common. */
const TIMESTAMP = /^(?:(\d{1,4}):)?(\d{1,3}):(\d{1,2})(?:[.,](\d{1,3}))?$/;

/** Milliseconds of a written time, or null when it is none (minutes or seconds above 59 with hours, say). */
export function parseTimestamp(text: string): number | null {
  const match = TIMESTAMP.exec(text);
  if (!match) return null;
  const [, hours, minutes, seconds, fraction = ''] = match;
  if (Number(seconds) > 59 || (hours !== undefined && Number(minutes) > 59)) return null;
  const whole = (Number(hours ?? 0) * 60 + Number(minutes)) * 60 + Number(seconds);
  return whole * 1000 + Number(fraction.padEnd(3, '0'));
}

/** `hh:mm:ss.mmm` with the given mark before the milliseconds. */
export function formatTimestamp(ms: number, decimalMark: '.' | ','): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const seconds = Math.floor(ms / 1000);
  const fraction = String(ms % 1000).padStart(3, '0');
  const clock = `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  return `${clock}${decimalMark}${fraction}`;
}
