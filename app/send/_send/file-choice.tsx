'use client';

import { useId } from 'react';
import { buttonClass } from '@/app/_parts/button';
import styles from './send.module.css';

/** Two ways to a recording: one that lies on this device, or one filmed now. */
export function FileChoice({ onPick }: { onPick: (file: File) => void }) {
  return (
    <div className={styles.ways}>
      <Way label="Pick a recording" accept="video/*,audio/*,.mkv,.mts,.m2ts" onPick={onPick} />
      <Way label="Film now" accept="video/*" capture="environment" onPick={onPick} />
    </div>
  );
}

interface WayProps {
  label: string;
  accept: string;
  capture?: 'environment';
  onPick: (file: File) => void;
}

function Way({ label, accept, capture, onPick }: WayProps) {
  const id = useId();
  return (
    <span className={styles.way}>
      <input
        id={id}
        className={styles.file}
        type="file"
        accept={accept}
        capture={capture}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file can be picked again.
          event.target.value = '';
          if (file) onPick(file);
        }}
      />
      <label htmlFor={id} className={`${buttonClass()} ${styles.wayLabel}`}>
        {label}
      </label>
    </span>
  );
}
