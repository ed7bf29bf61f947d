import type { LooseEnd } from '@/shared/loose-ends';
import type { WorkItem } from '@/shared/work';
import type { LooseEndFacts } from './facts';
import { sayWork, sentence } from './say';

const begun: Record<WorkItem['origin'], string> = {
  asked: 'was asked for',
  offered: 'was offered',
  found: 'was found to be needed',
};

/** Work that nobody says the end of, and work not done without a reason. */
export function workEnds({ work }: LooseEndFacts): LooseEnd[] {
  return work.flatMap((item): LooseEnd[] => {
    const said = looseIn(item);
    if (said === null) return [];
    const kind = `${item.origin} and open` as const;
    return [
      {
        // A reason that is missing is another matter than an end that is: who has looked at one has not seen the other.
        id: `${kind}:${item.id}${item.outcome === 'open' ? '' : ':why'}`,
        kind,
        sentence: sentence(`${sayWork(item.what)} ${said}.`),
        since: item.createdAt,
        place: { on: 'ticket', anchor: item.id },
      },
    ];
  });
}

function looseIn({ origin, outcome, why }: Pick<WorkItem, 'origin' | 'outcome' | 'why'>): string | null {
  if (outcome === 'open') return `${begun[origin]} and is neither done nor declined`;
  const isUnexplained = outcome === 'not done' && (why ?? '').trim() === '';
  return isUnexplained ? 'was not done, and nobody says why' : null;
}
