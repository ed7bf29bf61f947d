import type { JobState, Ticket } from '@/shared/jobs';

const rackGroupNames = ['bench', 'due', 'ready', 'gone'] as const;
export type RackGroupName = (typeof rackGroupNames)[number];

type InRack = Pick<Ticket, 'state' | 'promisedOn' | 'receivedOn' | 'updatedAt' | 'number'>;

export interface RackGroup<T extends InRack> {
  name: RackGroupName;
  tickets: T[];
  /** How many of them are in the workshop's hands past the day they are promised for. */
  overdue: number;
}

const groupOf: Record<JobState, RackGroupName> = {
  'on the bench': 'bench',
  'booked in': 'due',
  ready: 'ready',
  collected: 'gone',
  'returned undone': 'gone',
};

/** Sorts after every day of the calendar. */
const noDay = '9999';

/**
 * The order of the rack:
 *
 * 1. by state: on the bench, then booked in, then ready, then collected and returned undone together;
 * 2. among those booked in, the earliest promised day first, so that the longest overdue leads; those without a
 *    promised day after all that have one; on the same promised day, or without one, the earliest received first;
 * 3. in every other group, and where those days are equal, the one touched last first;
 * 4. where that is equal too, the higher ticket number first.
 *
 * The query of the rack (`rack-store.ts`) sorts by the same rules.
 * @returns below 0 where `a` hangs before `b`
 */
function inRackOrder(a: InRack, b: InRack): number {
  return rankOf(a) - rankOf(b) || byDueDays(a, b) || b.updatedAt - a.updatedAt || b.number - a.number;
}

/**
 * The tickets by what they wait for, each group in the order of the rack; groups without a ticket are left out.
 * @param today ISO 8601 day of the workshop
 */
export function rackGroups<T extends InRack>(tickets: readonly T[], today: string): RackGroup<T>[] {
  const inOrder = [...tickets].sort(inRackOrder);
  return rackGroupNames.flatMap((name) => {
    const here = inOrder.filter(({ state }) => groupOf[state] === name);
    if (here.length === 0) return [];
    return [{ name, tickets: here, overdue: here.filter((ticket) => isOverdue(ticket, today)).length }];
  });
}

/** Whether the workshop has a job in its hands past the day it is promised for. */
export function isOverdue(
  { state, promisedOn }: Pick<InRack, 'state' | 'promisedOn'>,
  today: string,
): boolean {
  const inHands = state === 'on the bench' || state === 'booked in';
  return inHands && promisedOn !== null && promisedOn < today;
}

function rankOf({ state }: InRack): number {
  return rackGroupNames.indexOf(groupOf[state]);
}

function byDueDays(a: InRack, b: InRack): number {
  if (a.state !== 'booked in' || b.state !== 'booked in') return 0;
  return byText(a.promisedOn ?? noDay, b.promisedOn ?? noDay) || byText(a.receivedOn, b.receivedOn);
}

/** ISO 8601 days sort as text; `localeCompare` would ask the machine's language. */
function byText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
