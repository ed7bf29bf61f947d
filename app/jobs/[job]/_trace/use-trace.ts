'use client';

import { useMemo } from 'react';
import { z } from 'zod';
import { changeIdSchema } from '@/shared/ids';
import { outcomeRecordSchema, type TracePatch, type TraceView, traceViewSchema } from '@/shared/traces';
import { useFollowing } from '../_desk/use-following';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';

const patchedSchema = z.object({ change: changeIdSchema, trace: traceViewSchema });
const joinedSchema = z.object({ change: changeIdSchema, outcome: outcomeRecordSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** The trace as it is thought through now; it is thought through again whenever the job's record changes. */
export function useTrace(first: TraceView) {
  const { change } = useDesk();
  const player = usePlayer();
  const { id } = first.worksheet;
  // A reading that was noted, undone or corrected elsewhere changes what follows.
  const [trace] = useFollowing(`/api/traces/${id}`, traceViewSchema, first);

  return useMemo(
    () => ({
      trace,
      patch: (patch: TracePatch, told?: string) =>
        change('PATCH', `/api/traces/${id}`, patch, patchedSchema, told),
      /** Records what was joined, at the moment the film shows. */
      join: (planId: string) => {
        const moment = player?.moment ?? null;
        return change(
          'POST',
          `/api/traces/${id}/outcomes`,
          { planId, takeId: moment?.takeId ?? null, ms: moment?.ms ?? null },
          joinedSchema,
          'Wiring recorded',
        );
      },
      removeOutcome: (outcomeId: string) =>
        change('DELETE', `/api/outcomes/${outcomeId}`, undefined, goneSchema, 'Wiring outcome deleted'),
    }),
    [trace, change, id, player],
  );
}
