import type { Job } from '@/shared/jobs';
import type { LooseEnd } from '@/shared/loose-ends';
import { sayDay } from './say';

/** When a day was over by this machine's clock: milliseconds since 1970-01-01T00:00Z. */
function endOf(day: string): number {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(year, month - 1, date + 1).getTime();
}

/**
 * The promised day gone by while the job is still in the workshop's hands. It is apart from the rest because it comes
 * with the day, not with the record.
 * @param today the day at the workshop, by ISO 8601
 */
export function promiseEnd(job: Pick<Job, 'state' | 'promisedOn'>, today: string): LooseEnd | null {
  const { state, promisedOn } = job;
  const isUnderWay = state === 'booked in' || state === 'on the bench';
  if (!isUnderWay || promisedOn === null || today <= promisedOn) return null;
  return {
    id: 'promise passed',
    kind: 'promise passed',
    sentence: `It was promised for ${sayDay(promisedOn)}, and that day has gone by.`,
    since: endOf(promisedOn),
    place: { on: 'ticket', anchor: 'promisedOn' },
  };
}
