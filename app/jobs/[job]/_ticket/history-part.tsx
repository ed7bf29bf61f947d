'use client';

import { useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { type Change, changeSchema } from '@/shared/jobs';
import { useFollowing } from '../_desk/use-following';
import { useDesk } from '../_desk/use-record';
import { When } from './loose-end-list';
import styles from './ticket.module.css';
import { TicketSection } from './ticket-section';
import { stayAt } from './use-anchor';
import { useKeep } from './use-keep';

const historySchema = z.object({ changes: z.array(changeSchema) });
const atFirst = 12;

/** What was changed when, newest first; each step can be taken back as long as nothing newer stands on it. */
export function HistoryPart({ first }: { first: readonly Change[] }) {
  const { job } = useDesk().record;
  const [{ changes }] = useFollowing(`/api/jobs/${job.id}/changes`, historySchema, { changes: [...first] });
  const [whole, setWhole] = useState(false);
  const shown = whole ? changes : changes.slice(0, atFirst);
  return (
    <TicketSection id="history" title="History">
      {changes.length === 0 ? (
        <p className={styles.fine}>Nothing was changed since it was booked in.</p>
      ) : (
        <ol className={styles.history} aria-label="Changes, newest first">
          {shown.map((change) => (
            <HistoryLine key={change.id} change={change} />
          ))}
        </ol>
      )}
      {shown.length < changes.length && (
        <Button weight="bare" onClick={() => setWhole(true)}>
          Show {counted(changes.length - shown.length, 'older change')}
        </Button>
      )}
    </TicketSection>
  );
}

function HistoryLine({ change: { id, label, at, undone } }: { change: Change }) {
  const keep = useKeep();
  const { busy, problem, run } = useAttempt();
  const line = useRef<HTMLLIElement>(null);
  const undo = () =>
    run(async () => {
      await keep('POST', `/api/changes/${id}/undo`);
      stayAt(line.current);
    });
  return (
    <li ref={line} tabIndex={-1} className={styles.step} data-undone={undone || undefined}>
      <span className={styles.stepWhat}>{label}</span>
      <span className={styles.fine}>
        <When at={at} />
      </span>
      {undone ? (
        <span className={styles.undone}>undone</span>
      ) : (
        <Button weight="bare" aria-disabled={busy} aria-label={`Undo: ${label}`} onClick={() => void undo()}>
          Undo
        </Button>
      )}
      {problem !== null && !undone && (
        <div className={styles.stepProblem}>
          <ProblemNote error={problem} />
        </div>
      )}
    </li>
  );
}
