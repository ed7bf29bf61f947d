'use client';

import { useRouter } from 'next/navigation';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { type ChangeId, changeIdSchema } from '@/shared/ids';
import { type Folder, folderSchema } from '@/shared/takes';
import styles from '../settings.module.css';
import { ClockForm } from './clock-form';

/** Where the route names the change, it can be taken back. */
const changedSchema = z.object({ change: changeIdSchema.optional() });

/** One recordings folder: where it is, whether it can be read, and what its cameras' clocks say. */
export function FolderRow({ folder, onForgotten }: { folder: Folder; onForgotten: () => void }) {
  const router = useRouter();
  const notices = useNotices();
  const { busy, problem, run } = useAttempt();
  const address = `/api/folders/${folder.id}`;

  const setClock = async (clockOffsetMinutes: number) => {
    await call('PATCH', address, folderSchema, { clockOffsetMinutes });
    router.refresh();
  };
  const changeClock = (clockOffsetMinutes: number) =>
    run(async () => {
      await setClock(clockOffsetMinutes);
      notices.done('Camera clock set', () => void setClock(folder.clockOffsetMinutes).catch(notices.wrong));
    });
  const nameAgain = async (change: ChangeId) => {
    await call('POST', `/api/changes/${change}/undo`, z.unknown());
    router.refresh();
  };
  const forget = () =>
    run(async () => {
      const { change } = await call('DELETE', address, changedSchema);
      notices.done(
        'Folder forgotten; its files are untouched',
        change && (() => void nameAgain(change).catch(notices.wrong)),
      );
      onForgotten();
    });

  return (
    <li className={styles.folder}>
      <div className={styles.folderHead}>
        <div className={styles.folderWords}>
          <h3 className={styles.path}>{folder.path}</h3>
          {folder.reachable ? (
            <p>Can be read.</p>
          ) : (
            <p className={styles.unreachable}>Cannot be read now. Is its drive plugged in?</p>
          )}
        </div>
        <Button aria-disabled={busy} onClick={() => void forget()} aria-label={`Forget ${folder.path}`}>
          Forget
        </Button>
      </div>
      <ClockForm
        offsetMinutes={folder.clockOffsetMinutes}
        busy={busy}
        onSet={(offset) => void changeClock(offset)}
      />
      {problem !== null && <ProblemNote error={problem} />}
    </li>
  );
}
