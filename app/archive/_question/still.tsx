'use client';

import { useState } from 'react';
import { shortTime } from '@/lib/film';
import type { Found } from '@/shared/archive';
import styles from './answers.module.css';
import { FindableShape } from './kind-words';

interface StillProps {
  id: string;
  found: Found;
  still: string | null;
  onPlay: () => void;
}

/** The picture at the moment: touched, the film plays from there. */
export function Still({ id, found, still, onPlay }: StillProps) {
  const { moment, filmMs, title, kind } = found;
  if (!moment)
    return (
      <div className={styles.blank}>
        <FindableShape kind={kind} size={34} />
        <span>not on film</span>
      </div>
    );
  const time = shortTime(filmMs ?? moment.ms);
  return (
    <button
      id={id}
      type="button"
      className={styles.still}
      onClick={onPlay}
      aria-label={`Play from ${time}: ${title}`}
    >
      <StillPicture key={still} still={still} />
      <span className={styles.stamp} aria-hidden="true">
        <PlayShape /> {time}
      </span>
    </button>
  );
}

function StillPicture({ still }: { still: string | null }) {
  const [isThere, setThere] = useState(true);
  if (still === null) return <span className={styles.noPicture}>sound only</span>;
  if (!isThere) return <span className={styles.noPicture}>no picture yet</span>;
  return (
    // biome-ignore lint/performance/noImgElement: a picture of our own, made for this size.
    <img src={still} alt="" width={192} height={108} loading="lazy" onError={() => setThere(false)} />
  );
}

export function PlayShape() {
  return (
    <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true" fill="currentColor">
      <path d="M2 1l9 5-9 5z" />
    </svg>
  );
}
