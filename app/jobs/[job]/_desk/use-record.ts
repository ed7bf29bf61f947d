'use client';

import { createContext, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { z } from 'zod';
import { CallError, call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type ChangeId, changeIdSchema, type JobId } from '@/shared/ids';
import { type JobRecord, jobRecordSchema } from '@/shared/jobs';

/** A route's answer to a change: it can be taken back by this id. Work that is started or stopped has none. */
const changedSchema = z.looseObject({ change: changeIdSchema.nullish() });
const stepSchema = z.looseObject({ label: z.string() }).nullable();

export interface RecordDesk {
  record: JobRecord;
  /** Loads the record again. */
  refresh(): Promise<void>;
  /** Makes a change by a route, shows the record as it then is, and offers the way back where a label is given. */
  change<T>(
    method: 'POST' | 'PUT' | 'PATCH' | 'DELETE',
    path: string,
    body: unknown,
    schema: z.ZodType<T>,
    told?: string,
  ): Promise<T | null>;
  undo(): Promise<void>;
  redo(): Promise<void>;
}

const DeskContext = createContext<RecordDesk | null>(null);
export const DeskProvider = DeskContext.Provider;

export function useDesk(): RecordDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useDesk stands inside a DeskProvider.');
  return desk;
}

/** The record of a job as this page sees it, and the one way to change it. */
export function useRecord(jobId: JobId, first: JobRecord): RecordDesk {
  const [record, setRecord] = useState(first);
  const notices = useNotices();
  const asked = useRef(0);

  const refresh = useCallback(async () => {
    const turn = ++asked.current;
    const next = await call('GET', `/api/jobs/${jobId}`, jobRecordSchema);
    // An older answer that comes in late must not cover a newer one.
    if (turn === asked.current) setRecord(next);
  }, [jobId]);

  const attempt = useCallback(
    async <T>(work: () => Promise<T>): Promise<T | null> => {
      try {
        const value = await work();
        await refresh();
        return value;
      } catch (error) {
        notices.wrong(error);
        if (error instanceof CallError && error.status !== 0) await refresh().catch(notices.wrong);
        return null;
      }
    },
    [notices, refresh],
  );

  const takeBack = useCallback(
    (change: ChangeId) => void attempt(() => call('POST', `/api/changes/${change}/undo`, z.unknown())),
    [attempt],
  );

  const change: RecordDesk['change'] = useCallback(
    (method, path, body, schema, told) =>
      attempt(async () => {
        const answer = await call(method, path, z.unknown(), body);
        const { change: id } = changedSchema.parse(answer);
        if (told) notices.done(told, id ? () => takeBack(id) : undefined);
        return schema.parse(answer);
      }),
    [attempt, notices, takeBack],
  );

  const step = useCallback(
    async (way: 'undo' | 'redo', word: 'undone' | 'redone', none: string) => {
      const answer = await attempt(() =>
        call('POST', `/api/jobs/${jobId}/${way}`, z.object({ [word]: stepSchema })),
      );
      const done = answer?.[word];
      if (answer) notices.done(done ? `${way === 'undo' ? 'Undone' : 'Done again'}: ${done.label}` : none);
    },
    [attempt, jobId, notices],
  );
  const undo = useCallback(() => step('undo', 'undone', 'Nothing to undo.'), [step]);
  const redo = useCallback(() => step('redo', 'redone', 'Nothing to do again.'), [step]);

  return useMemo(() => ({ record, refresh, change, undo, redo }), [record, refresh, change, undo, redo]);
}

/** Keeps the record fresh while recordings are being looked at, and when the page comes back into sight. */
export function useFreshRecord({ record, refresh }: RecordDesk): void {
  const busy = record.tasks.length > 0;
  useEffect(() => {
    const quietly = () => void refresh().catch(() => undefined); // The next tick tries again.
    const events = busy ? new EventSource('/api/events') : null;
    let waiting = 0;
    events?.addEventListener('task', () => {
      if (waiting) return;
      waiting = window.setTimeout(() => {
        waiting = 0;
        quietly();
      }, 400);
    });
    const onSight = () => document.visibilityState === 'visible' && quietly();
    document.addEventListener('visibilitychange', onSight);
    return () => {
      events?.close();
      window.clearTimeout(waiting);
      document.removeEventListener('visibilitychange', onSight);
    };
  }, [busy, refresh]);
}
