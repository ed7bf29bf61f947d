'use client';

import { useMemo, useState } from 'react';
import { ButtonLink } from '@/app/_parts/button';
import { ticketNumber } from '@/app/_parts/words';
import { layOut } from '@/lib/film';
import type { JobRecord } from '@/shared/jobs';
import type { FilmPlayer } from '../_film/film-player';
import { FilmSide } from '../_film/film-side';
import { usePlayer } from '../_film/use-film';
import { TakePicker } from '../_picker/take-picker';
import styles from './desk.module.css';
import { DeskFrame } from './desk-frame';
import { useDesk } from './use-record';
import { useSideKeys } from './use-side-keys';

interface SideDeskProps {
  firstRecord: JobRecord;
  title: string;
  children: React.ReactNode;
}

/** A worksheet of a job: the film at one side, the sheet at the other. */
export function SideDesk({ firstRecord, title, children }: SideDeskProps) {
  return (
    <DeskFrame first={firstRecord}>
      {(onPlayer) => (
        <Desk title={title} onPlayer={onPlayer}>
          {children}
        </Desk>
      )}
    </DeskFrame>
  );
}

interface DeskProps {
  title: string;
  onPlayer: (player: FilmPlayer | null) => void;
  children: React.ReactNode;
}

function Desk({ title, onPlayer, children }: DeskProps) {
  const { record, refresh } = useDesk();
  const player = usePlayer();
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const [zoom, setZoom] = useState(1);
  const [picking, setPicking] = useState(false);
  useSideKeys(player);
  return (
    <main className={`${styles.desk} ${styles.sheetWide}`}>
      <header className={styles.ticket}>
        <span className={styles.hole} aria-hidden="true" />
        <p className={styles.number}>{ticketNumber(record.job.number)}</p>
        <div className={styles.what}>
          <h1 className={styles.title}>{title}</h1>
          <p className={styles.fine}>{record.job.title}</p>
        </div>
        <ButtonLink href={`/jobs/${record.job.id}`}>Back to the job</ButtonLink>
      </header>
      <div className={styles.left}>
        <FilmSide
          film={film}
          player={player}
          onPlayer={onPlayer}
          onAddTakes={() => setPicking(true)}
          zoom={zoom}
          onZoom={setZoom}
          selected={null}
          onSelect={() => undefined}
        />
      </div>
      <div className={styles.right}>{children}</div>
      <TakePicker
        jobId={record.job.id}
        open={picking}
        onClose={() => setPicking(false)}
        onAdded={() => void refresh()}
      />
    </main>
  );
}
