'use client';

import { useMemo } from 'react';
import { Button } from '@/app/_parts/button';
import { filmTimeOf, layOut, shortTime } from '@/lib/film';
import { sayReading } from '@/lib/readings';
import { sameSubject } from '@/lib/wiring';
import { useReadingChanges } from '../_desk/use-reading-changes';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { BasisWord } from './basis-word';
import styles from './trace.module.css';

/** The readings of this pickup, each with the way to its moment. */
export function TraceReadings({ subject }: { subject: string }) {
  const { record } = useDesk();
  const { remove } = useReadingChanges();
  const player = usePlayer();
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const own = record.readings.filter((reading) => sameSubject(reading.subject, subject));
  if (own.length === 0) return <p className={styles.fine}>Nothing read yet.</p>;
  return (
    <ul className={styles.readings}>
      {own.map((reading) => {
        const at =
          reading.takeId !== null && reading.ms !== null
            ? filmTimeOf(film, { takeId: reading.takeId, ms: reading.ms })
            : null;
        return (
          <li key={reading.id} className={styles.readingLine}>
            {at ? (
              <button type="button" className={styles.toMoment} onClick={() => player?.seek(at.filmMs)}>
                <span className="figures">{shortTime(at.filmMs)}</span>
              </button>
            ) : (
              <span className={styles.fine}>no moment</span>
            )}
            <span className={styles.said}>{sayReading(reading)}</span>
            <BasisWord basis={reading.basis} />
            <Button
              weight="bare"
              onClick={() => void remove(reading)}
              aria-label={`Delete the reading ${sayReading(reading)}`}
            >
              Delete
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
