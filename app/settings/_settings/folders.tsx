'use client';

import { useRouter } from 'next/navigation';
import { useRef } from 'react';
import { FolderForm } from '@/app/_parts/folder-form';
import { useNotices } from '@/app/_parts/notices';
import type { Folder } from '@/shared/takes';
import styles from '../settings.module.css';
import { spanInWords } from './camera-clock';
import { FolderRow } from './folder-row';

interface FoldersProps {
  folders: readonly Folder[];
  /** Minutes that the bench machine's clock is east of UTC now. */
  hereMinutes: number;
}

/** The recordings folders: name one, set its camera clock, forget it. */
export function Folders({ folders, hereMinutes }: FoldersProps) {
  const router = useRouter();
  const notices = useNotices();
  const head = useRef<HTMLHeadingElement>(null);
  const forgotten = () => {
    // The button that was pressed goes with its folder.
    head.current?.focus();
    router.refresh();
  };
  const named = () => {
    notices.done('Recordings folder named');
    router.refresh();
  };
  return (
    <section className={styles.sheet} aria-labelledby="folders">
      <h2 id="folders" ref={head} tabIndex={-1}>
        Recordings folders
      </h2>
      <p>
        Benchtake finds recordings in these folders and in the folders inside them. It never moves, changes or
        deletes a recording.
      </p>
      {folders.length > 0 && (
        <>
          <ul className={styles.folders}>
            {folders.map((folder) => (
              <FolderRow key={folder.id} folder={folder} onForgotten={forgotten} />
            ))}
          </ul>
          <p className={styles.soft}>
            About the camera clock: many cameras write local time as if it were UTC, so their takes seem hours
            off.
            {hereMinutes === 0
              ? ''
              : ` This machine is ${aheadOrBehind(hereMinutes)} now; for such a camera, choose ${cure(hereMinutes)}.`}{' '}
            Recordings that name their time zone are left as they are.
          </p>
        </>
      )}
      <FolderForm onNamed={named} />
    </section>
  );
}

function aheadOrBehind(minutes: number): string {
  return `${spanInWords(minutes)} ${minutes > 0 ? 'ahead of' : 'behind'} UTC`;
}

function cure(minutes: number): string {
  return `“${minutes > 0 ? 'earlier' : 'later'} by” ${spanInWords(minutes)}`;
}
