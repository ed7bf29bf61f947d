interface Sample {
  atMs: number;
  bytes: number;
}

/** Long enough to be steady, short enough to follow the network. */
const windowMs = 8_000;

/** How fast bytes go, over the last seconds. */
export class Rate {
  private samples: Sample[] = [];

  /** @returns bytes a second; null until two samples lie far enough apart */
  add(sample: Sample): number | null {
    this.samples = [...this.samples.filter(({ atMs }) => sample.atMs - atMs <= windowMs), sample];
    const first = this.samples[0];
    if (!first || sample.atMs - first.atMs < 500) return null;
    return ((sample.bytes - first.bytes) * 1000) / (sample.atMs - first.atMs);
  }
}

/** "8 s", "3 min", "1 h 20 min": about how long it still takes. */
export function aboutInWords(seconds: number): string {
  if (seconds < 60) return `${Math.max(1, Math.ceil(seconds))} s`;
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
