'use client';

import { useMemo, useState } from 'react';
import { ButtonLink } from '@/app/_parts/button';
import { layOut } from '@/lib/film';
import type { JobRecord } from '@/shared/jobs';
import type { TraceView } from '@/shared/traces';
import deskStyles from '../_desk/desk.module.css';
import { DeskProvider, useDesk, useFreshRecord, useRecord } from '../_desk/use-record';
import type { FilmPlayer } from '../_film/film-player';
import { FilmSide } from '../_film/film-side';
import { PlayerProvider } from '../_film/use-film';
import { TakePicker } from '../_picker/take-picker';
import { ConductorRow } from './conductor-row';
import { Follows } from './follows';
import { KickEntry } from './kick-entry';
import { MeasureNext } from './measure-next';
import { Outcomes } from './outcomes';
import { PairEntry } from './pair-entry';
import { type Pair, PairGrid } from './pair-grid';
import { Plans } from './plans';
import styles from './trace.module.css';
import { TraceReadings } from './trace-readings';
import { useTrace } from './use-trace';
import { useTraceKeys } from './use-trace-keys';

interface TraceDeskProps {
  firstRecord: JobRecord;
  firstTrace: TraceView;
}

/** A pickup being traced: the film at one side, the worksheet at the other. */
export function TraceDesk({ firstRecord, firstTrace }: TraceDeskProps) {
  const desk = useRecord(firstRecord.job.id, firstRecord);
  const [player, setPlayer] = useState<FilmPlayer | null>(null);
  useFreshRecord(desk);
  return (
    <DeskProvider value={desk}>
      <PlayerProvider value={player}>
        <Worksheet firstTrace={firstTrace} player={player} onPlayer={setPlayer} />
      </PlayerProvider>
    </DeskProvider>
  );
}

interface WorksheetProps {
  firstTrace: TraceView;
  player: FilmPlayer | null;
  onPlayer: (player: FilmPlayer | null) => void;
}

function Worksheet({ firstTrace, player, onPlayer }: WorksheetProps) {
  const { record, refresh } = useDesk();
  const { trace, patch, join, removeOutcome } = useTrace(firstTrace);
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const [zoom, setZoom] = useState(1);
  const [pair, setPair] = useState<Pair | null>(null);
  const [picking, setPicking] = useState(false);
  useTraceKeys(player);
  const { analysis, worksheet } = trace;
  return (
    <main className={`${deskStyles.desk} ${deskStyles.sheetWide}`}>
      <header className={deskStyles.ticket}>
        <span className={deskStyles.hole} aria-hidden="true" />
        <p className={deskStyles.number}>{String(record.job.number).padStart(4, '0')}</p>
        <div className={deskStyles.what}>
          <h1 className={deskStyles.title}>Trace: {worksheet.subject}</h1>
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
          <section className={styles.section} aria-labelledby="conductors">
            <h2 id="conductors">Conductors</h2>
            <ConductorRow analysis={analysis} />
            {worksheet.assumed.length > 0 && (
              <p className={styles.warn}>
                Roles taken over from the {worksheet.assumed[0]?.fromSubject}: assumed until this pickup’s own
                readings prove them.
              </p>
            )}
          </section>
          <MeasureNext analysis={analysis} onPair={setPair} />
          <section className={styles.section} aria-labelledby="pairs">
            <h2 id="pairs">Pairs</h2>
            <PairGrid analysis={analysis} chosen={pair} onChoose={setPair} />
            <PairEntry
              subject={worksheet.subject}
              conductors={worksheet.conductors}
              pair={pair}
              onNoted={() => setPair(null)}
            />
          </section>
          <section className={styles.section} aria-labelledby="kicks">
            <h2 id="kicks">Kicks</h2>
            <KickEntry analysis={analysis} />
          </section>
          <section className={styles.section} aria-labelledby="noted">
            <h2 id="noted">Read so far</h2>
            <TraceReadings subject={worksheet.subject} />
          </section>
          <section className={styles.section} aria-labelledby="follows" aria-live="polite">
            <h2 id="follows">What follows</h2>
            <Follows analysis={analysis} />
          </section>
          <section className={styles.section} aria-labelledby="plans">
            <h2 id="plans">Wiring plans</h2>
            <Plans
              trace={trace}
              onChoose={(planId) => void patch({ planId })}
              onJoin={(planId) => void join(planId)}
            />
          </section>
          <section className={styles.section} aria-labelledby="outcome">
            <h2 id="outcome">What was joined</h2>
            <Outcomes outcomes={trace.outcomes} onRemove={(id) => void removeOutcome(id)} />
          </section>
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
