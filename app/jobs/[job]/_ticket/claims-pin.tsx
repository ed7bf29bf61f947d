'use client';

import { Button } from '@/app/_parts/button';
import { shortTime } from '@/lib/film';
import type { FilmMoment } from '@/shared/moments';
import { usePlayer, usePlayerValue } from '../_film/use-film';
import styles from './claims.module.css';
import { useMomentsOnFilm } from './use-moments';

interface ClaimPinProps {
  moment: FilmMoment | null;
  onPin: (moment: FilmMoment | null) => void;
}

/** Pins a claim to the moment that the film shows. */
export function ClaimPin({ moment, onPin }: ClaimPinProps) {
  const player = usePlayer();
  const { hasFilm, filmMsOf } = useMomentsOnFilm();
  const second = usePlayerValue((at) => Math.floor(at.filmMs / 1000), 0);
  if (!hasFilm && moment === null) return null;
  const pinned = moment && filmMsOf(moment);
  return (
    <div className={styles.row} role="group" aria-label="Moment">
      <span>
        {moment === null
          ? 'Not pinned to a moment.'
          : `Pinned to ${pinned === null ? 'a take that is gone' : shortTime(pinned)}.`}
      </span>
      {hasFilm && (
        <Button onClick={() => onPin(player?.moment ?? moment)}>
          Pin to this moment, <span className="figures">{shortTime(second * 1000)}</span>
        </Button>
      )}
      {moment !== null && (
        <Button weight="bare" onClick={() => onPin(null)}>
          Take the pin off
        </Button>
      )}
    </div>
  );
}
