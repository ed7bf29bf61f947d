import Link from 'next/link';
import { dayInWords, ticketNumber } from '@/app/_parts/words';
import type { Instrument, Job } from '@/shared/jobs';
import styles from './client.module.css';

export function Jobs({ jobs, today }: { jobs: readonly Job[]; today: string }) {
  return (
    <section className={styles.sheet} aria-labelledby="jobs">
      <h2 id="jobs">Jobs</h2>
      {jobs.length === 0 ? (
        <p>No job of theirs yet. Booking one in on the bench, choose this client on its ticket.</p>
      ) : (
        <ul className={styles.jobs}>
          {jobs.map((job) => (
            <li key={job.id} className={styles.job}>
              <span className={styles.number}>{ticketNumber(job.number)}</span>
              <Link href={`/jobs/${job.id}`} prefetch={false} className={styles.jobTitle}>
                {job.title}
              </Link>
              <span className={styles.soft}>{whenItWas(job, today)}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

export function Instruments({ instruments }: { instruments: readonly Instrument[] }) {
  return (
    <section className={styles.sheet} aria-labelledby="instruments">
      <h2 id="instruments">Instruments</h2>
      {instruments.length === 0 ? (
        <p>No instrument of theirs yet. What comes in with a job of theirs stands here.</p>
      ) : (
        <ul className={styles.instruments}>
          {instruments.map((instrument) => (
            <li key={instrument.id} className={styles.instrument}>
              <p className={styles.instrumentName}>{named(instrument)}</p>
              {instrument.serial && (
                <p>
                  Serial <span className="figures">{instrument.serial}</span>
                </p>
              )}
              {instrument.features && <p className={styles.soft}>{instrument.features}</p>}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function whenItWas({ state, receivedOn, collectedOn }: Job, today: string): string {
  return [
    state,
    `received ${dayInWords(receivedOn, today)}`,
    ...(collectedOn === null ? [] : [`collected ${dayInWords(collectedOn, today)}`]),
  ].join(' · ');
}

function named({ type, maker, model }: Instrument): string {
  return [type, maker, model].filter(Boolean).join(', ');
}
