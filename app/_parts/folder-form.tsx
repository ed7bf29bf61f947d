'use client';

import { type Folder, folderSchema } from '@/shared/takes';
import { Button } from './button';
import { call } from './call';
import { TextField } from './field';
import styles from './folder-form.module.css';
import { ProblemNote } from './problem-note';
import { useAttempt } from './use-attempt';

/** Names a recordings folder by its whole path. */
export function FolderForm({ onNamed }: { onNamed: (folder: Folder) => void }) {
  const { busy, problem, run } = useAttempt();
  const name = (event: React.FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const path = String(new FormData(form).get('path') ?? '');
    void run(async () => {
      onNamed(await call('POST', '/api/folders', folderSchema, { path }));
      form.reset();
    });
  };
  return (
    <form className={styles.form} onSubmit={name}>
      <div className={styles.line}>
        <TextField
          label="Recordings folder"
          hint="Its whole path on the bench machine, such as /home/you/Videos or D:\Videos. Folders inside it count too."
          name="path"
          required
          spellCheck={false}
          autoCapitalize="off"
          autoComplete="off"
        />
        <Button type="submit" weight="main" aria-disabled={busy} className={styles.button}>
          Name this folder
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </form>
  );
}
