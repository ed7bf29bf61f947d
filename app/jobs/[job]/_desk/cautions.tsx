'use client';

import { useMemo } from 'react';
import { cautions, cautionsFor } from '@/lib/safety';
import styles from './cautions.module.css';
import { useDesk } from './use-record';

/** What on this job can hurt someone: one line, with the words on touch. Nothing where nothing is known to. */
export function Cautions() {
  const { record } = useDesk();
  const { job, instrument, readings, markers, work, parts } = record;
  const keys = useMemo(
    () =>
      cautionsFor({
        instrumentType: instrument.type,
        readings,
        words: [
          job.title,
          ...[...work, ...parts].map(({ what }) => what),
          ...markers.map(({ title }) => title),
        ],
      }),
    [job.title, instrument.type, readings, markers, work, parts],
  );
  if (keys.length === 0) return null;
  return (
    <details className={styles.strip}>
      <summary>
        <strong>Take care:</strong> {keys.join(' · ')}
      </summary>
      <ul>
        {keys.map((key) => (
          <li key={key}>{cautions[key]}</li>
        ))}
      </ul>
    </details>
  );
}
