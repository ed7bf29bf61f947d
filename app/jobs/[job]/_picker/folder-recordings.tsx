'use client';

import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import type { FolderId, JobId } from '@/shared/ids';
import { type FoundRecording, foundRecordingSchema } from '@/shared/takes';
import { findableRecordings, findRecordings, inOrderOfMaking } from './find-recordings';
import styles from './picker.module.css';
import { RecordingList } from './recording-list';
import { useAdding } from './use-adding';

const recordingsSchema = z.object({ recordings: z.array(foundRecordingSchema) });

interface FolderRecordingsProps {
  folderId: FolderId;
  jobId: JobId;
  onClose: () => void;
  onAdded: () => void;
}

/** The recordings of one folder: tick some, add them. */
export function FolderRecordings({ folderId, jobId, onClose, onAdded }: FolderRecordingsProps) {
  const [recordings, setRecordings] = useState<FoundRecording[] | null>(null);
  const [question, setQuestion] = useState('');
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const list = useRef<HTMLUListElement>(null);
  const findBox = useRef<HTMLInputElement>(null);
  const { problem, run } = useAttempt();
  const load = useCallback(async () => {
    setRecordings((await call('GET', `/api/folders/${folderId}/recordings`, recordingsSchema)).recordings);
  }, [folderId]);
  useEffect(() => void run(load), [run, load]);

  const read = recordings !== null;
  useEffect(() => {
    // Nothing in the picker is being used yet: writing can start at once. A finger would only get the keyboard in its way.
    const elsewhere = !document.activeElement?.closest('[data-picker]');
    if (read && elsewhere && matchMedia('(pointer: fine)').matches) findBox.current?.focus();
  }, [read]);

  const adding = useAdding(jobId, onAdded);
  const asked = useDeferredValue(question);
  const findable = useMemo(() => findableRecordings(recordings ?? []), [recordings]);
  const found = useMemo(() => findRecordings(findable, asked), [findable, asked]);
  const tick = useCallback((path: string, on: boolean) => {
    setTicked((before) => new Set(on ? [...before, path] : [...before].filter((other) => other !== path)));
  }, []);

  const add = async (event: React.FormEvent) => {
    event.preventDefault();
    if (adding.progress || ticked.size === 0) return;
    const refused = await adding.add(inOrderOfMaking(recordings ?? [], ticked));
    setTicked(new Set(refused));
    if (refused.length === 0) onClose();
    else await run(load);
  };
  const toList = (event: React.KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    list.current?.querySelector('input')?.focus();
  };

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
  return (
    <form className={styles.picker} onSubmit={(event) => void add(event)}>
      <TextField
        ref={findBox}
        label="Find a recording"
        hint="By name or subfolder. Enter goes to the list; arrows move, Space ticks, Enter adds."
        type="search"
        value={question}
        onChange={(event) => setQuestion(event.target.value)}
        onKeyDown={toList}
        autoComplete="off"
        spellCheck={false}
      />
      <p className={styles.count} role="status">
        {found.length === recordings.length
          ? `${counted(recordings.length, 'recording')}, newest first`
          : `${found.length.toLocaleString('en-GB')} of ${counted(recordings.length, 'recording')}`}
      </p>
      <RecordingList
        key={asked}
        ref={list}
        recordings={found}
        jobId={jobId}
        ticked={ticked}
        problems={adding.problems}
        onTick={tick}
      />
      <div className={styles.foot}>
        <AddingState adding={adding} ticked={ticked.size} />
        {ticked.size > 0 && !adding.progress && (
          <Button weight="bare" onClick={() => setTicked(new Set())}>
            Untick all
          </Button>
        )}
        <Button type="submit" weight="main" aria-disabled={ticked.size === 0 || adding.progress !== null}>
          {ticked.size === 0 ? 'Add takes' : `Add ${counted(ticked.size, 'take')}`}
        </Button>
      </div>
    </form>
  );
}

/** What is being added, or what could not be. */
function AddingState({ adding, ticked }: { adding: ReturnType<typeof useAdding>; ticked: number }) {
  const { progress, problems } = adding;
  if (progress) {
    return (
      <div className={styles.adding} role="status">
        <span>
          Adding {progress.done + 1} of {progress.all} …
        </span>
        <progress value={progress.done} max={progress.all} aria-label="Takes added" />
      </div>
    );
  }
  if (problems.size > 0) {
    return (
      <p className={styles.refused} role="alert">
        {counted(problems.size, 'recording was', 'recordings were')} not added: the list says why.
      </p>
    );
  }
  return <p className={styles.adding}>{ticked === 0 ? 'Tick the recordings of this job.' : ''}</p>;
}
