import { sayPrice } from '@/lib/work';
import type { WorkItem } from '@/shared/work';
import { sayList, sentence, stopped } from './bases';
import type { ListBlock, SummarySection, TableBlock } from './content';

const list = (mark: ListBlock['mark'], items: string[]): ListBlock => ({ is: 'list', mark, items, more: 0 });

/** What the client wanted, and what came up besides. */
export function askedSection(items: readonly WorkItem[]): SummarySection {
  const of = (origin: WorkItem['origin']) => items.filter((item) => item.origin === origin);
  const lines = [
    ...of('asked').map(({ what }) => sentence(what)),
    ...of('offered').map(({ what, charge }) => `We offered: ${what}${charge === 'free' ? ' (free)' : ''}`),
    ...of('found').map(({ what }) => `Came up at the bench: ${what}`),
  ];
  return {
    id: 'asked',
    title: 'What was asked',
    blocks:
      lines.length > 0 ? [list('dot', lines)] : [{ is: 'words', text: 'No work was written down as asked.' }],
  };
}

export function doneSection(items: readonly WorkItem[]): SummarySection {
  const done = items.filter(({ outcome }) => outcome === 'done').map(({ what }) => sentence(what));
  const none = { is: 'words' as const, text: 'No work is written down as done.' };
  return {
    id: 'done',
    title: 'What was done',
    blocks: [done.length > 0 ? list('tick', done) : none],
  };
}

/** Null where all was done. */
export function notDoneSection(items: readonly WorkItem[]): SummarySection | null {
  const left = items.filter(({ outcome }) => outcome !== 'done').map(sayNotDone);
  if (left.length === 0) return null;
  return { id: 'not done', title: 'What was not done, and why', blocks: [list('dash', left)] };
}

function sayNotDone({ what, why, outcome }: WorkItem): string {
  const because = why ? ` ${stopped(sentence(why))}` : '';
  if (outcome === 'declined') return `${sentence(what)}: declined.${because}`;
  if (outcome === 'open') return `${sentence(what)}: still open when this was written.${because}`;
  return `${sentence(what)}: not done.${because || ' No reason was written down.'}`;
}

/** Null where no price and nothing free is written down. Only work that is done counts towards the total. */
export function priceTable(items: readonly WorkItem[]): TableBlock | null {
  const priced = items.filter(({ outcome, charge, priceMinor }) =>
    outcome === 'done' ? true : charge !== null || priceMinor !== null,
  );
  if (!priced.some(({ charge, priceMinor }) => charge !== null || priceMinor !== null)) return null;
  const rows = doneFirst(priced).map((item) => [
    sentence(item.what),
    chargeNote(item),
    item.outcome === 'done' ? sayCharge(item) : '–',
  ]);
  return {
    is: 'table',
    columns: [
      { head: 'Work', share: 0.46 },
      { head: 'Note', share: 0.36 },
      { head: 'Price', share: 0.18, figures: true },
    ],
    rows,
    more: 0,
    foot: totalsOf(items).map((total) => ['Agreed for what was done', '', total]),
  };
}

function doneFirst(items: readonly WorkItem[]): WorkItem[] {
  return [...items].sort((a, b) => Number(a.outcome !== 'done') - Number(b.outcome !== 'done'));
}

function chargeNote(item: WorkItem): string {
  const { outcome, charge, why } = item;
  const saidCharge = charge === 'free' ? 'free' : `${sayCharge(item)} not counted`;
  if (outcome !== 'done') return `${outcome === 'open' ? 'still open' : outcome}; ${saidCharge}`;
  if (charge !== 'reduced') return '';
  return why ? `reduced: ${why}` : 'reduced price';
}

/** What is free has no price; a price that was never agreed is not made up. */
function sayCharge({ charge, priceMinor, currency }: WorkItem): string {
  if (charge === 'free') return 'free';
  return priceMinor === null || currency === null ? 'no price noted' : sayPrice(priceMinor, currency);
}

/** A total for each currency, in the order in which they first come up. */
function totalsOf(items: readonly WorkItem[]): string[] {
  const totals = new Map<string, number>();
  for (const { outcome, charge, priceMinor, currency } of items) {
    if (outcome !== 'done' || charge === 'free' || priceMinor === null || currency === null) continue;
    totals.set(currency, (totals.get(currency) ?? 0) + priceMinor);
  }
  return [...totals].map(([currency, minor]) => sayPrice(minor, currency));
}

/** What the total leaves out, in a sentence; null where nothing. */
export function unpricedWords(items: readonly WorkItem[]): string | null {
  const unpriced = items.filter(
    ({ outcome, charge, priceMinor }) => outcome === 'done' && charge !== 'free' && priceMinor === null,
  );
  if (unpriced.length === 0) return null;
  const names = unpriced.slice(0, 3).map(({ what }) => what);
  const rest = unpriced.length - names.length;
  const named = sayList(rest > 0 ? [...names, `${rest} more`] : names);
  return `No price is noted for ${named}; the total does not hold ${unpriced.length > 1 ? 'them' : 'it'}.`;
}
