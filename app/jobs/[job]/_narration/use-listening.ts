import { useCallback, useEffect, useState } from 'react';
import { z } from 'zod';
import { CallError, call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import type { TakeId, TaskId } from '@/shared/ids';
import { type Task, taskSchema } from '@/shared/tasks';
import { useDesk } from '../_desk/use-record';

const startedSchema = z.looseObject({ task: taskSchema });

export interface Listening {
  /** What waits and what runs, in turn. */
  tasks: readonly Task[];
  /** @param model name of a model file; null leaves the choice */
  start(takes: readonly TakeId[], model: string | null): Promise<void>;
  stop(): Promise<void>;
}

/** Takes that a speech model listens to; how each ended is told in a notice. */
export function useListening(): Listening {
  const { record, change } = useDesk();
  const [asked, setAsked] = useState<readonly TaskId[]>([]);
  const tell = useTell();
  const active = record.tasks;
  useEffect(() => {
    const gone = asked.filter((id) => !active.some((task) => task.id === id));
    if (gone.length === 0) return;
    setAsked((before) => before.filter((id) => !gone.includes(id)));
    for (const id of gone) void tell(id);
  }, [asked, active, tell]);
  const tasks = active.filter((task) => task.kind === 'listen');
  return {
    tasks,
    start: async (takes, model) => {
      for (const take of takes) {
        const path = `/api/takes/${take}/listen`;
        const started = await change('POST', path, model === null ? {} : { model }, startedSchema);
        // What is wrong with one is wrong with all, and has been said.
        if (!started) return;
        setAsked((before) => [...before, started.task.id]);
      }
    },
    stop: async () => {
      for (const task of tasks) await change('DELETE', `/api/tasks/${task.id}`, undefined, taskSchema);
    },
  };
}

function useTell(): (id: TaskId) => Promise<void> {
  const { done, wrong } = useNotices();
  return useCallback(
    async (id) => {
      try {
        const { state, message } = await call('GET', `/api/tasks/${id}`, taskSchema);
        if (state === 'failed') throw new CallError('The take was not listened to.', message ?? '', 503);
        if (state === 'done') done(message ?? 'Listened to the end.');
      } catch (error) {
        wrong(error);
      }
    },
    [done, wrong],
  );
}
