'use client';

import { useEffect, useRef } from 'react';
import { inWords } from '@/app/_parts/call';
import { counted } from '@/app/_parts/words';
import styles from './picker.module.css';
import type { Adding } from './use-adding';

/** How far the adding is. */
export function AddingProgress({ progress }: Pick<Adding, 'progress'>) {
  if (!progress) return <p className={styles.adding}>Tick the recordings of this job.</p>;
  return (
    <div className={styles.adding} role="status">
      <span>
        Adding {progress.done + 1} of {progress.all} …
      </span>
      <progress value={progress.done} max={progress.all} aria-label="Takes added" />
    </div>
  );
}

/** What could not be added, and why. */
export function RefusedRecordings({ added, refused }: Pick<Adding, 'added' | 'refused'>) {
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (refused.length > 0) note.current?.scrollIntoView({ block: 'nearest' });
  }, [refused]);
  if (refused.length === 0) return null;
  return (
    <div ref={note} className={styles.refused} role="alert">
      <p>
        {added > 0 && `${counted(added, 'take')} added. `}
        {counted(refused.length, 'recording was', 'recordings were')} not added:
      </p>
      <ul>
        {refused.map(({ recording, error }) => (
          <li key={recording.path}>
            <strong>{recording.name}:</strong> {inWords(error).title} {inWords(error).detail}
          </li>
        ))}
      </ul>
    </div>
  );
}
