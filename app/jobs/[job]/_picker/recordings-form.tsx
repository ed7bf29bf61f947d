'use client';

import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { counted } from '@/app/_parts/words';
import type { JobId } from '@/shared/ids';
import type { FoundRecording } from '@/shared/takes';
import { AddingProgress, RefusedRecordings } from './adding-state';
import { findableRecordings, findRecordings, inOrderOfMaking } from './find-recordings';
import styles from './picker.module.css';
import { RecordingList } from './recording-list';
import { useAdding } from './use-adding';

interface RecordingsFormProps {
  recordings: readonly FoundRecording[];
  jobId: JobId;
  /** Called where some were refused: the folder may have changed. */
  onLookAgain: () => void;
  onClose: () => void;
  onAdded: () => void;
}

/** The recordings of one folder: find them, tick some, add them. */
export function RecordingsForm({ recordings, jobId, onLookAgain, onClose, onAdded }: RecordingsFormProps) {
  const [question, setQuestion] = useState('');
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const list = useRef<HTMLUListElement>(null);
  const findBox = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // Nothing in the picker is being used yet: writing can start at once. A finger would only get the keyboard in its way.
    const elsewhere = !document.activeElement?.closest('[data-picker]');
    if (elsewhere && matchMedia('(pointer: fine)').matches) findBox.current?.focus();
  }, []);

  const adding = useAdding(jobId, onAdded);
  const asked = useDeferredValue(question);
  const findable = useMemo(() => findableRecordings(recordings), [recordings]);
  const found = useMemo(() => findRecordings(findable, asked), [findable, asked]);
  const chosen = useMemo(() => inOrderOfMaking(recordings, ticked), [recordings, ticked]);
  const tick = useCallback((path: string, on: boolean) => {
    setTicked((before) => new Set(on ? [...before, path] : [...before].filter((other) => other !== path)));
  }, []);

  const add = async (event: React.FormEvent) => {
    event.preventDefault();
    if (adding.progress || chosen.length === 0) return;
    const refused = await adding.add(chosen);
    setTicked(new Set(refused));
    if (refused.length === 0) onClose();
    else onLookAgain();
  };
  const toList = (event: React.KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    list.current?.querySelector<HTMLInputElement>('input:enabled')?.focus();
  };

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
      {!adding.progress && <RefusedRecordings added={adding.added} refused={adding.refused} />}
      <RecordingList key={asked} ref={list} recordings={found} jobId={jobId} ticked={ticked} onTick={tick} />
      <div className={styles.foot}>
        <AddingProgress progress={adding.progress} />
        {chosen.length > 0 && !adding.progress && (
          <Button weight="bare" onClick={() => setTicked(new Set())}>
            Untick all
          </Button>
        )}
        <Button type="submit" weight="main" aria-disabled={chosen.length === 0 || adding.progress !== null}>
          {chosen.length === 0 ? 'Add takes' : `Add ${counted(chosen.length, 'take')}`}
        </Button>
      </div>
    </form>
  );
}
