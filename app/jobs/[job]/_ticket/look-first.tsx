'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import type { JobState } from '@/shared/jobs';
import type { LooseEnd } from '@/shared/loose-ends';
import { LooseEndList } from './loose-end-list';
import styles from './ticket.module.css';
import { goToAnchor } from './use-anchor';

/** What was asked for, and what has to be looked at before. */
export interface HeldBack {
  state: JobState;
  was: JobState;
  looseEnds: readonly LooseEnd[];
}

interface LookFirstProps {
  held: HeldBack | null;
  onClose: () => void;
  onAllTheSame: (held: HeldBack) => Promise<void>;
}

/** The loose ends that hold the job back: each with its way to be tied up, or all of them looked at and left. */
export function LookFirst({ held, onClose, onAllTheSame }: LookFirstProps) {
  const { busy, problem, run } = useAttempt();
  const anchor = useRef<string | null>(null);
  const isOpen = held !== null;
  useEffect(() => {
    if (isOpen || anchor.current === null) return;
    const wanted = anchor.current;
    anchor.current = null;
    // The dialog gives the focus back first.
    const waiting = window.setTimeout(() => goToAnchor(wanted), 50);
    return () => window.clearTimeout(waiting);
  }, [isOpen]);
  return (
    <Dialog open={isOpen} onClose={onClose} title="Look at these first">
      {held && (
        <>
          <LooseEndList
            looseEnds={held.looseEnds}
            onAnchor={(wanted) => {
              anchor.current = wanted;
              onClose();
            }}
          />
          {problem !== null && <ProblemNote error={problem} />}
          <p className={styles.fine}>What you leave loose is kept with the job, with the time.</p>
          <div className={styles.row}>
            <Button weight="main" onClick={onClose}>
              Not yet
            </Button>
            <Button aria-disabled={busy} onClick={() => void run(() => onAllTheSame(held))}>
              Set to {held.state} all the same
            </Button>
          </div>
        </>
      )}
    </Dialog>
  );
}
