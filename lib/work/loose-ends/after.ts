import type { LooseEndFacts, OutcomeFacts, ReadingFacts } from './facts';

/**
 * A total is often read between the joint of the coils and the last joint to the pots, at which the outcome is pinned:
 * within so long before it, in the same take, it still speaks of what was joined. Common practice, no source.
 */
const betweenJointsMs = 120_000;

/** Whether a reading was taken after the wiring: by the film where both are pinned to it, else by when it was noted. */
export function isAfter(
  reading: ReadingFacts,
  outcome: OutcomeFacts,
  takes: LooseEndFacts['takes'],
): boolean {
  const { moment } = reading;
  if (!moment || outcome.takeId === null || outcome.ms === null)
    return reading.createdAt >= outcome.createdAt;
  if (moment.takeId === outcome.takeId) return moment.ms >= outcome.ms - betweenJointsMs;
  const [take, joined] = [moment.takeId, outcome.takeId].map((id) => takes.find((one) => one.id === id));
  return take && joined ? take.filmStartMs >= joined.filmStartMs : reading.createdAt >= outcome.createdAt;
}

/** The one noted last: it stands now. */
export function newest<Noted extends { readonly createdAt: number; readonly id: string }>(
  all: readonly Noted[],
): Noted | null {
  return all.reduce<Noted | null>((last, one) => (last && isNewer(last, one) ? last : one), null);
}

function isNewer(a: { createdAt: number; id: string }, b: { createdAt: number; id: string }): boolean {
  return a.createdAt === b.createdAt ? a.id > b.id : a.createdAt > b.createdAt;
}
