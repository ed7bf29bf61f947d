'use client';

import { useCallback, useState } from 'react';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { counted } from '@/app/_parts/words';
import { type ChangeId, changeIdSchema, type JobId } from '@/shared/ids';
import type { FoundRecording } from '@/shared/takes';

const addedSchema = z.object({ change: changeIdSchema });

export interface Adding {
  /** Null while nothing is being added. */
  progress: { done: number; all: number } | null;
  /** What was refused, by path. */
  problems: ReadonlyMap<string, unknown>;
  /** Adds one recording after the other; one that is refused does not hold up the rest. Gives the refused paths. */
  add(recordings: readonly FoundRecording[]): Promise<string[]>;
}

/** Makes recordings takes of a job, with one way back for all of them. */
export function useAdding(jobId: JobId, onAdded: () => void): Adding {
  const notices = useNotices();
  const [progress, setProgress] = useState<Adding['progress']>(null);
  const [problems, setProblems] = useState<ReadonlyMap<string, unknown>>(new Map());

  const takeBack = useCallback(async (changes: readonly ChangeId[]) => {
    // The newest first: a later change may stand on an earlier one.
    for (const change of changes.toReversed()) await call('POST', `/api/changes/${change}/undo`, z.unknown());
  }, []);

  const add = useCallback(
    async (recordings: readonly FoundRecording[]) => {
      const added: ChangeId[] = [];
      const refused = new Map<string, unknown>();
      setProblems(refused);
      for (const [done, { path }] of recordings.entries()) {
        setProgress({ done, all: recordings.length });
        try {
          added.push((await call('POST', `/api/jobs/${jobId}/takes`, addedSchema, { path })).change);
        } catch (error) {
          refused.set(path, error);
        }
      }
      setProgress(null);
      setProblems(new Map(refused));
      if (added.length > 0) {
        onAdded();
        notices.done(
          `${counted(added.length, 'take')} added`,
          () => void takeBack(added).catch(notices.wrong).finally(onAdded),
        );
      }
      return [...refused.keys()];
    },
    [jobId, notices, onAdded, takeBack],
  );
  return { progress, problems, add };
}
