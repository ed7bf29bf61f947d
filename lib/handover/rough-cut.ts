import type { TakeSpan } from '@/shared/cut';
import type { Proposal } from '@/shared/narration-record';
import type { Take } from '@/shared/takes';

/** Shorter silences are a hand at work, not a hole. */
const leastSilenceMs = 4000;
/** What is left standing at either end of a silence, so that a cut breathes. */
const breathMs = 700;
/** After a word that the camera stops, this much may still belong to it. */
const stopTailMs = 1500;

/**
 * Parts that a rough cut leaves out: long silences, and what is filmed after the camera was said to stop. A start to
 * work from, nothing more.
 */
export function roughCutOf(takes: readonly Take[], heard: readonly Proposal[]): TakeSpan[] {
  return takes.flatMap((take) => [...silencesOf(take), ...stopOf(take, heard)]);
}

function silencesOf({ id, hints }: Take): TakeSpan[] {
  return (hints?.silences ?? [])
    .filter(({ startMs, endMs }) => endMs - startMs >= leastSilenceMs)
    .map(({ startMs, endMs }) => ({ takeId: id, fromMs: startMs + breathMs, toMs: endMs - breathMs }));
}

/** Only the last stop of a take ends it; one that was waved off is none. */
function stopOf({ id, durationMs }: Take, heard: readonly Proposal[]): TakeSpan[] {
  const stops = heard.filter(
    ({ takeId, heard: { type }, decision }) =>
      takeId === id && type === 'camera-stop' && decision !== 'dismissed',
  );
  const last = Math.max(-1, ...stops.map(({ endMs }) => endMs));
  const fromMs = last + stopTailMs;
  return last >= 0 && fromMs < durationMs ? [{ takeId: id, fromMs, toMs: durationMs }] : [];
}
