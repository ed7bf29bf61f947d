'use client';

import { useCallback } from 'react';
import { z } from 'zod';
import { CallError, call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import type { JobPatch } from '@/shared/jobs';
import { useDesk } from '../_desk/use-record';

type Keep = (method: 'POST' | 'PATCH' | 'DELETE', path: string, body?: unknown) => Promise<void>;

/** Makes a change and shows the record as it then is. What the server refuses is thrown, for the field that asked. */
export function useKeep(): Keep {
  const { refresh } = useDesk();
  const { wrong } = useNotices();
  return useCallback(
    async (method, path, body) => {
      try {
        await call(method, path, z.unknown(), body);
      } catch (error) {
        // A refusal often means that something else stands there now: it must be seen before choosing again.
        if (error instanceof CallError && error.status !== 0) await refresh().catch(wrong);
        throw error;
      }
      await refresh().catch(wrong);
    },
    [refresh, wrong],
  );
}

type Fields = Omit<JobPatch, 'was' | 'lookedAt'>;

/** Changes the ticket itself; `was` is what the person saw. */
export function usePatchJob() {
  const { record } = useDesk();
  const keep = useKeep();
  const path = `/api/jobs/${record.job.id}`;
  return useCallback(
    (patch: Fields, was: Fields, lookedAt?: readonly string[]) =>
      keep('PATCH', path, { ...patch, was, ...(lookedAt ? { lookedAt } : {}) }),
    [keep, path],
  );
}
