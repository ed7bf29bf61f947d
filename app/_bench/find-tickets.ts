import { lastTouched } from '@/app/_parts/words';
import { findableText, wordsOf } from '@/lib/work';
import type { Ticket } from '@/shared/jobs';

/** How many tickets the page comes with; the rest is asked for when it is wanted. */
export const ticketsAtFirst = 200;

/** A ticket in the rack, with when it was last touched in words. */
export type HungTicket = Ticket & { touched: string };

export function hung(ticket: Ticket, now: number): HungTicket {
  return { ...ticket, touched: lastTouched(ticket.updatedAt, now) };
}

/** A ticket with the text that it is found by on the page. What is to be done in the job only the server knows. */
export interface Findable {
  ticket: HungTicket;
  text: string;
}

export function findable(ticket: HungTicket): Findable {
  return { ticket, text: findableText(ticket, []) };
}

/** The tickets that hold every word of the question, in the order given. */
export function findTickets(tickets: readonly Findable[], question: string): HungTicket[] {
  const words = wordsOf(question);
  return tickets.filter(({ text }) => words.every((word) => text.includes(word))).map(({ ticket }) => ticket);
}

/**
 * What Enter opens: the ticket of the number that was typed, otherwise the first.
 * @param inOrder as they hang on the page
 */
export function ticketToOpen<T extends Pick<Ticket, 'number'>>(
  inOrder: readonly T[],
  question: string,
): T | undefined {
  const number = /^\d+$/.test(question.trim()) ? Number(question) : null;
  return inOrder.find((ticket) => ticket.number === number) ?? inOrder[0];
}
