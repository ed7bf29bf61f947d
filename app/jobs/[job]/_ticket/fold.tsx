'use client';

import { useId, useState } from 'react';
import { Button } from '@/app/_parts/button';
import styles from './ticket.module.css';

interface FoldProps {
  label: string;
  /** What it belongs to, for those who hear the page. */
  of: string;
  /** What always shows, at the side of the button. */
  beside?: React.ReactNode;
  children: React.ReactNode;
}

/** More of a line, on touch; it is made only when it is wanted. */
export function Fold({ label, of, beside, children }: FoldProps) {
  const id = useId();
  const [open, setOpen] = useState(false);
  return (
    <div className={styles.fold}>
      <div className={styles.beside}>{beside}</div>
      <Button
        weight="bare"
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        aria-label={`${open ? 'Close' : label}: ${of}`}
        onClick={() => setOpen(!open)}
      >
        {open ? 'Close' : label}
      </Button>
      {open && (
        <div id={id} className={styles.details}>
          {children}
        </div>
      )}
    </div>
  );
}
