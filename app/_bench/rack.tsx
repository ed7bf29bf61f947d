'use client';

import { useRouter } from 'next/navigation';
import { useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { rackGroups } from '@/lib/work';
import { rackSchema, type Ticket } from '@/shared/jobs';
import styles from './bench.module.css';
import { FindTicket } from './find-ticket';
import { type HungTicket, ticketsAtFirst, ticketToOpen } from './find-tickets';
import { RackGroups } from './rack-groups';
import { type Found, rackAddress, useFound } from './use-found';

interface RackProps {
  /** The first tickets of the rack, in its order. */
  tickets: readonly HungTicket[];
  /** How many there are in all. */
  total: number;
  today: string;
  madeAt: number;
  onBookIn: () => void;
}

/** The tickets by what they wait for, and a line to find one among all. */
export function Rack({ tickets, total, today, madeAt, onBookIn }: RackProps) {
  const router = useRouter();
  const findBox = useRef<HTMLInputElement>(null);
  const [question, setQuestion] = useState('');
  const [limit, setLimit] = useState(ticketsAtFirst);
  const found = useFound({ tickets, total, madeAt }, question, limit);
  const groups = useMemo(() => rackGroups(found.tickets, today), [found.tickets, today]);
  const { problem, run } = useAttempt();
  const isFinding = found.question.trim() !== '';
  const ask = (next: string) => {
    setQuestion(next);
    setLimit(ticketsAtFirst);
  };
  const openFirst = () =>
    run(async () => {
      if (question.trim() === '') return;
      const inOrder = rackGroups<Ticket>(await settledTickets(found, question), today);
      const first = ticketToOpen(
        inOrder.flatMap((group) => group.tickets),
        question,
      );
      if (first) router.push(`/jobs/${first.id}`);
    });
  const wrong = problem ?? found.problem;
  return (
    <>
      <div className={styles.head}>
        <h1 className={styles.title}>Bench</h1>
        <Button weight="main" onClick={onBookIn}>
          Book in a job
        </Button>
        <FindTicket ref={findBox} question={question} onAsk={ask} onOpenFirst={() => void openFirst()} />
        <p className={styles.count} role="status">
          {isFinding ? foundInWords(found) : counted(total, 'ticket')}
        </p>
      </div>
      {wrong !== null && <ProblemNote error={wrong} />}
      {found.tickets.length === 0 && found.total === 0 ? (
        <div className={styles.nothing}>
          <p>No ticket holds all of these words.</p>
          <Button
            onClick={() => {
              ask('');
              findBox.current?.focus();
            }}
          >
            Show all tickets
          </Button>
        </div>
      ) : (
        <RackGroups
          groups={groups}
          today={today}
          isFinding={isFinding}
          more={(found.total ?? found.tickets.length) - found.tickets.length}
          onMore={() => setLimit(limit + ticketsAtFirst)}
        />
      )}
    </>
  );
}

/** What a question finds; where the page does not know it yet, the server is asked and waited for. */
async function settledTickets(found: Found, question: string): Promise<readonly Ticket[]> {
  const isSettled = found.question === question && found.total !== null && found.total > 0;
  if (isSettled) return found.tickets;
  return (await call('GET', rackAddress(question, ticketsAtFirst), rackSchema)).jobs;
}

function foundInWords({ tickets, total }: Found): string {
  if (total === null) return 'Looking …';
  if (tickets.length < total) return `${counted(total, 'ticket')} found, the first ${tickets.length} shown`;
  return `${counted(total, 'ticket')} found`;
}
