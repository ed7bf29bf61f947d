'use client';

import { useRouter } from 'next/navigation';
import { useCallback, useEffect, useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { dayAndTime, ticketNumber } from '@/app/_parts/words';
import { changeIdSchema } from '@/shared/ids';
import { type Job, jobSchema } from '@/shared/jobs';
import styles from './bench.module.css';

const binSchema = z.object({ jobs: z.array(jobSchema) });
const restoredSchema = z.object({ change: changeIdSchema });

/** Deleted jobs, and the way back for each. */
export function Bin({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} onClose={onClose} title="Bin">
      <p>A deleted job lies here for 30 days. Recordings are never deleted with a job.</p>
      <BinContents />
    </Dialog>
  );
}

function BinContents() {
  const router = useRouter();
  const notices = useNotices();
  const [jobs, setJobs] = useState<Job[] | null>(null);
  const list = useRef<HTMLUListElement>(null);
  const { busy, problem, run } = useAttempt();
  const load = useCallback(async () => setJobs((await call('GET', '/api/bin', binSchema)).jobs), []);
  useEffect(() => void run(load), [run, load]);
  const putBack = (job: Job) =>
    run(async () => {
      await call('POST', `/api/jobs/${job.id}/restore`, restoredSchema);
      notices.done(`Ticket ${ticketNumber(job.number)} hangs in the rack again`);
      router.refresh();
      await load();
      // The button that was pressed goes with its job.
      list.current?.focus();
    });
  return (
    <>
      {problem !== null && (
        <ProblemNote error={problem}>
          <Button onClick={() => void run(load)}>Look again</Button>
        </ProblemNote>
      )}
      {jobs?.length === 0 && <p>The bin is empty.</p>}
      <ul ref={list} className={styles.bin} tabIndex={-1} aria-label="Deleted jobs" aria-busy={busy}>
        {jobs?.map((job) => (
          <li key={job.id} className={styles.binned}>
            <span className={styles.binnedNumber}>{ticketNumber(job.number)}</span>
            <div className={styles.binnedWords}>
              <p>{job.title}</p>
              {job.deletedAt !== null && <p className={styles.soft}>deleted {dayAndTime(job.deletedAt)}</p>}
            </div>
            <Button
              aria-disabled={busy}
              onClick={() => void putBack(job)}
              aria-label={`Put back ${job.title}`}
            >
              Put back
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}
