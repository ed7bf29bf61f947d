'use client';

import { type Film, filmTimeOf } from '@/lib/film';
import type { Take } from '@/shared/takes';
import type { StripView } from './sound-strip';
import styles from './strip.module.css';

/** Width of a still on the strip, in pixels. */
const stillPx = 84;

/** Stills along the film, as many as there is room for, in view only. */
export function Stills({ film, takes, view }: { film: Film; takes: readonly Take[]; view: StripView }) {
  const shown = stillsInView(film, takes, view);
  return (
    <div className={styles.stills} aria-hidden="true">
      {shown.map(({ key, address, left }) => (
        // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
        <img
          key={key}
          src={address}
          alt=""
          width={stillPx}
          className={styles.still}
          style={{ left }}
          draggable={false}
        />
      ))}
    </div>
  );
}

function stillsInView(film: Film, takes: readonly Take[], view: StripView) {
  if (view.pixelsPerMs === 0) return [];
  const slotMs = stillPx / view.pixelsPerMs;
  const first = Math.floor(view.fromMs / slotMs);
  const last = Math.floor(Math.min(view.toMs, film.durationMs - 1) / slotMs);
  const all = takes.flatMap((take) =>
    take.stills.flatMap((ms) => {
      const at = filmTimeOf(film, { takeId: take.id, ms });
      return at?.shown ? [{ takeId: take.id, ms, filmMs: at.filmMs }] : [];
    }),
  );
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index).flatMap(
    (slot) => {
      const still = nearest(all, (slot + 0.5) * slotMs, slotMs);
      const left = (slot * slotMs - view.fromMs) * view.pixelsPerMs;
      return still
        ? [{ key: slot, address: `/api/takes/${still.takeId}/still?ms=${still.ms}&size=strip`, left }]
        : [];
    },
  );
}

/** The still nearest to a time, not further than one still's width beyond its slot: a gap is better than a lie. */
function nearest<T extends { filmMs: number }>(
  stills: readonly T[],
  filmMs: number,
  slotMs: number,
): T | null {
  let low = 0;
  let high = stills.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stills[middle]?.filmMs ?? 0) < filmMs) low = middle + 1;
    else high = middle;
  }
  const near = [stills[low - 1], stills[low]].flatMap((still) => still ?? []);
  const best = near.sort((a, b) => Math.abs(a.filmMs - filmMs) - Math.abs(b.filmMs - filmMs))[0];
  return best && Math.abs(best.filmMs - filmMs) <= Math.max(slotMs * 1.5, 12_000) ? best : null;
}
