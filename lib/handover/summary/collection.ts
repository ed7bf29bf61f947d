import type { HandoverFacts } from '@/lib/handover/facts';
import type { Job } from '@/shared/jobs';
import { sayList } from './bases';
import type { SummarySection } from './content';
import { dayInWords } from './days';
import { priceTable, unpricedWords } from './work';

/** When it goes home, with what, and for how much. */
export function collectionSection({ record }: HandoverFacts): SummarySection {
  const prices = priceTable(record.work);
  const unpriced = prices && unpricedWords(record.work);
  const { cameWith } = record.job;
  const goesWith =
    cameWith.length > 0
      ? `It came in with: ${sayList(cameWith)}. Please see that this goes home with it.`
      : 'Nothing was noted that came in with it.';
  return {
    id: 'collection',
    title: 'Collection',
    blocks: [
      { is: 'words', text: `${sayWhen(record.job)} ${goesWith}` },
      ...(prices ? [prices] : [{ is: 'words' as const, text: 'No price was written down.' }]),
      ...(unpriced ? [{ is: 'words' as const, text: unpriced, small: true }] : []),
    ],
  };
}

function sayWhen({ state, promisedOn, collectedOn }: Job): string {
  const promised = promisedOn ? `It was promised for ${dayInWords(promisedOn)}.` : 'No day was promised.';
  if (state === 'collected')
    return collectedOn ? `Collected on ${dayInWords(collectedOn)}.` : 'It has been collected.';
  if (state === 'returned undone')
    return `It goes back without the work being done${collectedOn ? `, on ${dayInWords(collectedOn)}` : ''}.`;
  if (state === 'ready') return `It is ready to be collected. ${promised}`;
  return `It is not ready yet. ${promised}`;
}
