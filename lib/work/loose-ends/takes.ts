import type { LooseEnd } from '@/shared/loose-ends';
import type { LooseEndFacts, TakeFacts } from './facts';
import { quoted, sayCount, sentence } from './say';

/** As many takes are named one by one. */
const mostNamed = 3;

/** Takes in which nothing is marked: each by itself, many in one sentence. */
export function takeEnds({ takes, markers }: LooseEndFacts): LooseEnd[] {
  const marked = new Set(markers.map(({ takeId }) => takeId));
  const bare = takes
    .filter(({ id }) => !marked.has(id))
    .sort((a, b) => a.filmStartMs - b.filmStartMs || (a.id < b.id ? -1 : 1));
  const [first] = bare;
  if (!first) return [];
  if (bare.length <= mostNamed)
    return bare.map((take) => endAt(take, take.id, `Nothing is marked in the take ${quoted(take.name)}.`));
  const count = sentence(sayCount(bare.length, 'take'));
  const many = endAt(first, 'many', `${count} have no marker, the first of them ${quoted(first.name)}.`);
  return [{ ...many, since: Math.min(...bare.map(({ createdAt }) => createdAt)) }];
}

function endAt(take: TakeFacts, about: string, sentence: string): LooseEnd {
  return {
    id: `take without marker:${about}`,
    kind: 'take without marker',
    sentence,
    since: take.createdAt,
    place: { on: 'film', moment: { takeId: take.id, ms: 0 } },
  };
}
