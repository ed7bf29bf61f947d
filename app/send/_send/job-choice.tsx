'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { ticketNumber } from '@/app/_parts/words';
import { rackSchema } from '@/shared/jobs';
import { type ChosenJob, jobsAtOnce } from './chosen-job';
import styles from './send.module.css';

/** A pause in typing, before the bench machine is asked. */
const pauseMs = 200;

interface JobChoiceProps {
  first: readonly ChosenJob[];
  onChoose: (job: ChosenJob) => void;
}

/** Tickets to choose from, and a line to find others by. */
export function JobChoice({ first, onChoose }: JobChoiceProps) {
  const [find, setFind] = useState('');
  const { jobs, problem } = useFoundJobs(find, first);
  return (
    <div className={styles.jobs}>
      <TextField
        label="Find a job"
        type="search"
        hint="By number, title, client or instrument"
        value={find}
        onChange={(event) => setFind(event.target.value)}
      />
      {problem !== null && <ProblemNote error={problem} />}
      {jobs.length === 0 && (
        <p role="status">{find ? 'No ticket holds these words.' : 'No job is booked in yet.'}</p>
      )}
      <ul className={styles.tickets} aria-label="Jobs">
        {jobs.map((job) => (
          <li key={job.id}>
            <Button className={styles.ticket} onClick={() => onChoose(job)}>
              <span className={styles.number}>{ticketNumber(job.number)}</span>
              <span>{job.title}</span>
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function useFoundJobs(find: string, first: readonly ChosenJob[]) {
  const [found, setFound] = useState<readonly ChosenJob[]>(first);
  const [problem, setProblem] = useState<unknown>(null);
  useEffect(() => {
    if (find.trim() === '') {
      setFound(first);
      setProblem(null);
      return;
    }
    let overtaken = false;
    const asking = setTimeout(async () => {
      try {
        const query = new URLSearchParams({ find, limit: String(jobsAtOnce) });
        const { jobs } = await call('GET', `/api/jobs?${query}`, rackSchema);
        if (!overtaken) setFound(jobs);
        if (!overtaken) setProblem(null);
      } catch (error) {
        if (!overtaken) setProblem(error);
      }
    }, pauseMs);
    return () => {
      overtaken = true;
      clearTimeout(asking);
    };
  }, [find, first]);
  return { jobs: found, problem };
}
