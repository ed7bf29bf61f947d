'use client';

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { changeIdSchema } from '@/shared/ids';
import type { Harness } from '@/shared/jack';
import { type JackView, jackViewSchema } from '@/shared/jack-check';
import { useDesk } from '../_desk/use-record';

const keptSchema = z.object({ change: changeIdSchema, view: jackViewSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** The check as it is thought through now; it is thought through again whenever the job's record changes. */
export function useJack(first: JackView) {
  const { record, change } = useDesk();
  const { wrong } = useNotices();
  const [view, setView] = useState(first);
  const path = `/api/jobs/${record.job.id}/harness`;

  const asked = useRef(0);
  const refresh = useCallback(async () => {
    const turn = ++asked.current;
    const next = await call('GET', path, jackViewSchema);
    if (turn === asked.current) setView(next);
  }, [path]);
  const seen = useRef(record);
  useEffect(() => {
    if (seen.current === record) return;
    seen.current = record;
    void refresh().catch(wrong);
  }, [record, refresh, wrong]);

  return useMemo(
    () => ({
      view,
      /** Whether the harness was kept. */
      keep: async (harness: Harness) => {
        const kept = await change('PUT', path, harness, keptSchema, 'Harness kept');
        if (kept) setView(kept.view);
        return kept !== null;
      },
      remove: () => change('DELETE', path, undefined, goneSchema, 'Harness deleted; its readings stay'),
    }),
    [view, change, path],
  );
}
