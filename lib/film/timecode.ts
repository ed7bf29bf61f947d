/** "0:07", "12:03", "1:02:03": hours only where there are any. Whole seconds, cut off. */
export function shortTime(ms: number): string {
  const { hours, minutes, seconds } = split(ms);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
}

/** "0:07.250": as `shortTime`, to the millisecond. */
export function exactTime(ms: number): string {
  return `${shortTime(ms)}.${String(Math.floor(ms) % 1000).padStart(3, '0')}`;
}

/** "00:00:07.250", as WebVTT writes it (W3C WebVTT, section 4.1, a WebVTT timestamp). */
export function webvttTime(ms: number): string {
  const { hours, minutes, seconds } = split(ms);
  return `${two(hours)}:${two(minutes)}:${two(seconds)}.${String(Math.floor(ms) % 1000).padStart(3, '0')}`;
}

function split(ms: number): { hours: number; minutes: number; seconds: number } {
  const whole = Math.floor(ms / 1000);
  return { hours: Math.floor(whole / 3600), minutes: Math.floor(whole / 60) % 60, seconds: whole % 60 };
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
