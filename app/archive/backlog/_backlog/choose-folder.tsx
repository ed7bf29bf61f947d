'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useId, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { FolderForm } from '@/app/_parts/folder-form';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { type Backlog, backlogIdSchema } from '@/shared/backlog';
import type { Folder } from '@/shared/takes';
import styles from './backlog.module.css';
import { folderInWords } from './words';

interface ChooseFolderProps {
  folders: readonly Folder[];
  /** Folders looked through before. */
  before: readonly Pick<Backlog, 'id' | 'folder' | 'under'>[];
  /** The one that is shown. */
  shown: Pick<Backlog, 'id' | 'folder' | 'under'> | null;
  /** It is being looked through or imported. */
  underWay: boolean;
}

const startedSchema = z.looseObject({ id: backlogIdSchema });

/** The first step: which folder of older recordings is meant. */
export function ChooseFolder({ folders, before, shown, underWay }: ChooseFolderProps) {
  const router = useRouter();
  const head = useId();
  const { busy, problem, run } = useAttempt();
  const [folderId, setFolderId] = useState<string>(shown?.folder.id ?? folders[0]?.id ?? '');
  const look = (event: React.FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const under = String(new FormData(event.currentTarget).get('under') ?? '');
    void run(async () => {
      const { id } = await call('POST', '/api/archive/backlog', startedSchema, { folderId, under });
      router.push(`/archive/backlog?at=${id}`);
      router.refresh();
    });
  };
  const named = (folder: Folder) => {
    setFolderId(folder.id);
    router.refresh();
  };
  return (
    <section className={styles.sheet} aria-labelledby={head}>
      <h2 id={head}>1. The folder</h2>
      {folders.length === 0 ? (
        <>
          <p>
            Name the folder in which your older recordings lie. They stay where they are, and are not changed.
          </p>
          <FolderForm onNamed={named} />
        </>
      ) : (
        <>
          <form className={styles.choose} onSubmit={look}>
            <ChoiceField
              label="Recordings folder"
              value={folderId}
              onChange={(event) => setFolderId(event.target.value)}
            >
              {folders.map((folder) => (
                <option key={folder.id} value={folder.id}>
                  {folder.path}
                  {folder.reachable ? '' : ' (cannot be read now)'}
                </option>
              ))}
            </ChoiceField>
            <TextField
              label="Only a folder inside it"
              hint="Its way from there on, such as 2019/March. Empty for all of it."
              name="under"
              defaultValue={shown?.under ?? ''}
              spellCheck={false}
              autoCapitalize="off"
              autoComplete="off"
            />
            <Button type="submit" weight={shown ? 'plain' : 'main'} aria-disabled={busy || underWay}>
              {shown ? 'Look through again' : 'Look through'}
            </Button>
          </form>
          {problem !== null && <ProblemNote error={problem} />}
          <details>
            <summary>Name another folder</summary>
            <FolderForm onNamed={named} />
          </details>
        </>
      )}
      <Before before={before.filter(({ id }) => id !== shown?.id)} />
    </section>
  );
}

function Before({ before }: Pick<ChooseFolderProps, 'before'>) {
  if (before.length === 0) return null;
  return (
    <details>
      <summary>Looked through before</summary>
      <ul className={styles.before}>
        {before.map((each) => (
          <li key={each.id}>
            <Link href={`/archive/backlog?at=${each.id}`}>{folderInWords(each)}</Link>
          </li>
        ))}
      </ul>
    </details>
  );
}
