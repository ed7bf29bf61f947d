import type { Part } from '@/shared/work';
import { type Inline, told } from './blocks';
import type { Making, SectionMaker } from './making';
import { capital, sentence, withTime } from './say';

export const parts: SectionMaker = (making) => {
  const blocks = [
    ...told('I fitted this:', withDeed(making, 'fitted')),
    ...told('I took this out:', withDeed(making, 'removed')),
    ...told('I put this back in:', withDeed(making, 'reused')),
  ];
  return blocks.length === 0 ? null : { blocks };
};

function withDeed(making: Making, deed: Part['deed']): Inline[][] {
  return making.facts.record.parts
    .filter((part) => part.deed === deed)
    .map((part) => {
      const what = [capital(making.say(part.what)), source(making, part), fate(part)]
        .filter(Boolean)
        .join(', ');
      const doubt = doubtOf(making, part);
      return withTime(doubt === '' ? what : `${sentence(what)} ${doubt}`, making.time(part.moment));
    });
}

function source({ alias }: Making, part: Part): string {
  if (part.source === 'client') return `supplied by ${alias?.again ?? 'the client'}`;
  if (part.source === 'stock') return 'from my stock';
  return part.source === 'instrument' && part.deed === 'fitted' ? 'out of the instrument itself' : '';
}

function fate({ fate }: Part): string {
  if (fate === 'returned') return 'which went back with the instrument';
  return fate === 'kept' ? 'which stayed at the workshop' : '';
}

/** "I have a doubt about it, and it is assumed: …" */
function doubtOf({ say }: Making, { doubt, doubtBasis, evidence }: Part): string {
  if (doubt === null || doubt.trim() === '') return '';
  const how = doubtBasis === null ? '' : ` (${doubtBasis})`;
  const rests = evidence === null || evidence.trim() === '' ? '' : ` It rests on “${say(evidence)}”.`;
  return `I have a doubt about it${how}: ${sentence(say(doubt))}${rests}`;
}
