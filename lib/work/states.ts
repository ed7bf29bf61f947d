import type { Job, JobPatch, JobState } from '@/shared/jobs';
import type { LooseEnd, ReadyLook } from '@/shared/loose-ends';
import { DomainError } from '@/shared/problem';

/** A job with loose ends is set to ready only after they were looked at. */
export class LooseEndsError extends DomainError {
  constructor(looseEnds: readonly LooseEnd[]) {
    super(
      'conflict',
      'There are loose ends to look at first.',
      'Tie them up, or say that you have looked at them: they are kept with the job.',
      { looseEnds },
    );
  }
}

export class DaysError extends DomainError {
  constructor(title: string, field: string, day: string) {
    super('invalid', title, 'Correct one of the two days.', { field, day });
  }
}

type Days = Pick<Job, 'receivedOn' | 'promisedOn' | 'collectedOn'>;

/** @throws DaysError where a job would be promised or collected before it was received */
export function checkDays({ receivedOn, promisedOn, collectedOn }: Days): void {
  if (promisedOn !== null && promisedOn < receivedOn)
    throw new DaysError('It would be promised for a day before it was received.', 'promisedOn', promisedOn);
  if (collectedOn !== null && collectedOn < receivedOn)
    throw new DaysError('It would be collected before it was received.', 'collectedOn', collectedOn);
}

const leavesTheBench: ReadonlySet<JobState> = new Set(['ready', 'collected']);

interface Moved {
  state?: JobState;
  collectedOn?: string | null;
  readyLook?: ReadyLook | null;
}

/**
 * What a new state brings with it: the list that was looked at, the day of collection.
 * @param looseEnds what is loose now
 * @throws LooseEndsError where something is loose that was not looked at
 */
export function moveTo(
  job: Pick<Job, 'state' | 'collectedOn' | 'readyLook'>,
  { state, lookedAt = [], collectedOn }: Pick<JobPatch, 'state' | 'lookedAt' | 'collectedOn'>,
  looseEnds: () => readonly LooseEnd[],
  now: { at: number; day: string },
): Moved {
  if (state === undefined || state === job.state) return {};
  const look = leavesTheBench.has(state) ? lookAt(job, looseEnds(), lookedAt, now.at) : {};
  if (state === 'booked in' || state === 'on the bench') return { state, collectedOn: null, readyLook: null };
  if (state === 'ready') return { state, ...look, collectedOn: null };
  return { state, ...look, collectedOn: collectedOn ?? job.collectedOn ?? now.day };
}

function lookAt(
  job: Pick<Job, 'readyLook'>,
  loose: readonly LooseEnd[],
  lookedAt: readonly string[],
  at: number,
): Moved {
  const seen = new Set([...lookedAt, ...(job.readyLook?.looseEnds.map(({ id }) => id) ?? [])]);
  if (loose.some(({ id }) => !seen.has(id))) throw new LooseEndsError(loose);
  return { readyLook: { at, looseEnds: [...loose] } };
}
