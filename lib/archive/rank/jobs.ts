import type { ArchiveAnswer } from '@/shared/archive';
import { nearMs, type Ranked } from '../rank';

/** A job as it answers a question. */
export interface RankedJob {
  /** Number of the job. */
  job: number;
  /** Share of the question's weight that its best moment meets, 0 to 1. */
  share: number;
  type: string;
  /** Kinds of things and markers that were found in it. */
  kinds: readonly string[];
}

/** Below this share of the question nothing counts as an answer. */
export const answerThreshold = 0.36;

/** Hits of a job that are shown beside the best, and what they must be worth beside it. */
const mostShown = 6;
const leastWorth = 0.55;

/** The moments of a job that are worth showing: each place once, what was written down before what was said there. */
export function clearestMoments(moments: readonly Ranked[]): Ranked[] {
  const [best] = moments;
  if (!best) return [];
  const shown: Ranked[] = [];
  for (const moment of moments) {
    if (shown.length === mostShown || moment.score < best.score * leastWorth) break;
    if (!shown.some((other) => isOneWith(other, moment))) shown.push(moment);
  }
  return shown;
}

/** Narration near something that is shown already says the same. */
function isOneWith({ hit: shown }: Ranked, { hit }: Ranked): boolean {
  if (hit.kind !== 'narration' || !shown.place || !hit.place) return false;
  return shown.place.takeId === hit.place.takeId && Math.abs(shown.place.ms - hit.place.ms) <= nearMs;
}

/** How many answers each filter would leave, among those that were ranked. */
export function countsOf(jobs: readonly RankedJob[]): ArchiveAnswer['filters'] {
  return {
    instruments: counted(jobs.map(({ type }) => type)),
    kinds: counted(jobs.flatMap(({ kinds }) => kinds)),
  };
}

function counted(values: readonly string[]): { value: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts]
    .map(([value, count]) => ({ value, count }))
    .sort((a, b) => b.count - a.count || (a.value < b.value ? -1 : 1));
}
