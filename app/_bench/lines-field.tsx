'use client';

import { useId } from 'react';
import styles from '@/app/_parts/field.module.css';

interface LinesFieldProps extends React.ComponentProps<'textarea'> {
  label: string;
  hint: string;
  /** What is wrong with what was typed, and how to put it right. */
  wrong: string | null;
}

/** A labelled place for several lines. */
export function LinesField({ label, hint, wrong, ...area }: LinesFieldProps) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      <textarea
        id={id}
        className={styles.box}
        aria-invalid={wrong !== null}
        aria-describedby={`${id}-more`}
        {...area}
      />
      <p id={`${id}-more`} className={wrong ? styles.wrong : styles.hint} role={wrong ? 'alert' : undefined}>
        {wrong ?? hint}
      </p>
    </div>
  );
}
