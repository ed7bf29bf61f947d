'use client';

import { useCallback, useEffect, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import type { FolderId, JobId } from '@/shared/ids';
import { type FoundRecording, foundRecordingSchema } from '@/shared/takes';
import styles from './picker.module.css';
import { RecordingsForm } from './recordings-form';

const recordingsSchema = z.object({ recordings: z.array(foundRecordingSchema) });

interface FolderRecordingsProps {
  folderId: FolderId;
  jobId: JobId;
  onClose: () => void;
  onAdded: () => void;
}

/** What lies in one folder: read, then shown to tick. */
export function FolderRecordings({ folderId, ...rest }: FolderRecordingsProps) {
  const [recordings, setRecordings] = useState<FoundRecording[] | null>(null);
  const { problem, run } = useAttempt();
  const load = useCallback(async () => {
    setRecordings((await call('GET', `/api/folders/${folderId}/recordings`, recordingsSchema)).recordings);
  }, [folderId]);
  useEffect(() => void run(load), [run, load]);

  if (problem !== null) {
    return (
      <ProblemNote error={problem}>
        <Button onClick={() => void run(load)}>Try again</Button>
      </ProblemNote>
    );
  }
  if (!recordings) return <p role="status">Reading the folder …</p>;
  if (recordings.length === 0) {
    return (
      <div className={styles.nothing}>
        <p>No recordings lie in this folder yet.</p>
        <Button onClick={() => void run(load)}>Look again</Button>
      </div>
    );
  }
  return <RecordingsForm recordings={recordings} onLookAgain={() => void run(load)} {...rest} />;
}
