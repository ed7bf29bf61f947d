'use client';

import { useMemo, useState } from 'react';
import { ButtonLink } from '@/app/_parts/button';
import { ticketNumber } from '@/app/_parts/words';
import { layOut } from '@/lib/film';
import type { JackView } from '@/shared/jack-check';
import type { JobRecord } from '@/shared/jobs';
import deskStyles from '../_desk/desk.module.css';
import { DeskProvider, useDesk, useFreshRecord, useRecord } from '../_desk/use-record';
import type { FilmPlayer } from '../_film/film-player';
import { FilmSide } from '../_film/film-side';
import { PlayerProvider } from '../_film/use-film';
import { TakePicker } from '../_picker/take-picker';
import { useTraceKeys } from '../_trace/use-trace-keys';
import { HarnessSection } from './harness-section';
import styles from './jack.module.css';
import { Judgement } from './judgement';
import type { AskedSetting } from './settings-rows';
import { SettingsSection } from './settings-section';
import { useJack } from './use-jack';

interface JackDeskProps {
  firstRecord: JobRecord;
  firstView: JackView;
}

/** A harness being checked at its jack: the film at one side, the measurements at the other. */
export function JackDesk({ firstRecord, firstView }: JackDeskProps) {
  const desk = useRecord(firstRecord.job.id, firstRecord);
  const [player, setPlayer] = useState<FilmPlayer | null>(null);
  useFreshRecord(desk);
  return (
    <DeskProvider value={desk}>
      <PlayerProvider value={player}>
        <CheckSheet firstView={firstView} player={player} onPlayer={setPlayer} />
      </PlayerProvider>
    </DeskProvider>
  );
}

interface CheckSheetProps {
  firstView: JackView;
  player: FilmPlayer | null;
  onPlayer: (player: FilmPlayer | null) => void;
}

function CheckSheet({ firstView, player, onPlayer }: CheckSheetProps) {
  const { record, refresh } = useDesk();
  const { view, keep, remove } = useJack(firstView);
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const [zoom, setZoom] = useState(1);
  const [picking, setPicking] = useState(false);
  const [asked, setAsked] = useState<AskedSetting | null>(null);
  useTraceKeys(player);
  return (
    <main className={`${deskStyles.desk} ${deskStyles.sheetWide}`}>
      <header className={deskStyles.ticket}>
        <span className={deskStyles.hole} aria-hidden="true" />
        <p className={deskStyles.number}>{ticketNumber(record.job.number)}</p>
        <div className={deskStyles.what}>
          <h1 className={deskStyles.title}>Check at the jack</h1>
          <p className={styles.fine}>{record.job.title}</p>
        </div>
        <ButtonLink href={`/jobs/${record.job.id}`}>Back to the job</ButtonLink>
      </header>
      <div className={deskStyles.left}>
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
      <div className={deskStyles.right}>
        <div className={styles.sheet}>
          <ul className={styles.cautions} aria-label="Take care">
            {view.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
          <HarnessSection view={view} onKeep={keep} onRemove={() => void remove()} />
          {view.harness && view.judgement && (
            <>
              <SettingsSection view={view} judgement={view.judgement} asked={asked} />
              <Judgement judgement={view.judgement} onAsk={setAsked} />
            </>
          )}
        </div>
      </div>
      <TakePicker
        jobId={record.job.id}
        open={picking}
        onClose={() => setPicking(false)}
        onAdded={() => void refresh()}
      />
    </main>
  );
}
