'use client';

import { useCallback, useState } from 'react';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { counted } from '@/app/_parts/words';
import { type ChangeId, changeIdSchema, type JobId } from '@/shared/ids';
import type { FoundRecording } from '@/shared/takes';

const addedSchema = z.object({ change: changeIdSchema });

interface Refused {
  recording: FoundRecording;
  error: unknown;
}

export interface Adding {
  /** Null while nothing is being added. */
  progress: { done: number; all: number } | null;
  /** How many were added the last time. */
  added: number;
  /** What was refused the last time. */
  refused: readonly Refused[];
  /** Adds one recording after the other; one that is refused does not hold up the rest. Gives the refused paths. */
  add(recordings: readonly FoundRecording[]): Promise<string[]>;
}

/** Makes recordings takes of a job, with one way back for all of them. */
export function useAdding(jobId: JobId, onAdded: () => void): Adding {
  const notices = useNotices();
  const [progress, setProgress] = useState<Adding['progress']>(null);
  const [added, setAdded] = useState(0);
  const [refused, setRefused] = useState<readonly Refused[]>([]);

  const takeBack = useCallback(async (changes: readonly ChangeId[]) => {
    // The newest first: a later change may stand on an earlier one.
    for (const change of changes.toReversed()) await call('POST', `/api/changes/${change}/undo`, z.unknown());
  }, []);

  const add = useCallback(
    async (recordings: readonly FoundRecording[]) => {
      const changes: ChangeId[] = [];
      const problems: Refused[] = [];
      for (const [done, recording] of recordings.entries()) {
        setProgress({ done, all: recordings.length });
        try {
          changes.push(
            (await call('POST', `/api/jobs/${jobId}/takes`, addedSchema, { path: recording.path })).change,
          );
        } catch (error) {
          problems.push({ recording, error });
        }
      }
      setProgress(null);
      setAdded(changes.length);
      setRefused(problems);
      if (changes.length > 0) onAdded();
      if (changes.length === recordings.length) {
        notices.done(
          `${counted(changes.length, 'take')} added`,
          () => void takeBack(changes).catch(notices.wrong).finally(onAdded),
        );
      }
      return problems.map(({ recording }) => recording.path);
    },
    [jobId, notices, onAdded, takeBack],
  );
  return { progress, added, refused, add };
}
