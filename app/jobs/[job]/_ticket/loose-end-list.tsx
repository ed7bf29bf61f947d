'use client';

import Link from 'next/link';
import { addressOf } from '@/app/_parts/places';
import { dayAndTime } from '@/app/_parts/words';
import type { LooseEnd, TyingPlace } from '@/shared/loose-ends';
import { useDesk } from '../_desk/use-record';
import styles from './ticket.module.css';

interface LooseEndListProps {
  looseEnds: readonly LooseEnd[];
  /** Leads to a place on this ticket. */
  onAnchor: (anchor: string) => void;
}

const wayWords: Record<TyingPlace['on'], string> = {
  ticket: 'To its line',
  trace: 'To the trace',
  jack: 'To the check at the jack',
  film: 'To its moment',
  sheet: 'To the running sheet',
  proposals: 'To the proposals',
  'hand-over': 'To the hand-over',
};

/** What is loose, since when, and the way to where it is tied up. */
export function LooseEndList({ looseEnds, onAnchor }: LooseEndListProps) {
  const { job } = useDesk().record;
  const go = (event: React.MouseEvent, place: TyingPlace) => {
    if (place.on !== 'ticket') return;
    event.preventDefault();
    onAnchor(place.anchor);
  };
  return (
    <ul className={styles.looseEnds}>
      {looseEnds.map(({ id, sentence, since, place }) => (
        <li key={id} className={styles.looseEnd}>
          <p>
            {sentence}{' '}
            <span className={styles.fine}>
              since <When at={since} />
            </span>
          </p>
          <Link
            href={addressOf(job.id, place)}
            className={styles.way}
            onClick={(event) => go(event, place)}
            aria-label={`${wayWords[place.on]}: ${sentence}`}
          >
            {wayWords[place.on]}
          </Link>
        </li>
      ))}
    </ul>
  );
}

/** By the clock of whoever reads it, which need not be the bench machine’s. */
export function When({ at }: { at: number }) {
  return (
    <time dateTime={new Date(at).toISOString()} suppressHydrationWarning>
      {dayAndTime(at)}
    </time>
  );
}
