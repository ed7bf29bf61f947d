import { peakLevels } from './peaks';

const perSecond = peakLevels[0];
/** Shorter pauses are breath between words. */
const shortestMs = 1200;
/** A pause lies this far below the loud parts (1/16 is 24 dB). */
const belowLoud = 1 / 16;
/** Clicks up to this long do not end a pause. */
const clickPairs = 2;

export interface Silence {
  startMs: number;
  endMs: number;
}

/**
 * Spans in which nothing is heard, measured against how loud the recording is where it is loud.
 * @param pairs all pairs of the finest level
 */
export function findSilences(pairs: Int8Array): Silence[] {
  const loudness = Uint8Array.from({ length: pairs.length / 2 }, (_, i) =>
    Math.max(-(pairs[i * 2] ?? 0), pairs[i * 2 + 1] ?? 0),
  );
  const limit = quietLimit(loudness);
  const found: Silence[] = [];
  let start = -1;
  let lastQuiet = -1;
  const close = () => {
    if (start >= 0) found.push({ startMs: toMs(start), endMs: toMs(lastQuiet + 1) });
    start = -1;
  };
  loudness.forEach((loud, pair) => {
    if (loud <= limit) {
      if (start < 0) start = pair;
      lastQuiet = pair;
    } else if (pair - lastQuiet > clickPairs) close();
  });
  close();
  return found.filter(({ startMs, endMs }) => endMs - startMs >= shortestMs);
}

/** The loud parts: what only 5 in 100 pairs are louder than. */
function quietLimit(loudness: Uint8Array): number {
  const sorted = loudness.slice().sort();
  const loud = sorted[Math.floor(sorted.length * 0.95)] ?? 0;
  return Math.max(1, Math.round(loud * belowLoud));
}

function toMs(pair: number): number {
  return Math.round((pair * 1000) / perSecond);
}
