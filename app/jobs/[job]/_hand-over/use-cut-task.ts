'use client';

import { useEffect, useRef, useState } from 'react';
import { type Task, taskSchema } from '@/shared/tasks';

const ended: readonly Task['state'][] = ['done', 'failed', 'cancelled'];

/** Shorter than this tells nothing about the rest. */
const leastSeenMs = 3_000;
const leastPart = 0.02;

export interface FollowedTask {
  task: Task | null;
  /** What is left, reckoned from how far it came since this page looks on; null while that is too little to tell. */
  leftMs: number | null;
}

/**
 * Follows the cut under way by its events, and keeps the last that was heard of it once it has ended.
 * @param now the one under way as the record has it
 * @param onEnd the record is to be asked for again
 */
export function useCutTask(now: Task | null, onEnd: () => void): FollowedTask {
  const [heard, setHeard] = useState<Task | null>(now);
  const [leftMs, setLeftMs] = useState<number | null>(null);
  const tell = useRef(onEnd);
  tell.current = onEnd;
  const id = now?.id ?? null;
  useEffect(() => {
    if (id === null) return;
    let since: { at: number; progress: number } | null = null;
    const events = new EventSource(`/api/tasks/${id}/events`);
    events.addEventListener('task', (event) => {
      const task = taskSchema.parse(JSON.parse(event.data));
      if (task.state === 'running') since ??= { at: Date.now(), progress: task.progress };
      setHeard(task);
      setLeftMs(since && leftOf(since, task.progress, Date.now()));
      if (!ended.includes(task.state)) return;
      events.close();
      tell.current();
    });
    return () => events.close();
  }, [id]);
  // A cut that was just started is known to the record first.
  return { task: now && heard?.id !== now.id ? now : heard, leftMs };
}

function leftOf(since: { at: number; progress: number }, progress: number, nowMs: number): number | null {
  const part = progress - since.progress;
  const tookMs = nowMs - since.at;
  return part >= leastPart && tookMs >= leastSeenMs ? (tookMs / part) * (1 - progress) : null;
}
