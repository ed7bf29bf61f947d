/** One still for this much film, and never more than fit a strip. */
const spacingMs = 10_000;
const mostStills = 240;

/** Take times at which stills are wanted, evenly spread from the first picture on. */
export function stillTimes(durationMs: number): number[] {
  const count = Math.min(mostStills, Math.max(1, Math.ceil(durationMs / spacingMs)));
  return Array.from({ length: count }, (_, i) => Math.round((durationMs * i) / count));
}

/** Path of a still below the recording's own folder. */
export function stillFileName(ms: number): string {
  return `stills/${ms}.jpg`;
}

export interface Size {
  width: number;
  height: number;
}

/** Size of a picture at most `height` high; even, as 4:2:0 wants it, and never enlarged. */
export function fitHeight(shown: Size, height: number): Size {
  const scale = Math.min(1, height / shown.height);
  return { width: even(shown.width * scale), height: even(shown.height * scale) };
}

function even(size: number): number {
  return Math.max(2, Math.round(size / 2) * 2);
}
