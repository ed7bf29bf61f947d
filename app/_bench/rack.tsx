'use client';

import { useRouter } from 'next/navigation';
import { useDeferredValue, useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { counted } from '@/app/_parts/words';
import styles from './bench.module.css';
import { findableText, findTickets, type HungTicket } from './find-tickets';
import { TicketOnRail } from './ticket-on-rail';

/** All tickets, and a line to find one among them. */
export function Rack({ tickets, onBookIn }: { tickets: readonly HungTicket[]; onBookIn: () => void }) {
  const router = useRouter();
  const findBox = useRef<HTMLInputElement>(null);
  const [question, setQuestion] = useState('');
  const asked = useDeferredValue(question);
  const findable = useMemo(
    () => tickets.map((ticket) => ({ ticket, text: findableText(ticket) })),
    [tickets],
  );
  const found = useMemo(() => findTickets(findable, asked), [findable, asked]);
  const goToFirst = (event: React.FormEvent) => {
    event.preventDefault();
    const first = findTickets(findable, question)[0];
    if (first && question.trim() !== '') router.push(`/jobs/${first.ticket.id}`);
  };
  const showAll = () => {
    setQuestion('');
    findBox.current?.focus();
  };
  return (
    <>
      <div className={styles.head}>
        <h1 className={styles.title}>Bench</h1>
        <Button weight="main" onClick={onBookIn}>
          Book in a job
        </Button>
        <search className={styles.find}>
          <form onSubmit={goToFirst}>
            <TextField
              ref={findBox}
              label="Find a ticket"
              hint="By title, instrument, client or number. Enter opens the first."
              type="search"
              value={question}
              onChange={(event) => setQuestion(event.target.value)}
              autoComplete="off"
              spellCheck={false}
            />
          </form>
        </search>
        <p className={styles.count} role="status">
          {asked.trim() === ''
            ? counted(tickets.length, 'ticket')
            : `${found.length} of ${counted(tickets.length, 'ticket')}`}
        </p>
      </div>
      {found.length === 0 ? (
        <div className={styles.nothing}>
          <p>No ticket holds all of these words.</p>
          <Button onClick={showAll}>Show all tickets</Button>
        </div>
      ) : (
        <ul className={styles.rack}>
          {found.map(({ ticket }) => (
            <TicketOnRail key={ticket.id} ticket={ticket} />
          ))}
        </ul>
      )}
    </>
  );
}
