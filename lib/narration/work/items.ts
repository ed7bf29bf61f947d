import type { HeardProposal } from '@/shared/narration';
import type { TokenSpan } from '../words/token';

type Payload = Extract<HeardProposal, { type: 'work' }>['payload'];
export type Outcome = Payload['outcome'];
export type Origin = Payload['origin'];
export type Charge = Payload['charge'];

/** One piece of work as the talk goes on: where it was promised, and what became of it. */
export interface WorkItem {
  readonly description: string;
  readonly stems: readonly string[];
  readonly origin: Origin;
  charge: Charge;
  readonly promised: TokenSpan | null;
  readonly outcomes: Set<Outcome>;
}

/** The items of a talk, found again by the words they share. */
export class WorkItems {
  readonly list: WorkItem[] = [];

  add(item: WorkItem): WorkItem {
    this.list.push(item);
    return item;
  }

  /** The item that shares most words; later ones before earlier ones. */
  matching(stems: readonly string[], fits: (item: WorkItem) => boolean = () => true): WorkItem | null {
    let best: { item: WorkItem; shared: number } | null = null;
    for (const item of this.list) {
      const shared = item.stems.filter((stem) => stems.includes(stem)).length;
      if (shared > 0 && fits(item) && shared >= (best?.shared ?? 0)) best = { item, shared };
    }
    return best?.item ?? null;
  }

  last(fits: (item: WorkItem) => boolean): WorkItem | null {
    return this.list.findLast(fits) ?? null;
  }
}

export const isSettled = (item: WorkItem): boolean =>
  item.outcomes.has('done') || item.outcomes.has('not done') || item.outcomes.has('declined');
