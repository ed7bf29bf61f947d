'use client';

import Link from 'next/link';
import { useState } from 'react';
import { z } from 'zod';
import { Button, ButtonLink } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { KeptField } from '@/app/_parts/kept-field';
import { counted, promiseInWords, ticketNumber } from '@/app/_parts/words';
import { dayOf } from '@/lib/work';
import type { JobState } from '@/shared/jobs';
import type { Task } from '@/shared/tasks';
import { Cautions } from './cautions';
import styles from './desk.module.css';
import type { OpenSheet } from './open-sheet';
import head from './ticket-head.module.css';
import { useDesk } from './use-record';

/** The ticket at the head of the page: number, what is on the bench, and what is being worked out behind. */
export function TicketHead({ onOpen }: { onOpen: (sheet: OpenSheet) => void }) {
  const { record, undo, redo } = useDesk();
  const { job, instrument, client } = record;
  const ticket = `/jobs/${job.id}/ticket`;
  return (
    <header className={styles.ticket}>
      <span className={styles.hole} aria-hidden="true" />
      <p className={styles.number}>
        <span className="only-read">Ticket number </span>
        {ticketNumber(job.number)}
      </p>
      <div className={styles.what}>
        <Title />
        <p className={styles.fine}>
          {[instrument.type, instrument.maker, instrument.model, client?.name].filter(Boolean).join(' · ')}
        </p>
        <p className={head.standing}>
          <strong>{job.state}</strong>
          {job.promisedOn && !hasGone(job.state) && (
            <span suppressHydrationWarning>{promiseInWords(job.promisedOn, dayOf(Date.now()))}</span>
          )}
          {record.looseEnds.length > 0 && (
            <Link href={`${ticket}#loose-ends`}>{counted(record.looseEnds.length, 'loose end')}</Link>
          )}
        </p>
      </div>
      <div className={styles.row}>
        <Button onClick={() => onOpen('takes')}>Takes ({record.takes.length})</Button>
        <ButtonLink href={ticket}>Ticket</ButtonLink>
        <Button onClick={() => onOpen('narration')}>Narration</Button>
        <Button onClick={() => onOpen('wiring')}>Wiring</Button>
        <Button onClick={() => onOpen('chapters')}>Chapter list</Button>
        <ButtonLink href={`/jobs/${job.id}/hand-over`}>Hand over</ButtonLink>
        <Button
          disabled={!record.undo}
          onClick={() => void undo()}
          title={record.undo ? `Undo: ${record.undo.label}` : 'Nothing to undo'}
        >
          Undo
        </Button>
        <Button
          disabled={!record.redo}
          onClick={() => void redo()}
          title={record.redo ? `Do again: ${record.redo.label}` : 'Nothing to do again'}
        >
          Do again
        </Button>
        <Button onClick={() => onOpen('keys')}>Keys</Button>
      </div>
      <Cautions />
      {record.tasks.length > 0 && <Working tasks={record.tasks} />}
    </header>
  );
}

function hasGone(state: JobState): boolean {
  return state === 'collected' || state === 'returned undone';
}

/** The title of the job; a touch opens it for writing. */
function Title() {
  const { record, refresh } = useDesk();
  const { job } = record;
  const [naming, setNaming] = useState(false);
  const close = () => setNaming(false);
  if (!naming)
    return (
      <h1 className={styles.title}>
        <button type="button" onClick={() => setNaming(true)} title="Rename the job">
          {job.title}
        </button>
      </h1>
    );
  return (
    <KeptField
      label="Title of the job"
      name="title"
      value={job.title}
      onKeep={async (title, was) => {
        await call('PATCH', `/api/jobs/${job.id}`, z.unknown(), { title, was: { title: was } });
        await refresh();
      }}
      required
      maxLength={200}
      autoFocus
      onLeave={close}
    />
  );
}

const words: Record<Task['kind'], string> = {
  probe: 'Looking at recordings',
  sound: 'Reading sound',
  pictures: 'Taking stills',
  'viewing-copy': 'Making a viewing copy',
  listen: 'Listening',
  cut: 'Making the public cut',
  'backlog-look': 'Looking through older recordings',
  'backlog-import': 'Taking older recordings in',
};

/** What the machine is busy with, in one line, and a way to stop it. */
function Working({ tasks }: { tasks: readonly Task[] }) {
  const { change } = useDesk();
  const first = tasks.find((task) => task.state === 'running') ?? tasks[0];
  if (!first) return null;
  const done = tasks.reduce((sum, task) => sum + task.progress, 0) / tasks.length;
  const stop = () => {
    for (const task of tasks) void change('DELETE', `/api/tasks/${task.id}`, undefined, z.unknown());
  };
  return (
    <div className={styles.working} role="status">
      <span>
        {words[first.kind]} … {tasks.length > 1 ? `(${tasks.length} to go)` : ''}
      </span>
      <progress value={done} max={1} aria-label={words[first.kind]} />
      <Button weight="bare" onClick={stop}>
        Stop
      </Button>
    </div>
  );
}
