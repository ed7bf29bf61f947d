import type { ArchiveAnswer } from '@/shared/archive';
import type { ClientId } from '@/shared/ids';
import { countedValues } from '../counted';
import { nearMs, type Ranked } from '../rank';
import type { Hit } from './hits';

/** A job as it answers a question. */
export interface RankedJob {
  /** Number of the job. */
  job: number;
  /** Share of the question's weight that its best moment meets, 0 to 1. */
  share: number;
  type: string;
  clientId: ClientId | null;
  /** Kinds of things and markers, and ways of knowing, that would answer by themselves. */
  kinds: readonly string[];
  bases: readonly string[];
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

/** The moments to be shown with one of those that have to be among them: the best of these, where there is one. */
export function withOneOf(shown: Ranked[], all: readonly Ranked[], wanted: ReadonlySet<Hit>): Ranked[] {
  if (wanted.size === 0 || shown.some(({ hit }) => wanted.has(hit))) return shown;
  return [...shown, ...all.filter(({ hit }) => wanted.has(hit)).slice(0, 1)];
}

/**
 * What hits are told apart by, such as their kinds, as far as those of one alone still answer.
 * @param answers whether hits do by themselves
 */
export function answering<T>(
  hits: readonly Hit[],
  tellings: (hit: Hit) => readonly T[],
  answers: (hits: readonly Hit[]) => boolean,
): T[] {
  const apart = new Map<T, Hit[]>();
  for (const hit of hits)
    for (const telling of tellings(hit)) {
      const same = apart.get(telling);
      if (same) same.push(hit);
      else apart.set(telling, [hit]);
    }
  return [...apart].flatMap(([telling, same]) => (answers(same) ? [telling] : []));
}

type Filters = ArchiveAnswer['filters'];

/** How many answers each filter would leave, among those that were ranked. */
export function countsOf(jobs: readonly RankedJob[]): Pick<Filters, 'instruments' | 'kinds' | 'bases'> & {
  clients: Omit<Filters['clients'][number], 'name'>[];
} {
  return {
    instruments: countedValues(jobs.map(({ type }) => type)),
    kinds: countedValues(jobs.flatMap(({ kinds }) => kinds)),
    bases: countedValues(jobs.flatMap(({ bases }) => bases)),
    clients: countedValues(jobs.flatMap(({ clientId }) => clientId ?? [])).map(({ value, count }) => ({
      id: value,
      count,
    })),
  };
}
