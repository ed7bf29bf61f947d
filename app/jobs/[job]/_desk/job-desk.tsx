'use client';

import { useCallback, useMemo, useState } from 'react';
import { layOut } from '@/lib/film';
import type { JobRecord } from '@/shared/jobs';
import type { FilmPlayer } from '../_film/film-player';
import { FilmSide } from '../_film/film-side';
import { usePlayer } from '../_film/use-film';
import { NarrationSheet } from '../_narration/narration-sheet';
import { NarrationProvider, useNarration } from '../_narration/use-narration';
import { TakePicker } from '../_picker/take-picker';
import { RunningSheet } from '../_sheet/running-sheet';
import { type SheetLine, sheetLines } from '../_sheet/sheet-lines';
import { ChapterList } from './chapter-list';
import styles from './desk.module.css';
import { DeskFrame } from './desk-frame';
import { DropBar } from './drop-bar';
import { KeyCard } from './key-card';
import type { OpenSheet } from './open-sheet';
import { QuickReading } from './quick-reading';
import { TakesList } from './takes-list';
import { TicketHead } from './ticket-head';
import { useKeys } from './use-keys';
import { useMarkerChanges } from './use-marker-changes';
import { useOpenedAt } from './use-opened-at';
import { useDesk } from './use-record';
import { WiringList } from './wiring-list';

/** A job at the bench: the picture and its strip beside the running sheet. */
export function JobDesk({ first }: { first: JobRecord }) {
  return <DeskFrame first={first}>{(onPlayer) => <Desk onPlayer={onPlayer} />}</DeskFrame>;
}

function Desk({ onPlayer }: { onPlayer: (player: FilmPlayer | null) => void }) {
  const { record, refresh } = useDesk();
  const player = usePlayer();
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const narration = useNarration();
  const lines = useMemo(() => sheetLines(film, record, narration), [film, record, narration]);
  const [selected, setSelected] = useState<string | null>(null);
  const [writing, setWriting] = useState<string | null>(null);
  const [zoom, setZoom] = useState(1);
  const [open, setOpen] = useState<OpenSheet | null>(null);
  const markers = useMarkerChanges();

  const select = useCallback(
    (line: SheetLine) => {
      setSelected(line.id);
      setWriting(null);
      if (line.filmMs !== null) player?.seek(line.filmMs);
    },
    [player],
  );
  const selectById = useCallback(
    (id: string) => lines.filter((line) => line.id === id).forEach(select),
    [lines, select],
  );

  /** After a decision the next proposal is selected, and the film is there. */
  const decided = useCallback(
    (line: SheetLine) => {
      const at = lines.findIndex((candidate) => candidate.id === line.id);
      const next = [...lines.slice(at + 1), ...lines.slice(0, at)].find(
        (candidate) => candidate.type === 'proposal' && candidate.proposal.decision === 'open',
      );
      if (next) select(next);
      else setWriting(null);
    },
    [lines, select],
  );

  const drop = useCallback(
    async (kind: Parameters<typeof markers.drop>[0]) => {
      const moment = player?.moment;
      if (!moment) return;
      const marker = await markers.drop(kind, moment);
      if (!marker) return;
      setSelected(marker.id);
      setWriting(marker.id);
    },
    [markers, player],
  );

  useOpenedAt({ film, player, lines, select });
  useKeys({ player, lines, selected, select, decided, drop, setWriting, setZoom, setOpen });

  return (
    <NarrationProvider value={narration}>
      <main className={styles.desk}>
        <TicketHead onOpen={setOpen} />
        <div className={styles.left}>
          <FilmSide
            film={film}
            player={player}
            onPlayer={onPlayer}
            onAddTakes={() => setOpen('picker')}
            zoom={zoom}
            onZoom={setZoom}
            selected={selected}
            onSelect={selectById}
          />
          <DropBar disabled={film.durationMs === 0} onDrop={(kind) => void drop(kind)} />
          <QuickReading />
        </div>
        <div className={styles.right} data-sheet-scroller>
          <RunningSheet
            film={film}
            lines={lines}
            selected={selected}
            writing={writing}
            onSelect={select}
            onWrite={setWriting}
            onDecided={decided}
          />
        </div>
        <TakesList open={open === 'takes'} onClose={() => setOpen(null)} onAdd={() => setOpen('picker')} />
        <TakePicker
          jobId={record.job.id}
          open={open === 'picker'}
          onClose={() => setOpen(null)}
          onAdded={() => void refresh()}
        />
        <ChapterList open={open === 'chapters'} onClose={() => setOpen(null)} />
        <WiringList open={open === 'wiring'} onClose={() => setOpen(null)} />
        <NarrationSheet open={open === 'narration'} onClose={() => setOpen(null)} />
        <KeyCard open={open === 'keys'} onClose={() => setOpen(null)} />
      </main>
    </NarrationProvider>
  );
}
