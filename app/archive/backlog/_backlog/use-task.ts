'use client';

import { useEffect, useRef, useState } from 'react';
import { type Task, taskSchema } from '@/shared/tasks';

/** Whether a task still waits or runs. */
export function isUnderWay(task: Task | null): task is Task {
  return task?.state === 'queued' || task?.state === 'running';
}

/**
 * Follows a task by its events.
 * @param now the task as the page was told
 * @param onEnd the page is to be told anew
 */
export function useTask(now: Task, onEnd: () => void): Task {
  const [heard, setHeard] = useState(now);
  const tell = useRef(onEnd);
  tell.current = onEnd;
  const { id } = now;
  useEffect(() => {
    const events = new EventSource(`/api/tasks/${id}/events`);
    events.addEventListener('task', (event) => {
      const task = taskSchema.parse(JSON.parse(event.data));
      setHeard(task);
      if (isUnderWay(task)) return;
      events.close();
      tell.current();
    });
    return () => events.close();
  }, [id]);
  return heard.id === id ? heard : now;
}
