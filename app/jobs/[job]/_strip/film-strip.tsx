'use client';

import { useState } from 'react';
import { type Film, shortTime } from '@/lib/film';
import type { JobRecord } from '@/shared/jobs';
import type { FilmPlayer } from '../_film/film-player';
import { usePlayerValue } from '../_film/use-film';
import { EngravedScale } from './engraved-scale';
import { SoundStrip, type StripView } from './sound-strip';
import { Stills } from './stills';
import styles from './strip.module.css';
import { useSound } from './use-sound';

interface FilmStripProps {
  player: FilmPlayer;
  film: Film;
  record: JobRecord;
  zoom: number;
  selected: string | null;
  onSelect: (id: string) => void;
  onMove: (id: string, filmMs: number) => void;
}

/** Stills, sound and the engraved scale with its markers: one strip, one clock. */
export function FilmStrip({ player, film, record, zoom, selected, onSelect, onMove }: FilmStripProps) {
  const [view, setView] = useState<StripView>({ fromMs: 0, toMs: film.durationMs, pixelsPerMs: 0 });
  const sound = useSound(film, record.takes);
  const seconds = usePlayerValue((p) => Math.floor(p.filmMs / 1000), 0);
  return (
    <div className={styles.strip}>
      <Stills film={film} takes={record.takes} view={view} />
      <div
        role="slider"
        tabIndex={0}
        aria-label="Film position"
        aria-valuemin={0}
        aria-valuemax={Math.round(film.durationMs / 1000)}
        aria-valuenow={seconds}
        aria-valuetext={`${shortTime(seconds * 1000)} of ${shortTime(film.durationMs)}`}
      >
        <SoundStrip player={player} durationMs={film.durationMs} sound={sound} zoom={zoom} onView={setView} />
      </div>
      <EngravedScale
        film={film}
        record={record}
        view={view}
        selected={selected}
        onSelect={onSelect}
        onMove={onMove}
      />
    </div>
  );
}
