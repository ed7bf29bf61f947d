import Link from 'next/link';
import { memo } from 'react';
import { counted, ticketNumber } from '@/app/_parts/words';
import { shortTime } from '@/lib/film';
import type { HungTicket } from './find-tickets';
import styles from './ticket.module.css';

/** Shown width and height of a still, in pixels. */
const still = { width: 96, height: 54 } as const;

/** One job as a paper ticket. The whole ticket leads to the job. */
export const TicketOnRail = memo(function TicketOnRail({ ticket }: { ticket: HungTicket }) {
  const { instrument, client } = ticket;
  return (
    <li className={styles.ticket}>
      <div className={styles.stub}>
        <span className={styles.hole} aria-hidden="true" />
        <p className={styles.number}>
          <span className="only-read">Ticket </span>
          {ticketNumber(ticket.number)}
        </p>
      </div>
      <div className={styles.words}>
        <h2 className={styles.title}>
          <Link href={`/jobs/${ticket.id}`} prefetch={false} className={styles.link}>
            {ticket.title}
          </Link>
        </h2>
        <p>{[instrument.type, instrument.maker, instrument.model].filter(Boolean).join(', ')}</p>
        {client && <p className={styles.soft}>for {client.name}</p>}
        <p className={styles.counts}>
          {whatItHolds(ticket).map((words) => (
            <span key={words}>{words}</span>
          ))}
        </p>
        <p className={styles.touched}>
          {ticket.demo && <span className={styles.tag}>demonstration</span>}
          <span>last touched {ticket.touched}</span>
        </p>
      </div>
      {ticket.stills.length > 0 && (
        <div className={styles.strip} aria-hidden="true">
          {ticket.stills.map((address) => (
            // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
            <img key={address} src={address} alt="" {...still} loading="lazy" decoding="async" />
          ))}
        </div>
      )}
      <div className={styles.scale} aria-hidden="true" />
    </li>
  );
});

function whatItHolds({ takes, filmMs, markers, readings }: HungTicket): string[] {
  if (takes === 0) return ['no takes yet', ...(readings > 0 ? [counted(readings, 'reading')] : [])];
  return [
    filmMs > 0 ? `film ${shortTime(filmMs)}` : 'length not known',
    counted(takes, 'take'),
    counted(markers, 'marker'),
    counted(readings, 'reading'),
  ];
}
