import type { Part } from '@/shared/work';
import { basisWords, sentence, stopped } from './bases';
import type { SummarySection } from './content';

const sources = {
  stock: 'from the workshop’s stock',
  client: 'the one you brought',
  instrument: 'from the instrument itself',
} as const;

const fates = { returned: 'goes back to you', kept: 'kept at the workshop' } as const;
const deeds = { fitted: 'fitted', removed: 'taken out', reused: 'put back in' } as const;

/** Null where no part was written down. */
export function partsSection(parts: readonly Part[]): SummarySection | null {
  if (parts.length === 0) return null;
  const isDoubted = parts.some(({ doubt }) => doubt);
  const [last] = isDoubted ? [[{ head: 'In doubt', share: 0.3 }]] : [[]];
  return {
    id: 'parts',
    title: 'Parts',
    blocks: [
      {
        is: 'table',
        columns: [
          { head: 'Part', share: isDoubted ? 0.36 : 0.52 },
          { head: 'What became of it', share: isDoubted ? 0.34 : 0.48 },
          ...(last ?? []),
        ],
        rows: parts.map((part) => [
          sentence(part.what),
          sayDeed(part),
          ...(isDoubted ? [sayDoubt(part)] : []),
        ]),
        more: 0,
        foot: [],
      },
    ],
  };
}

function sayDeed({ deed, source, fate }: Part): string {
  return [deeds[deed], source && sources[source], fate && fates[fate]].filter(Boolean).join(', ');
}

function sayDoubt({ doubt, doubtBasis, evidence }: Part): string {
  if (!doubt) return '';
  const basis = doubtBasis ? ` (${basisWords[doubtBasis]})` : '';
  return `${sentence(stopped(doubt + basis))}${evidence ? ` ${stopped(sentence(evidence))}` : ''}`;
}
