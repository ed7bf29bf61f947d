'use client';

import { useEffect, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ChoiceField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { speechModelsSchema } from '@/shared/narration-record';
import deskStyles from '../_desk/desk.module.css';
import { useDesk } from '../_desk/use-record';

type Models = z.infer<typeof speechModelsSchema>;

/** Words in by a speech model that lies on this machine. */
export function Listen() {
  const { record, change } = useDesk();
  const { wrong } = useNotices();
  const [models, setModels] = useState<Models | null>(null);
  const [model, setModel] = useState('');
  useEffect(() => {
    call('GET', '/api/models', speechModelsSchema).then(setModels, wrong);
  }, [wrong]);
  if (!models) return null;
  if (models.models.length === 0) return <NoModel folder={models.folder} />;
  const tasks = record.tasks.filter((task) => task.kind === 'listen');
  const listen = async () => {
    const chosen = model === '' ? {} : { model };
    for (const take of record.takes)
      await change('POST', `/api/takes/${take.id}/listen`, chosen, z.unknown());
  };
  const stop = async () => {
    for (const task of tasks) await change('DELETE', `/api/tasks/${task.id}`, undefined, z.unknown());
  };
  return (
    <section className={deskStyles.narrationIn}>
      <ChoiceField
        label="Speech model"
        value={model}
        onChange={(event) => setModel(event.currentTarget.value)}
      >
        {models.models.map(({ name }) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </ChoiceField>
      {tasks.length === 0 ? (
        <Button disabled={record.takes.length === 0} onClick={() => void listen()}>
          Listen to every take
        </Button>
      ) : (
        <div role="status" className={deskStyles.narrationIn}>
          <progress value={tasks[0]?.progress} max={1} aria-label="Listening" />
          <p className={deskStyles.fine}>
            {tasks.length} to go{tasks[0]?.message ? `: “${tasks[0].message}”` : ''}
          </p>
          <Button onClick={() => void stop()}>Stop listening</Button>
        </div>
      )}
    </section>
  );
}

function NoModel({ folder }: { folder: string }) {
  return (
    <p className={deskStyles.fine}>
      To have the takes listened to on this machine, put a Whisper model in ggml layout (a .bin file) into{' '}
      <code>{folder}</code>.
      <br />
      Nothing is downloaded by itself, and no sound leaves the machine.
    </p>
  );
}
