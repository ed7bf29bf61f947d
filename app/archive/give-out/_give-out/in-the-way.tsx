'use client';

import Link from 'next/link';
import { Button } from '@/app/_parts/button';
import { addressOf } from '@/app/_parts/places';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted, ticketNumber } from '@/app/_parts/words';
import type { GiveOutJob } from '@/shared/archive-exports';
import type { Finding } from '@/shared/cut';
import styles from './give-out.module.css';
import type { GiveOut } from './use-give-out';
import { useShownMore } from './use-shown-more';

interface InTheWayProps {
  giveOut: GiveOut;
  jobs: readonly GiveOutJob[];
}

/** Jobs that are held back by private words in their titles and chapters, each word to be decided. */
export function InTheWay({ giveOut, jobs }: InTheWayProps) {
  const held = jobs.filter(({ state }) => state === 'in the way');
  const decided = jobs.filter(({ state, findings }) => state === 'goes out' && findings.length > 0);
  const { shown, more } = useShownMore(held);
  return (
    <section className={styles.section} aria-labelledby="in-the-way">
      <h2 id="in-the-way" tabIndex={-1}>
        What stands in the way
      </h2>
      {held.length === 0 ? (
        <p>Nothing private is written in a title or a chapter that would go out.</p>
      ) : (
        <>
          <p>
            These jobs stay here until each finding is decided: write other words where they stand, or allow
            them on purpose. What you allow is public in the hand-over of the job too.
          </p>
          <ul className={styles.jobs} aria-label="Jobs held back">
            {shown.map((job) => (
              <Held key={job.id} giveOut={giveOut} job={job} />
            ))}
          </ul>
          {more}
        </>
      )}
      {decided.length > 0 && (
        <details>
          <summary className={styles.more}>
            {counted(decided.length, 'job')} with words allowed on purpose
          </summary>
          <ul className={styles.jobs} aria-label="Allowed on purpose">
            {decided.map((job) => (
              <Held key={job.id} giveOut={giveOut} job={job} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Held({ giveOut, job }: { giveOut: GiveOut; job: GiveOutJob }) {
  return (
    <li className={styles.held}>
      <h3>
        <span className="figures">{ticketNumber(job.number)}</span> {job.title}
      </h3>
      <ul className={styles.findings}>
        {job.findings.map((finding) => (
          <FindingLine key={finding.id} giveOut={giveOut} job={job} finding={finding} />
        ))}
      </ul>
    </li>
  );
}

function FindingLine({ giveOut, job, finding }: { giveOut: GiveOut; job: GiveOutJob; finding: Finding }) {
  const { busy, problem, run } = useAttempt();
  const { sentence, words, decision, place } = finding;
  const isOpen = decision === 'open';
  const decide = () =>
    run(async () => {
      await giveOut.decide(job, finding, isOpen ? 'allowed' : 'open');
      document.getElementById('in-the-way')?.focus();
    });
  return (
    <li className={styles.finding} data-decision={decision}>
      <p>
        <strong>{isOpen ? 'To be decided.' : 'Allowed on purpose.'}</strong> {sentence}
      </p>
      <div className={styles.row}>
        <Link href={addressOf(job.id, place)} className={styles.way} aria-label={`Go there: ${words}`}>
          Go there
        </Link>
        <Button
          aria-disabled={busy}
          aria-label={`${isOpen ? 'Allow on purpose' : 'Decide again'}: ${words}`}
          onClick={() => void decide()}
        >
          {isOpen ? 'Allow on purpose' : 'Decide again'}
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </li>
  );
}
