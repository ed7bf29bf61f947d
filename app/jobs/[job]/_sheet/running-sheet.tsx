'use client';

import { useEffect, useRef } from 'react';
import type { Film } from '@/lib/film';
import { shortTime } from '@/lib/film';
import { usePlayerValue } from '../_film/use-film';
import { ProposalLine } from '../_narration/proposal-line';
import { SpokenLine } from '../_narration/spoken-line';
import { FindInSheet } from './find-in-sheet';
import { JointLine } from './joint-line';
import { MarkerLine } from './marker-line';
import { ReadingLine } from './reading-line';
import styles from './sheet.module.css';
import { lineAt, type SheetLine } from './sheet-lines';

interface RunningSheetProps {
  film: Film;
  lines: readonly SheetLine[];
  selected: string | null;
  /** The line whose words are being written. */
  writing: string | null;
  onSelect: (line: SheetLine) => void;
  onWrite: (id: string | null) => void;
  /** A proposal was decided: the next one is wanted. */
  onDecided: (line: SheetLine) => void;
}

/** The page that runs downward in time: what was marked and measured, at its moment. */
export function RunningSheet({
  film,
  lines,
  selected,
  writing,
  onSelect,
  onWrite,
  onDecided,
}: RunningSheetProps) {
  const now = usePlayerValue((player) => lineAt(lines, player.filmMs + 1)?.id ?? null, null);
  const playing = usePlayerValue((player) => !player.paused, false);
  const page = useRef<HTMLOListElement>(null);
  useFollow(page, playing ? now : null);
  useFollow(page, selected);

  const firstLoose = lines.findIndex((line) => line.filmMs === null);
  return (
    <section className={styles.sheet} aria-label="Running sheet">
      {lines.length > 0 && <FindInSheet lines={lines} onSelect={onSelect} />}
      {lines.length === 0 && <Blank empty={film.durationMs === 0} />}
      <ol ref={page} className={styles.lines}>
        {lines.map((line, index) => (
          <li
            key={line.id}
            data-line={line.id}
            className={styles.line}
            data-now={line.id === now || undefined}
            data-selected={line.id === selected || undefined}
          >
            {index === firstLoose && <p className={styles.looseHead}>Without a moment on the film</p>}
            <button
              type="button"
              className={styles.at}
              onClick={() => onSelect(line)}
              aria-label={`Go to ${timeWords(line)}`}
            >
              {line.filmMs === null ? '–' : shortTime(line.filmMs)}
            </button>
            {line.type === 'marker' && (
              <MarkerLine
                line={line}
                selected={line.id === selected}
                writing={line.id === writing}
                onSelect={onSelect}
                onWrite={onWrite}
              />
            )}
            {line.type === 'reading' && (
              <ReadingLine line={line} selected={line.id === selected} onSelect={onSelect} />
            )}
            {line.type === 'proposal' && (
              <ProposalLine
                line={line}
                selected={line.id === selected}
                changing={line.id === writing}
                onSelect={onSelect}
                onChange={onWrite}
                onDecided={onDecided}
              />
            )}
            {line.type === 'spoken' && (
              <SpokenLine line={line} selected={line.id === selected} onSelect={onSelect} />
            )}
            {line.type === 'joint' && (
              <JointLine line={line} selected={line.id === selected} onSelect={onSelect} />
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Blank({ empty }: { empty: boolean }) {
  return (
    <p className={styles.blank}>
      {empty
        ? 'The sheet fills as the film is marked. Add the takes of this job first.'
        : 'Nothing is marked yet. Play the film and drop a marker where the case is opened, the fault is heard, the meter is read.'}
    </p>
  );
}

/** Keeps a line in sight without stealing the page from a hand that scrolls elsewhere. */
function useFollow(page: React.RefObject<HTMLOListElement | null>, id: string | null) {
  useEffect(() => {
    if (!id) return;
    const line = page.current?.querySelector(`[data-line="${id}"]`);
    const scroller = page.current?.closest<HTMLElement>('[data-sheet-scroller]');
    if (!line || !scroller) return;
    const box = scroller.getBoundingClientRect();
    const at = line.getBoundingClientRect();
    if (at.top < box.top || at.bottom > box.bottom)
      scroller.scrollBy({ top: at.top - box.top - box.height / 3, behavior: 'smooth' });
  }, [page, id]);
}

function timeWords(line: SheetLine): string {
  return line.filmMs === null ? 'this line' : shortTime(line.filmMs);
}
