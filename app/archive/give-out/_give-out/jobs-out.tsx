'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { folded, holdsEveryWord, ticketNumber } from '@/app/_parts/words';
import type { GiveOutJob } from '@/shared/archive-exports';
import { withTicket } from './chosen';
import styles from './give-out.module.css';
import type { GiveOut } from './use-give-out';
import { useShownMore } from './use-shown-more';

/** Every job of the part that nothing stands in the way of, to be left out by hand where it is not wanted. */
export function JobsOut({ giveOut, jobs }: { giveOut: GiveOut; jobs: readonly GiveOutJob[] }) {
  const [wanted, setWanted] = useState('');
  const free = jobs.filter(({ state }) => state !== 'in the way');
  const found = free.filter((job) => isFound(job, wanted));
  const { shown, more } = useShownMore(found);
  if (free.length === 0) return null;
  return (
    <section className={styles.section} aria-labelledby="jobs-out">
      <h2 id="jobs-out">Job by job</h2>
      <TextField
        label="Find a job of this part"
        type="search"
        value={wanted}
        autoComplete="off"
        onChange={(event) => setWanted(event.currentTarget.value)}
      />
      {found.length === 0 && <p>No job of this part has all of these words on its ticket.</p>}
      <ul className={styles.jobs} aria-label="Jobs of this part">
        {shown.map((job) => (
          <Line key={job.id} giveOut={giveOut} job={job} />
        ))}
      </ul>
      {more}
    </section>
  );
}

function Line({ giveOut: { chosen, choose }, job }: { giveOut: GiveOut; job: GiveOutJob }) {
  const { id, number, title, instrument, day, state } = job;
  const isLeftOut = state === 'left out';
  return (
    <li className={styles.line} data-state={state}>
      <p>
        <span className="figures">{ticketNumber(number)}</span>{' '}
        <Link href={`/jobs/${id}`} prefetch={false}>
          {title}
        </Link>{' '}
        <span className={styles.soft}>
          {instrument} · {day}
          {isLeftOut && ' · left out'}
        </span>
      </p>
      <Button
        aria-label={`${isLeftOut ? 'Take in' : 'Leave out'}: ${ticketNumber(number)} ${title}`}
        onClick={() => choose(withTicket(chosen, number, !isLeftOut))}
      >
        {isLeftOut ? 'Take in' : 'Leave out'}
      </Button>
    </li>
  );
}

function isFound({ number, title, instrument }: GiveOutJob, wanted: string): boolean {
  return holdsEveryWord(folded(`${ticketNumber(number)} ${title} ${instrument}`), folded(wanted.trim()));
}
