import { folded, holdsEveryWord, ticketNumber } from '@/app/_parts/words';
import type { Ticket } from '@/shared/jobs';

/** A ticket in the rack, with when it was last touched in words. */
export type HungTicket = Ticket & { touched: string };

/** The text that a ticket is found by: number, title, instrument and client, folded. */
export function findableText(ticket: Ticket): string {
  const { type, maker, model } = ticket.instrument;
  return folded(
    [ticketNumber(ticket.number), ticket.title, type, maker, model, ticket.client?.name, ticket.client?.alias]
      .filter(Boolean)
      .join(' '),
  );
}

/** The tickets that hold every word of the question, in the order given. */
export function findTickets<T extends { text: string }>(
  tickets: readonly T[],
  question: string,
): readonly T[] {
  const wanted = folded(question).trim();
  return wanted === '' ? tickets : tickets.filter(({ text }) => holdsEveryWord(text, wanted));
}
