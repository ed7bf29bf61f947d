'use client';

import { useState } from 'react';
import { KeptField } from '@/app/_parts/kept-field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { type Film, filmTimeOf } from '@/lib/film';
import type { Cover } from '@/shared/cut';
import { DomainError } from '@/shared/problem';
import { usePlayerValue } from '../_film/use-film';
import styles from './cut.module.css';
import { type Region, regionBetween, sides, typedSide } from './region';

interface CoverRegionProps {
  film: Film;
  cover: Cover;
  onChange: (next: Cover) => Promise<unknown>;
}

/** Where in the picture a cover lies: drawn on a still with the pointer, or typed in percent. */
export function CoverRegion({ film, cover, onChange }: CoverRegionProps) {
  return (
    <div className={styles.region}>
      <CoverDrawing film={film} cover={cover} onChange={onChange} />
      <div className={styles.sides} role="group" aria-label="Region in percent of the picture">
        {sides.map(({ name, label }) => (
          <KeptField
            key={name}
            label={label}
            name={name}
            value={percent(cover[name])}
            onKeep={async (text) => {
              const next = typedSide(cover, name, text);
              if (!next)
                throw new DomainError(
                  'invalid',
                  'It lies outside of the picture.',
                  'Write percent, as in 12.5.',
                );
              await onChange({ ...cover, ...next });
            }}
          />
        ))}
      </div>
    </div>
  );
}

function CoverDrawing({ film, cover, onChange }: CoverRegionProps) {
  const { problem, run } = useAttempt();
  const [drawn, setDrawn] = useState<Region | null>(null);
  const [start, setStart] = useState<{ x: number; y: number } | null>(null);
  const ms = useShownMs(film, cover);
  const region = drawn ?? cover;
  const pointOf = (event: React.PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
  };
  const begin = (event: React.PointerEvent<HTMLDivElement>) => {
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    setStart(pointOf(event));
  };
  const move = (event: React.PointerEvent<HTMLDivElement>) => {
    if (start) setDrawn(regionBetween(start, pointOf(event)));
  };
  const leave = () => {
    setStart(null);
    setDrawn(null);
  };
  const end = () => {
    const next = drawn;
    setStart(null);
    if (next)
      void run(async () => {
        await onChange({ ...cover, ...next });
      }).finally(() => setDrawn(null));
  };
  return (
    <div>
      <div
        className={styles.drawing}
        data-drawing
        onPointerDown={begin}
        onPointerMove={move}
        onPointerUp={end}
        onPointerCancel={leave}
      >
        {/* biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size. */}
        <img
          src={`/api/takes/${cover.takeId}/still?ms=${ms}&size=full`}
          alt="What the film shows under the cover"
          draggable={false}
        />
        <span
          className={styles.covered}
          aria-hidden="true"
          style={{
            left: `${region.x * 100}%`,
            top: `${region.y * 100}%`,
            width: `${region.width * 100}%`,
            height: `${region.height * 100}%`,
          }}
        />
      </div>
      <p className={styles.fine}>Draw over what is to be hidden, or type where it lies.</p>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}

const stillStepMs = 500;

/** The moment that the film shows, where it lies within the cover; else where the cover begins. */
function useShownMs(film: Film, { takeId, fromMs, toMs }: Cover): number {
  const at = usePlayerValue((player) => {
    const now = player.moment;
    if (now?.takeId !== takeId || now.ms < fromMs || now.ms >= toMs) return null;
    return Math.max(fromMs, Math.round(now.ms / stillStepMs) * stillStepMs);
  }, null);
  const first = filmTimeOf(film, { takeId, ms: fromMs });
  return at ?? (first?.shown === false ? Math.max(0, toMs - 1) : fromMs);
}

/** "12.5": percent with a tenth where there is one. */
function percent(share: number): string {
  return String(Math.round(share * 1000) / 10);
}
