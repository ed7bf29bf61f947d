'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import type { Task } from '@/shared/tasks';
import styles from './backlog.module.css';
import { useTask } from './use-task';

interface TaskProgressProps {
  task: Task;
  /** What is being done: "Looking through the folder". */
  words: string;
  /** What is so when it is called off. */
  off: string;
  onEnd: () => void;
}

/** Long work with its bar, what it is at, and a way to call it off. */
export function TaskProgress({ task: now, words, off, onEnd }: TaskProgressProps) {
  const task = useTask(now, onEnd);
  const { busy, problem, run } = useAttempt();
  const cancel = () => run(async () => void (await call('DELETE', `/api/tasks/${task.id}`, z.unknown())));
  return (
    <div className={styles.working}>
      <p role="status" className={styles.workingWords}>
        {words} …
      </p>
      <progress value={task.progress} max={1} aria-label={words} />
      <p className={styles.at}>{task.message ?? 'It waits for its turn.'}</p>
      <div className={styles.line}>
        <Button onClick={cancel} aria-disabled={busy}>
          Call it off
        </Button>
        <span className={styles.soft}>{off}</span>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}
