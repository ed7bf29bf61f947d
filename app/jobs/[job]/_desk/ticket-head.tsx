'use client';

import { useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { changeIdSchema } from '@/shared/ids';
import type { Task } from '@/shared/tasks';
import { Cautions } from './cautions';
import styles from './desk.module.css';
import type { OpenSheet } from './open-sheet';
import { useDesk } from './use-record';

const answerSchema = z.looseObject({ change: changeIdSchema });

/** The ticket at the head of the page: number, what is on the bench, and what is being worked out behind. */
export function TicketHead({ onOpen }: { onOpen: (sheet: OpenSheet) => void }) {
  const { record, undo, redo, change } = useDesk();
  const { job, instrument, client } = record;
  const [naming, setNaming] = useState(false);
  const rename = (title: string) => {
    setNaming(false);
    if (title.trim() !== '' && title !== job.title)
      void change('PATCH', `/api/jobs/${job.id}`, { title }, answerSchema, 'Job named');
  };
  return (
    <header className={styles.ticket}>
      <span className={styles.hole} aria-hidden="true" />
      <p className={styles.number}>
        <span className="only-read">Ticket number </span>
        {String(job.number).padStart(4, '0')}
      </p>
      <div className={styles.what}>
        {naming ? (
          <input
            className={styles.titleInput}
            aria-label="Title of the job"
            defaultValue={job.title}
            maxLength={200}
            // biome-ignore lint/a11y/noAutofocus: it opens because the repairer asked to write here.
            autoFocus
            onBlur={(event) => rename(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') rename(event.currentTarget.value);
              if (event.key === 'Escape') setNaming(false);
            }}
          />
        ) : (
          <h1 className={styles.title}>
            <button type="button" onClick={() => setNaming(true)} title="Rename the job">
              {job.title}
            </button>
          </h1>
        )}
        <p className={styles.fine}>
          {[instrument.type, instrument.maker, instrument.model, client?.name].filter(Boolean).join(' · ')}
        </p>
      </div>
      <div className={styles.row}>
        <Button onClick={() => onOpen('takes')}>Takes ({record.takes.length})</Button>
        <Button onClick={() => onOpen('ticket')}>Ticket</Button>
        <Button onClick={() => onOpen('narration')}>Narration</Button>
        <Button onClick={() => onOpen('wiring')}>Wiring</Button>
        <Button onClick={() => onOpen('chapters')}>Chapter list</Button>
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

const words: Record<Task['kind'], string> = {
  probe: 'Looking at recordings',
  sound: 'Reading sound',
  pictures: 'Taking stills',
  'viewing-copy': 'Making a viewing copy',
  listen: 'Listening',
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
