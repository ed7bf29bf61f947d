'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { TextField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { type Client, type ClientLine, clientChangedSchema } from '@/shared/clients';
import styles from './client.module.css';
import { useTakeBack } from './use-keep-client';
import { useOtherClients } from './use-other-clients';

interface MergeDialogProps {
  open: boolean;
  onClose: () => void;
  /** The entry that stays. */
  into: Client;
}

/** Chooses the other entry of the same person, and tells what will happen. */
export function MergeDialog({ open, onClose, into }: MergeDialogProps) {
  const findBox = useRef<HTMLInputElement>(null);
  return (
    <Dialog open={open} onClose={onClose} title="Make one of two entries" startAt={findBox}>
      <Merge into={into} findBox={findBox} onDone={onClose} />
    </Dialog>
  );
}

interface MergeProps {
  into: Client;
  findBox: React.RefObject<HTMLInputElement | null>;
  onDone: () => void;
}

function Merge({ into, findBox, onDone }: MergeProps) {
  const router = useRouter();
  const { done } = useNotices();
  const takeBack = useTakeBack();
  const { busy, problem, run } = useAttempt();
  const [find, setFind] = useState('');
  const [other, setOther] = useState<ClientLine | null>(null);
  const [missing, setMissing] = useState(false);
  const { shown, more } = useOtherClients(into, find);
  const merge = (event: React.FormEvent) => {
    event.preventDefault();
    setMissing(other === null);
    if (other === null) return findBox.current?.focus();
    void run(async () => {
      const path = `/api/clients/${into.id}/merge`;
      const { change } = await call('POST', path, clientChangedSchema, { other: other.id });
      done('One entry made of two', () => takeBack(change));
      router.refresh();
      onDone();
    });
  };
  return (
    <form className={styles.form} onSubmit={merge} noValidate>
      <p>Choose the other entry that is {into.name} too. It goes into this one.</p>
      <TextField
        ref={findBox}
        label="Find the other entry"
        hint="Entries with a like name come first."
        wrong={missing && other === null ? 'Choose one of the entries below.' : null}
        type="search"
        autoComplete="off"
        value={find}
        onChange={(event) => setFind(event.target.value)}
      />
      <fieldset className={styles.choices}>
        <legend>The other entry</legend>
        {shown?.map((line) => (
          <label key={line.id} className={styles.choice}>
            <input
              type="radio"
              name="other"
              checked={other?.id === line.id}
              onChange={() => setOther(line)}
            />
            <span>
              {line.name}
              <span className={styles.soft}>
                {' '}
                · {line.alias} · {countedJobs(line)}
              </span>
            </span>
          </label>
        ))}
        {shown?.length === 0 && <p>No other entry holds these words.</p>}
        {more > 0 && <p className={styles.soft}>{more} more: type a name to find them.</p>}
      </fieldset>
      {other && <WhatHappens into={into} other={other} />}
      {problem !== null && <ProblemNote error={problem} />}
      <div className={styles.buttons}>
        <Button onClick={onDone}>Leave it</Button>
        <Button type="submit" weight="main" aria-disabled={busy}>
          {busy ? 'Making one …' : 'Make one entry'}
        </Button>
      </div>
    </form>
  );
}

function WhatHappens({ into, other }: { into: Client; other: ClientLine }) {
  return (
    <section className={styles.happens} aria-label="What will happen">
      <h3>What will happen</h3>
      <ul>
        <li>{whatMoves(into, other)}</li>
        <li>Ways to be reached and notes of the two stand below one another, no line twice.</li>
        <li>
          The name stays {into.name}, in public “{into.alias}”.
        </li>
        <li>The entry {other.name} goes. It can be undone.</li>
      </ul>
    </section>
  );
}

function countedJobs({ jobs }: ClientLine): string {
  return jobs === 0 ? 'no jobs' : counted(jobs, 'job');
}

function whatMoves(into: Client, { name, jobs, instruments }: ClientLine): string {
  const moving = [
    ...(jobs > 0 ? [counted(jobs, 'job')] : []),
    ...(instruments > 0 ? [counted(instruments, 'instrument')] : []),
  ].join(' and ');
  return moving === ''
    ? `${name} has no jobs and no instruments.`
    : `${moving} of ${name} go to ${into.name}.`;
}
