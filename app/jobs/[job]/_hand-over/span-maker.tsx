'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { exactTime, type Film, filmTimeOf, type Moment } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';
import { usePlayer, usePlayerValue } from '../_film/use-film';
import styles from './cut.module.css';
import { spansBetween } from './spans';

interface SpanMakerProps {
  film: Film;
  /** "Leave out": what happens to the span. */
  verb: string;
  onSpans: (spans: readonly TakeSpan[]) => Promise<unknown>;
}

/** Marks a span on the film: once where it begins, once where it ends, whichever comes first. */
export function SpanMaker({ film, verb, onSpans }: SpanMakerProps) {
  const player = usePlayer();
  const nowMs = usePlayerValue((p) => Math.round(p.filmMs / 10) * 10, 0);
  const [from, setFrom] = useState<Moment | null>(null);
  const { busy, problem, run } = useAttempt();
  const fromMs = from && (filmTimeOf(film, from)?.filmMs ?? null);
  const end = () =>
    run(async () => {
      if (fromMs === null || !player) return;
      const spans = spansBetween(film, fromMs, player.filmMs);
      if (spans.length === 0) return;
      await onSpans(spans);
      setFrom(null);
    });
  if (fromMs === null)
    return (
      <div className={styles.maker}>
        <Button disabled={!player} onClick={() => setFrom(player?.moment ?? null)}>
          {verb} from here
        </Button>
        <span className={styles.fine}>
          The film stands at <span className="figures">{exactTime(nowMs)}</span>
        </span>
      </div>
    );
  return (
    <div className={styles.maker} data-open>
      <p>
        {verb} from <span className="figures">{exactTime(fromMs)}</span> …
      </p>
      <Button weight="main" aria-disabled={busy || nowMs === fromMs} onClick={() => void end()}>
        … to here, <span className="figures">{exactTime(nowMs)}</span>
      </Button>
      <Button weight="bare" onClick={() => setFrom(null)}>
        Give up
      </Button>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}
