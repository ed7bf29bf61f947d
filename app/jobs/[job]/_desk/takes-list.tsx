'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { exactTime, shortTime } from '@/lib/film';
import { changeIdSchema } from '@/shared/ids';
import type { Take } from '@/shared/takes';
import { usePlayer } from '../_film/use-film';
import styles from './desk.module.css';
import { useDesk } from './use-record';

const answerSchema = z.looseObject({ change: changeIdSchema.nullable() });

/** The takes in film order: move them, trim them, take them out. */
export function TakesList({
  open,
  onClose,
  onAdd,
}: {
  open: boolean;
  onClose: () => void;
  onAdd: () => void;
}) {
  const { record, change } = useDesk();
  return (
    <Dialog open={open} onClose={onClose} title="Takes" wide>
      {record.takes.length === 0 && (
        <p>No takes yet. Recordings stay where they are; a take only points at one.</p>
      )}
      <ol className={styles.takes}>
        {record.takes.map((take, index) => (
          <TakeRow key={take.id} take={take} index={index} last={index === record.takes.length - 1} />
        ))}
      </ol>
      <div className={styles.row}>
        <Button weight="main" onClick={onAdd}>
          Add takes
        </Button>
        {record.takes.length > 1 && (
          <Button
            onClick={() =>
              void change(
                'DELETE',
                `/api/jobs/${record.job.id}/takes/order`,
                undefined,
                answerSchema,
                'Takes follow the camera clock',
              )
            }
          >
            Order by the camera clock
          </Button>
        )}
      </div>
    </Dialog>
  );
}

function TakeRow({ take, index, last }: { take: Take; index: number; last: boolean }) {
  const { change } = useDesk();
  const player = usePlayer();
  const patch = (body: object, told: string) =>
    void change('PATCH', `/api/takes/${take.id}`, body, answerSchema, told);
  const here = player?.moment?.takeId === take.id ? player.moment.ms : null;
  return (
    <li className={styles.take}>
      <span className={styles.takeOrder}>{index + 1}</span>
      <div className={styles.takeWords}>
        <p className={styles.takeName}>{take.name}</p>
        <p className={styles.fine}>{describe(take)}</p>
        {take.problem && <p className={styles.takeProblem}>{take.problem}</p>}
        {take.probe?.hasPlaceTags && (
          <p className={styles.fine}>
            Carries place tags: they stay in the recording and out of anything made from it.
          </p>
        )}
      </div>
      <div className={styles.row}>
        <Button
          disabled={index === 0}
          onClick={() => patch({ index: index - 1 }, 'Take moved')}
          aria-label={`Move ${take.name} earlier`}
        >
          Earlier
        </Button>
        <Button
          disabled={last}
          onClick={() => patch({ index: index + 1 }, 'Take moved')}
          aria-label={`Move ${take.name} later`}
        >
          Later
        </Button>
        <Button disabled={here === null} onClick={() => patch({ trimStartMs: here ?? 0 }, 'Take trimmed')}>
          Starts here
        </Button>
        <Button disabled={here === null} onClick={() => patch({ trimEndMs: here }, 'Take trimmed')}>
          Ends here
        </Button>
        {(take.trimStartMs > 0 || take.trimEndMs !== null) && (
          <Button onClick={() => patch({ trimStartMs: 0, trimEndMs: null }, 'Whole take kept')}>
            Keep all of it
          </Button>
        )}
        <Button
          weight="alarm"
          onClick={() =>
            void change(
              'DELETE',
              `/api/takes/${take.id}`,
              undefined,
              answerSchema,
              `Take ${take.name} deleted; the recording is untouched`,
            )
          }
        >
          Delete
        </Button>
      </div>
    </li>
  );
}

function describe(take: Take): string {
  const { video, audio } = take.probe ?? {};
  const parts = [
    take.durationMs > 0 ? shortTime(take.durationMs) : 'length not known yet',
    video && `${video.shownWidth} × ${video.shownHeight}`,
    video?.codec,
    audio && (audio.length === 0 ? 'no sound' : audio.map((stream) => stream.codec).join(' + ')),
    take.recordedAt !== null &&
      new Date(take.recordedAt).toLocaleString('en-GB', { dateStyle: 'medium', timeStyle: 'short' }),
    (take.trimStartMs > 0 || take.trimEndMs !== null) &&
      `kept from ${exactTime(take.trimStartMs)} to ${exactTime(take.trimEndMs ?? take.durationMs)}`,
  ];
  return parts.filter(Boolean).join(' · ');
}
