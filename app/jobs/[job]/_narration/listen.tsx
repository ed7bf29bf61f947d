import { useEffect, useState } from 'react';
import type { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ChoiceField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { counted, sizeInWords } from '@/app/_parts/words';
import { speechModelsSchema } from '@/shared/narration-record';
import deskStyles from '../_desk/desk.module.css';
import { useDesk } from '../_desk/use-record';
import type { Listening } from './use-listening';

type Models = z.infer<typeof speechModelsSchema>;

/** Words in by a speech model that lies on this machine. */
export function Listen({ listening }: { listening: Listening }) {
  const { wrong } = useNotices();
  const [models, setModels] = useState<Models | null>(null);
  useEffect(() => {
    call('GET', '/api/models', speechModelsSchema).then(setModels, wrong);
  }, [wrong]);
  if (!models) return null;
  if (models.models.length === 0) return <NoModel folder={models.folder} />;
  return (
    <section className={deskStyles.narrationIn} aria-label="Speech model">
      {listening.tasks.length === 0 ? (
        <Choice models={models.models} listening={listening} />
      ) : (
        <Hearing listening={listening} />
      )}
    </section>
  );
}

function Choice({ models, listening }: { models: Models['models']; listening: Listening }) {
  const { takes } = useDesk().record;
  const [take, setTake] = useState('');
  const [model, setModel] = useState<string | null>(null);
  const chosen = takes.filter(({ id }) => take === '' || id === take).map(({ id }) => id);
  return (
    <>
      <ChoiceField label="Listen to" value={take} onChange={(event) => setTake(event.currentTarget.value)}>
        <option value="">every take, one after another</option>
        {takes.map(({ id, name }, index) => (
          <option key={id} value={id}>
            take {index + 1}: {name}
          </option>
        ))}
      </ChoiceField>
      <ChoiceField
        label="Speech model"
        value={model ?? models[0]?.name}
        onChange={(event) => setModel(event.currentTarget.value)}
      >
        {models.map(({ name, sizeBytes }) => (
          <option key={name} value={name}>
            {name}, {sizeInWords(sizeBytes)}
          </option>
        ))}
      </ChoiceField>
      <p className={deskStyles.fine}>
        Where words are heard, they stand in place of the take’s narration. It may take as long as the film.
      </p>
      <Button disabled={chosen.length === 0} onClick={() => void listening.start(chosen, model)}>
        Listen to it
      </Button>
    </>
  );
}

function Hearing({ listening: { tasks, stop } }: { listening: Listening }) {
  const [first] = tasks;
  return (
    <div role="status" className={deskStyles.narrationIn}>
      <progress value={first?.progress} max={1} aria-label="Listening" />
      <p className={deskStyles.fine}>
        {counted(tasks.length, 'take')} to go{first?.message ? `: “${first.message}”` : ''}
      </p>
      <Button onClick={() => void stop()}>Stop listening</Button>
    </div>
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
