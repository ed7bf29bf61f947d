'use client';

import { useDeferredValue, useMemo } from 'react';
import { rackSchema } from '@/shared/jobs';
import { findable, findTickets, type HungTicket, hung, ticketsAtFirst } from './find-tickets';
import { useAnswer } from './use-answer';

interface Rack {
  /** The first tickets of the rack, in its order. */
  tickets: readonly HungTicket[];
  /** How many there are in all. */
  total: number;
  /** When the server made the page. */
  madeAt: number;
}

export interface Found {
  tickets: readonly HungTicket[];
  /** How many were found in all; null while the server has not told. */
  total: number | null;
  /** The question that was answered here; it may lag behind the one being typed. */
  question: string;
  /** Why the server was not heard; null where nothing is wrong. */
  problem: unknown;
}

export function rackAddress(question: string, limit: number): string {
  return `/api/jobs?${new URLSearchParams({ find: question, limit: String(limit) })}`;
}

/**
 * What is found on the page shows at once. The server, which knows all jobs and what is to be done in each, is asked
 * as well, and its answer stands as soon as it is there.
 * @param limit how many tickets to show
 */
export function useFound({ tickets, total, madeAt }: Rack, question: string, limit: number): Found {
  const asked = useDeferredValue(question);
  const onPage = useMemo(() => tickets.map(findable), [tickets]);
  const here = useMemo(() => findTickets(onPage, asked), [onPage, asked]);
  const isPlain = question.trim() === '';
  const address = isPlain && limit <= ticketsAtFirst ? null : rackAddress(question, limit);
  const answer = useAnswer(address, rackSchema, madeAt);
  const heard = answer?.address === address ? answer : null;
  const told = useMemo(() => heard?.value && asHung(heard.value.jobs, tickets), [heard, tickets]);
  if (heard?.value && told) return { tickets: told, total: heard.value.total, question, problem: null };
  const isWhole = tickets.length === total;
  const known = asked.trim() === '' ? total : here.length;
  return {
    tickets: here,
    total: isWhole || asked.trim() === '' ? known : null,
    question: asked,
    problem: heard?.problem ?? null,
  };
}

/** Tickets that hang on the page already, unchanged, are not drawn anew. */
function asHung(answered: Parameters<typeof hung>[0][], tickets: readonly HungTicket[]): HungTicket[] {
  const known = new Map(tickets.map((ticket) => [ticket.id, ticket]));
  const now = Date.now();
  return answered.map((ticket) => {
    const same = known.get(ticket.id);
    return same?.updatedAt === ticket.updatedAt ? same : hung(ticket, now);
  });
}
