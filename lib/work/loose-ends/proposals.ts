import type { LooseEnd } from '@/shared/loose-ends';
import { type ProposalType, proposalTypes } from '@/shared/narration';
import type { LooseEndFacts } from './facts';
import { sayCount, sayList, sentence } from './say';

const nouns: Record<ProposalType, readonly [one: string, many: string]> = {
  marker: ['marker', 'markers'],
  reading: ['reading', 'readings'],
  'coil-pair': ['pair of ends of a coil', 'pairs of ends of a coil'],
  role: ['role of a conductor', 'roles of conductors'],
  joint: ['joint', 'joints'],
  work: ['piece of work', 'pieces of work'],
  private: ['private word', 'private words'],
  'camera-stop': ['camera stop', 'camera stops'],
};

/** What was heard in the narration and not looked at: one sentence, with what is private apart. */
export function proposalEnds({ proposals, takes, job }: LooseEndFacts): LooseEnd[] {
  if (proposals.length === 0) return [];
  const heardIn = new Set(proposals.map(({ moment }) => moment.takeId));
  const noted = takes.filter(({ id }) => heardIn.has(id)).map(({ createdAt }) => createdAt);
  return [
    {
      id: 'proposals',
      kind: 'proposals',
      sentence: sayProposals(proposals.map(({ type }) => type)),
      since: noted.length > 0 ? Math.min(...noted) : job.createdAt,
      place: { on: 'proposals' },
    },
  ];
}

function sayProposals(types: readonly ProposalType[]): string {
  const counted = proposalTypes.flatMap((type) => {
    const count = types.filter((other) => other === type).length;
    return count === 0 ? [] : [{ type, count, said: sayCount(count, ...nouns[type]) }];
  });
  const open = counted.filter(({ type }) => type !== 'private');
  const secret = counted.find(({ type }) => type === 'private');
  const were = (count: number) => (count === 1 ? 'was' : 'were');
  if (open.length === 0 && secret)
    return `${sentence(secret.said)} heard in the narration ${were(secret.count)} not looked at.`;
  const count = open.reduce((sum, one) => sum + one.count, 0);
  const apart = secret ? `, nor ${were(secret.count)} ${secret.said}` : '';
  return `${sentence(sayList(open.map(({ said }) => said)))} heard in the narration ${were(count)} not looked at${apart}.`;
}
