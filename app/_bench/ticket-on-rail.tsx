import Link from 'next/link';
import { memo } from 'react';
import { buttonClass } from '@/app/_parts/button';
import { addressOf, addressOfMoment } from '@/app/_parts/places';
import { counted, dayInWords, promiseInWords, ticketNumber } from '@/app/_parts/words';
import { shortTime } from '@/lib/film';
import { isOverdue } from '@/lib/work';
import type { LooseEnd } from '@/shared/loose-ends';
import type { HungTicket } from './find-tickets';
import { LooseEnds } from './loose-ends';
import styles from './ticket.module.css';

/** Shown width and height of a still, in pixels. */
const still = { width: 96, height: 54 } as const;

interface TicketOnRailProps {
  ticket: HungTicket;
  today: string;
}

/** One job as a paper ticket. The whole ticket leads to the job; what is loose and the last moment lead further. */
export const TicketOnRail = memo(function TicketOnRail({ ticket, today }: TicketOnRailProps) {
  const { instrument, client, lastMoment, stills } = ticket;
  const passed = isOverdue(ticket, today) ? ticket.looseEnds.find(isPassedPromise) : undefined;
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
        <h3 className={styles.title}>
          <Link href={`/jobs/${ticket.id}`} prefetch={false} className={styles.link}>
            {ticket.title}
          </Link>
        </h3>
        <WhenLine ticket={ticket} today={today} passed={passed} />
        <p>{[instrument.type, instrument.maker, instrument.model].filter(Boolean).join(', ')}</p>
        {client && <p className={styles.soft}>for {client.name}</p>}
        <p className={styles.counts}>
          {whatItHolds(ticket).map((words) => (
            <span key={words}>{words}</span>
          ))}
        </p>
        <p className={styles.small}>
          {ticket.demo && <span className={styles.tag}>demonstration</span>}
          {ticket.place !== null && <span>place: {ticket.place}</span>}
          <span>last touched {ticket.touched}</span>
        </p>
      </div>
      {stills.length > 0 && (
        <div className={styles.strip} aria-hidden="true">
          {stills.map((address) => (
            // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
            <img key={address} src={address} alt="" {...still} loading="lazy" decoding="async" />
          ))}
        </div>
      )}
      <LooseEnds
        jobId={ticket.id}
        number={ticket.number}
        looseEnds={ticket.looseEnds.filter((end) => end !== passed)}
      />
      {lastMoment && (
        <div className={styles.further}>
          <Link
            href={addressOfMoment(ticket.id, lastMoment)}
            prefetch={false}
            className={`${buttonClass()} ${styles.inner}`}
          >
            Open at the last moment
            <span className="only-read"> of ticket {ticketNumber(ticket.number)}</span>
          </Link>
        </div>
      )}
      <div className={styles.scale} aria-hidden="true" />
    </li>
  );
});

function isPassedPromise({ kind }: LooseEnd): boolean {
  return kind === 'promise passed';
}

interface WhenLineProps extends TicketOnRailProps {
  /** The loose end that a passed promise is: this line tells it, so it leads to where it is tied up. */
  passed: LooseEnd | undefined;
}

/** When it is due or when it went. */
function WhenLine({ ticket: { id, state, promisedOn, collectedOn }, today, passed }: WhenLineProps) {
  if (state === 'collected' || state === 'returned undone')
    return (
      <p className={styles.when}>
        {state}
        {collectedOn !== null && ` ${dayInWords(collectedOn, today)}`}
      </p>
    );
  if (promisedOn === null) return null;
  const words = promiseInWords(promisedOn, today);
  if (!passed) return <p className={styles.when}>{words}</p>;
  return (
    <p className={styles.when}>
      <Link href={addressOf(id, passed.place)} prefetch={false} className={styles.late}>
        overdue: {words}
      </Link>
    </p>
  );
}

function whatItHolds({ takes, filmMs, markers, readings }: HungTicket): string[] {
  if (takes === 0) return ['no takes yet', ...(readings > 0 ? [counted(readings, 'reading')] : [])];
  return [
    filmMs > 0 ? `film ${shortTime(filmMs)}` : 'length not known',
    counted(takes, 'take'),
    counted(markers, 'marker'),
    counted(readings, 'reading'),
  ];
}
