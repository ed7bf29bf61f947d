'use client';

import { Button } from '@/app/_parts/button';
import type { NextMeasurement, TraceAnalysis } from '@/shared/wiring';
import type { Pair } from './pair-grid';
import styles from './trace.module.css';

/** The reading that leaves the fewest possibilities, and why. */
export function MeasureNext({ analysis, onPair }: { analysis: TraceAnalysis; onPair: (pair: Pair) => void }) {
  const { next, complete } = analysis;
  return (
    <section className={styles.next} aria-label="What to measure next" aria-live="polite">
      {next ? (
        <>
          <p className={styles.nextWhat}>Next: {inWords(next)}</p>
          <p>{next.reason}</p>
          {next.kind === 'pair' && (
            <p>
              <Button data-next-pair onClick={() => onPair(next.between)}>
                Note this reading
              </Button>
            </p>
          )}
        </>
      ) : (
        <p className={styles.nextWhat}>
          {complete
            ? 'The trace is complete: nothing is left to measure.'
            : 'Settle the contradiction first.'}
        </p>
      )}
      <p className={styles.fine}>
        Ohms only on a circuit without power: unplugged, batteries out, nothing connected at the jack.
      </p>
    </section>
  );
}

function inWords(next: NextMeasurement): string {
  if (next.kind === 'pair') return `resistance between ${next.between[0]} and ${next.between[1]}`;
  return `lay steel on the ${next.row} row, red lead on ${next.leads.red}, black lead on ${next.leads.black}, and watch which way the needle kicks`;
}
