'use client';

import { Button } from '@/app/_parts/button';
import { exactTime, type Film, shortTime } from '@/lib/film';
import { usePlayer, usePlayerValue } from '../_film/use-film';
import styles from './desk.module.css';

/** How far the strip may be drawn out. */
export const widestZoom = 512;
const speeds = [0.5, 1, 1.5, 2];

/** Play, step, speed and how far the strip is drawn out. */
export function Transport({
  film,
  zoom,
  onZoom,
}: {
  film: Film;
  zoom: number;
  onZoom: (next: (zoom: number) => number) => void;
}) {
  const player = usePlayer();
  const playing = usePlayerValue((p) => !p.paused, false);
  const filmMs = usePlayerValue((p) => Math.round(p.filmMs / 10) * 10, 0);
  const speed = usePlayerValue((p) => p.playbackRate, 1);
  const none = film.durationMs === 0;
  const step = (byMs: number) => player?.seek(player.filmMs + byMs);
  return (
    <div className={styles.transport} role="group" aria-label="Playing">
      <Button weight="main" className={styles.play} disabled={none} onClick={() => player?.toggle()}>
        {playing ? 'Pause' : 'Play'}
      </Button>
      <Button disabled={none} onClick={() => step(-5000)} aria-label="5 seconds back">
        −5 s
      </Button>
      <Button disabled={none} onClick={() => step(5000)} aria-label="5 seconds on">
        +5 s
      </Button>
      <p className={styles.clock}>
        <span className="figures">{exactTime(filmMs).slice(0, -1)}</span>
        <span className={styles.clockEnd}> of {shortTime(film.durationMs)}</span>
      </p>
      <label className={styles.speed}>
        <span className="only-read">Speed</span>
        <select
          value={speed}
          disabled={none}
          onChange={(event) => player && setSpeed(player, Number(event.currentTarget.value))}
        >
          {speeds.map((value) => (
            <option key={value} value={value}>
              {value}×
            </option>
          ))}
        </select>
      </label>
      <Button
        disabled={none || zoom <= 1}
        onClick={() => onZoom((now) => Math.max(1, now / 2))}
        aria-label="Show more of the film"
      >
        −
      </Button>
      <Button
        disabled={none || zoom >= widestZoom}
        onClick={() => onZoom((now) => Math.min(widestZoom, now * 2))}
        aria-label="Draw the strip out"
      >
        +
      </Button>
    </div>
  );
}

function setSpeed(player: { playbackRate: number }, rate: number): void {
  player.playbackRate = rate;
}
