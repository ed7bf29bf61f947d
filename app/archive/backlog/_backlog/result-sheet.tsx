'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useId } from 'react';
import { Button, ButtonLink } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted, ticketNumber } from '@/app/_parts/words';
import { type BacklogView, backlogUndoneSchema, type ImportedJob } from '@/shared/backlog';
import styles from './backlog.module.css';
import { TaskProgress } from './task-progress';
import { isUnderWay } from './use-task';
import { dateInWords } from './words';

/** The third step: the import as it goes, and what came of it. */
export function ResultSheet({ view, onEnd }: { view: BacklogView; onEnd: () => void }) {
  const head = useId();
  const { import: task, jobs, problems } = view;
  return (
    <section className={styles.sheet} aria-labelledby={head}>
      <h2 id={head}>3. The import</h2>
      {isUnderWay(task) ? (
        <TaskProgress
          task={task}
          words="Taking older recordings in"
          off="Jobs that are made stay, each with all its takes; the rest can be imported later."
          onEnd={onEnd}
        />
      ) : (
        <p role="status" className={styles.found}>
          {endInWords(view)}
        </p>
      )}
      {problems.length > 0 && !isUnderWay(task) && (
        <div>
          <h3>To look at</h3>
          <ul className={styles.files}>
            {problems.map(({ file, title, detail }) => (
              <li key={file}>
                <span className={styles.file}>{file}</span>
                <span>
                  {title} {detail}
                </span>
              </li>
            ))}
          </ul>
        </div>
      )}
      {jobs.length > 0 && !isUnderWay(task) && (
        <>
          <Made jobs={jobs} />
          <AfterIt view={view} />
        </>
      )}
    </section>
  );
}

function endInWords({ import: task, jobs, undoneAt }: BacklogView): string {
  if (undoneAt !== null) return 'The import was undone. What was worked on since is still here.';
  if (task?.state === 'failed') return task.message ?? 'It could not be finished.';
  if (task?.state === 'cancelled')
    return `It was called off with ${counted(jobs.length, 'job')} made. Import again to go on with the rest.`;
  return task?.message ?? `${counted(jobs.length, 'job')} came of it.`;
}

function Made({ jobs }: { jobs: readonly ImportedJob[] }) {
  return (
    <details open={jobs.length <= 20}>
      <summary>{counted(jobs.length, 'job')}</summary>
      <ul className={styles.files}>
        {jobs.map(({ id, job, day, joined, takes, lines }) => (
          <li key={id}>
            <Link href={`/jobs/${job.id}`}>
              {ticketNumber(job.number)} {job.title}
            </Link>
            <span className={styles.soft}>
              {dateInWords(day)} · {joined ? 'more: ' : ''}
              {counted(takes, 'take')}
              {lines > 0 ? `, ${counted(lines, 'spoken line')}` : ''}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function AfterIt({ view: { id } }: { view: BacklogView }) {
  const router = useRouter();
  const notices = useNotices();
  const { busy, problem, run } = useAttempt();
  const undo = () =>
    run(async () => {
      const { binned, kept } = await call('DELETE', `/api/archive/backlog/${id}`, backlogUndoneSchema);
      const stay = kept.length > 0 ? `; ${counted(kept.length, 'job')} worked on since stay` : '';
      notices.done(`${counted(binned, 'job')} put into the bin${stay}`);
      router.refresh();
    });
  return (
    <>
      <div className={styles.line}>
        <ButtonLink href="/archive" weight="main">
          Ask the archive
        </ButtonLink>
        <Button weight="alarm" onClick={undo} aria-disabled={busy}>
          Undo the import
        </Button>
      </div>
      <p className={styles.soft}>
        Undone, the jobs lie in the bin for 30 days. The recordings stay where they are. Sound and stills of
        what was imported are read when nothing more urgent waits.
      </p>
      {problem !== null && <ProblemNote error={problem} />}
    </>
  );
}
