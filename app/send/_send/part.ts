/** What matters of a recording, in milliseconds from its start; null is its end. */
export interface Part {
  startMs: number;
  endMs: number | null;
}

export const wholeRecording: Part = { startMs: 0, endMs: null };

const typed = /^(?:(?:(\d{1,3}):)?(\d{1,3}):)?(\d{1,5})(?:[.,](\d{1,3}))?$/;

/** "1:02:03.5", "2:03" or "123,25" in milliseconds; null where it is no time. */
export function readTypedTime(text: string): number | null {
  const [, hours = '0', minutes = '0', seconds, fraction = ''] = typed.exec(text.trim()) ?? [];
  if (seconds === undefined) return null;
  const whole = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
  return whole * 1000 + Number(fraction.padEnd(3, '0'));
}

/** What is wrong with a part, for a person; null where nothing is. */
export function wrongWith({ startMs, endMs }: Part, durationMs: number | null): string | null {
  if (endMs !== null && endMs <= startMs) return 'It would end before it starts.';
  if (durationMs !== null && startMs >= durationMs) return 'It would start behind the end of the recording.';
  return null;
}

/** How much of the recording a part is, from 0 to 1; null where the length is not known. */
export function shareOf({ startMs, endMs }: Part, durationMs: number | null): number | null {
  if (durationMs === null || durationMs === 0) return null;
  const end = Math.min(endMs ?? durationMs, durationMs);
  return Math.max(0, end - startMs) / durationMs;
}
