'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { useDesk } from './use-record';

/**
 * What the server thinks out from the job's record; asked for again whenever the record changes.
 * @param path its address; @param schema its contract, the same object at every call
 * @returns it as it is now, and how to put in a newer one that came with the answer to a change
 */
export function useFollowing<T>(path: string, schema: z.ZodType<T>, first: T): [T, (next: T) => void] {
  const { record } = useDesk();
  const { wrong } = useNotices();
  const [value, setValue] = useState(first);

  const asked = useRef(0);
  const refresh = useCallback(async () => {
    const turn = ++asked.current;
    const next = await call('GET', path, schema);
    // An older answer that comes in late must not cover a newer one.
    if (turn === asked.current) setValue(next);
  }, [path, schema]);

  const seen = useRef(record);
  useEffect(() => {
    if (seen.current === record) return;
    seen.current = record;
    void refresh().catch(wrong);
  }, [record, refresh, wrong]);

  return [value, setValue];
}
