'use client';

import { createContext, useContext, useEffect, useMemo, useState } from 'react';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { changeIdSchema } from '@/shared/ids';
import type { ProposalType } from '@/shared/narration';
import {
  decidedAllSchema,
  type KeptLine,
  type Narration,
  narrationSchema,
  type Proposal,
  proposalSchema,
} from '@/shared/narration-record';
import { useDesk } from '../_desk/use-record';

const nothing: Narration = { lines: [], proposals: [] };
const NarrationContext = createContext<Narration>(nothing);
export const NarrationProvider = NarrationContext.Provider;

export function useHeard(): Narration {
  return useContext(NarrationContext);
}

/** Spoken lines and proposals of the job; loaded again when the record's stamp says that they changed. */
export function useNarration(): Narration {
  const { record } = useDesk();
  const { wrong } = useNotices();
  const [narration, setNarration] = useState(nothing);
  const { narration: stamp, job } = record;
  useEffect(() => {
    if (stamp === '') return;
    let current = true;
    call('GET', `/api/jobs/${job.id}/narration`, narrationSchema).then(
      (loaded) => current && setNarration(loaded),
      wrong,
    );
    return () => {
      current = false;
    };
  }, [stamp, job.id, wrong]);
  return narration;
}

const decidedSchema = z.object({ change: changeIdSchema, proposal: proposalSchema });
const changedSchema = z.object({ change: changeIdSchema });

/** What can be done to lines and proposals, each step with its way back. */
export function useNarrationChanges() {
  const { record, change } = useDesk();
  return useMemo(
    () => ({
      decide: (proposal: Proposal, decision: 'accept' | 'dismiss', payload?: Record<string, unknown>) =>
        change(
          'POST',
          `/api/proposals/${proposal.id}`,
          { decision, ...(payload ? { change: payload } : {}) },
          decidedSchema,
        ),
      decideAll: (type: ProposalType, decision: 'accept' | 'dismiss') =>
        change(
          'POST',
          `/api/jobs/${record.job.id}/proposals`,
          { type, decision },
          decidedAllSchema,
          `All ${type} proposals ${decision}ed`,
        ),
      correct: (line: KeptLine, text: string) =>
        change('PATCH', `/api/narration/${line.id}`, { text }, changedSchema, 'Words corrected'),
      shift: (takeId: string, byMs: number) =>
        change('PATCH', `/api/takes/${takeId}/narration`, { byMs }, changedSchema, 'Narration moved'),
      remove: (takeId: string) =>
        change(
          'DELETE',
          `/api/takes/${takeId}/narration`,
          undefined,
          changedSchema,
          'Narration deleted; what was accepted stays',
        ),
    }),
    [record.job.id, change],
  );
}
