'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import type { Task } from '@/shared/tasks';
import { useDesk } from '../_desk/use-record';
import styles from './cut.module.css';
import { HeldBack } from './held-back';
import { Step } from './section';
import { useCutTask } from './use-cut-task';
import { useHandOver } from './use-hand-over';

const begun = z.unknown();

/** Makes the public cut, shows how far it is, and stops it. */
export function CutMaking() {
  const { view } = useHandOver();
  const { record, refresh } = useDesk();
  const { busy, problem, run } = useAttempt();
  const { task, leftMs } = useCutTask(view.cut.task, () => void refresh().catch(() => undefined));
  const isUnderWay = task !== null && (task.state === 'queued' || task.state === 'running');
  const make = () =>
    run(async () => {
      try {
        await call('POST', `/api/jobs/${record.job.id}/exports/cut`, begun, {});
      } finally {
        // Refused or not: what stands in the way, or is under way, is to be seen.
        await refresh();
      }
    });
  return (
    <Step id="cut-make" title="Make it">
      {isUnderWay ? (
        <UnderWay task={task} leftMs={leftMs} />
      ) : (
        <HeldBack document="cut">
          <Button weight="main" className={styles.make} aria-disabled={busy} onClick={() => void make()}>
            Make the public cut
          </Button>
        </HeldBack>
      )}
      {!isUnderWay && task?.state === 'failed' && (
        <p className={styles.warn} role="alert">
          The cut could not be made. {task.message}
        </p>
      )}
      {!isUnderWay && task?.state === 'cancelled' && (
        <p role="status">Cancelled. Pieces that were finished are used again next time.</p>
      )}
      {!isUnderWay && task?.state === 'done' && <p role="status">The public cut is written; see below.</p>}
      {problem !== null && <ProblemNote error={problem} />}
    </Step>
  );
}

function UnderWay({ task, leftMs }: { task: Task; leftMs: number | null }) {
  const { change } = useDesk();
  return (
    <div className={styles.underWay}>
      <p role="status">{task.state === 'queued' ? 'Waits for its turn' : (task.message ?? 'Under way')}</p>
      <progress value={task.progress} max={1} aria-label="Making the public cut" />
      <p className="figures">{Math.floor(task.progress * 100)} %</p>
      <p className={styles.fine}>{leftMs === null ? '' : `about ${leftInWords(leftMs)} left`}</p>
      <Button onClick={() => void change('DELETE', `/api/tasks/${task.id}`, undefined, begun)}>Cancel</Button>
    </div>
  );
}

/** "40 seconds", "3 minutes": no finer than it can be known. */
function leftInWords(ms: number): string {
  const seconds = Math.max(5, Math.ceil(ms / 5000) * 5);
  return seconds < 90 ? counted(seconds, 'second') : counted(Math.ceil(ms / 60_000), 'minute');
}
