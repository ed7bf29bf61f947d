'use client';

import Link from 'next/link';
import { useCallback, useEffect, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { ChoiceField } from '@/app/_parts/field';
import { FolderForm } from '@/app/_parts/folder-form';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import type { JobId } from '@/shared/ids';
import { type Folder, folderSchema } from '@/shared/takes';
import { FolderRecordings } from './folder-recordings';
import styles from './picker.module.css';

const foldersSchema = z.object({ folders: z.array(folderSchema) });

interface TakePickerProps {
  jobId: JobId;
  open: boolean;
  onClose: () => void;
  /** Called when takes were added, or were taken back again. */
  onAdded: () => void;
}

/** Picks recordings out of the recordings folders and makes them takes of a job. */
export function TakePicker({ jobId, open, onClose, onAdded }: TakePickerProps) {
  return (
    <Dialog open={open} onClose={onClose} title="Add takes" wide>
      <Picker jobId={jobId} onClose={onClose} onAdded={onAdded} />
    </Dialog>
  );
}

/** For a phone or laptop that holds the recording itself. */
function SendFromHere({ jobId }: { jobId: JobId }) {
  return (
    <p>
      Is the recording on this device, and not on the bench machine?{' '}
      <Link href={`/send?job=${jobId}`} prefetch={false}>
        Send it from here
      </Link>
      .
    </p>
  );
}

function Picker({ jobId, onClose, onAdded }: Omit<TakePickerProps, 'open'>) {
  const [folders, setFolders] = useState<Folder[] | null>(null);
  const [chosen, setChosen] = useState<Folder | null>(null);
  const [naming, setNaming] = useState(false);
  const { problem, run } = useAttempt();
  const load = useCallback(async () => {
    const answer = await call('GET', '/api/folders', foldersSchema);
    setFolders(answer.folders);
    setChosen(answer.folders.find((folder) => folder.reachable) ?? answer.folders[0] ?? null);
  }, []);
  useEffect(() => void run(load), [run, load]);

  const named = (folder: Folder) => {
    setFolders((before) => [...(before ?? []).filter(({ id }) => id !== folder.id), folder]);
    setChosen(folder);
    setNaming(false);
  };

  if (problem !== null) {
    return (
      <ProblemNote error={problem}>
        <Button onClick={() => void run(load)}>Try again</Button>
      </ProblemNote>
    );
  }
  if (!folders) return <p role="status">Looking for the recordings folders …</p>;
  if (!chosen) {
    return (
      <>
        <p>
          Benchtake only looks into folders that you name. Recordings stay where they are; a take only points
          at one.
        </p>
        <FolderForm onNamed={named} />
        <SendFromHere jobId={jobId} />
      </>
    );
  }
  return (
    <div className={styles.picker} data-picker>
      <div className={styles.folderLine}>
        <ChoiceField
          label="Folder"
          value={chosen.id}
          onChange={(event) => setChosen(folders.find(({ id }) => id === event.target.value) ?? chosen)}
        >
          {folders.map(({ id, path, reachable }) => (
            <option key={id} value={id}>
              {reachable ? path : `${path} (cannot be read now)`}
            </option>
          ))}
        </ChoiceField>
        <Button className={styles.beside} aria-expanded={naming} onClick={() => setNaming(!naming)}>
          Name another folder
        </Button>
      </div>
      {naming && <FolderForm onNamed={named} />}
      <FolderRecordings
        key={chosen.id}
        folderId={chosen.id}
        jobId={jobId}
        onClose={onClose}
        onAdded={onAdded}
      />
      <SendFromHere jobId={jobId} />
    </div>
  );
}
