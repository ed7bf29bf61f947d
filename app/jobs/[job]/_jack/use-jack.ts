'use client';

import { useMemo } from 'react';
import { z } from 'zod';
import { changeIdSchema } from '@/shared/ids';
import type { Harness } from '@/shared/jack';
import { type JackView, jackViewSchema } from '@/shared/jack-check';
import { useFollowing } from '../_desk/use-following';
import { useDesk } from '../_desk/use-record';

const keptSchema = z.object({ change: changeIdSchema, view: jackViewSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** The check as it is thought through now; it is thought through again whenever the job's record changes. */
export function useJack(first: JackView) {
  const { record, change } = useDesk();
  const path = `/api/jobs/${record.job.id}/harness`;
  const [view, setView] = useFollowing(path, jackViewSchema, first);

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
    [view, setView, change, path],
  );
}
