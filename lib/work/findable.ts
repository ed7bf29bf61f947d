import type { Ticket } from '@/shared/jobs';

/** Lower case without accents, so that what is typed finds what was meant. */
export function folded(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}

/** The words of a question, folded; each must be found. */
export function wordsOf(question: string): string[] {
  return folded(question).split(/\s+/).filter(Boolean);
}

type Findable = Pick<Ticket, 'number' | 'title' | 'state' | 'place' | 'instrument' | 'client'>;

/** The text that a ticket is found by: number, title, state, place, instrument, client and what is to be done. */
export function findableText(
  { number, title, state, place, instrument, client }: Findable,
  work: readonly string[],
) {
  const { type, maker, model, serial } = instrument;
  const told = [title, state, place, type, maker, model, serial, client?.name, client?.alias, ...work];
  return folded([String(number).padStart(4, '0'), ...told].filter(Boolean).join(' '));
}
