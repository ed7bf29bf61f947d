'use client';

import { useId } from 'react';
import styles from './field.module.css';

interface FieldProps {
  label: string;
  hint?: string;
  /** What is wrong with what was typed, and how to put it right. */
  wrong?: string | null;
}

/** A labelled line to write on. */
export function TextField({
  label,
  hint,
  wrong = null,
  ...input
}: FieldProps & React.ComponentProps<'input'>) {
  const id = useId();
  return (
    <Frame id={id} label={label} hint={hint} wrong={wrong}>
      <input
        id={id}
        className={styles.box}
        aria-invalid={wrong !== null}
        aria-describedby={`${id}-more`}
        {...input}
      />
    </Frame>
  );
}

/** A labelled choice of one. */
export function ChoiceField({
  label,
  hint,
  wrong = null,
  children,
  ...select
}: FieldProps & React.ComponentProps<'select'>) {
  const id = useId();
  return (
    <Frame id={id} label={label} hint={hint} wrong={wrong}>
      <select id={id} className={styles.box} aria-describedby={`${id}-more`} {...select}>
        {children}
      </select>
    </Frame>
  );
}

function Frame({
  id,
  label,
  hint,
  wrong,
  children,
}: {
  id: string;
  label: string;
  hint?: string | undefined;
  wrong: string | null;
  children: React.ReactNode;
}) {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      {children}
      <p id={`${id}-more`} className={wrong ? styles.wrong : styles.hint} role={wrong ? 'alert' : undefined}>
        {wrong ?? hint}
      </p>
    </div>
  );
}
