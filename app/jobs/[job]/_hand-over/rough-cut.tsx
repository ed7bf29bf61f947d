'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { exactTime, type Film, shortTime } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';
import { usePlayer } from '../_film/use-film';
import styles from './cut.module.css';
import { inFilmOrder, isWithin, keyOf, lengthOf, onFilm } from './spans';
import { useHandOver } from './use-hand-over';

interface RoughCutProps {
  film: Film;
  onAdd: (spans: readonly TakeSpan[], told: string) => Promise<unknown>;
}

/** Long silences and what was filmed after the camera was said to stop: looked through first, then left out. */
export function RoughCut({ film, onAdd }: RoughCutProps) {
  const { settings, roughCut } = useHandOver().view.cut;
  const [open, setOpen] = useState(false);
  const found = inFilmOrder(
    film,
    roughCut.filter((span) => onFilm(film, span) && !isWithin(span, settings.cutAway)),
  );
  if (found.length === 0)
    return (
      <p className={styles.fine}>No silence or camera stop is left that a rough cut could start from.</p>
    );
  if (!open)
    return (
      <div>
        <Button onClick={() => setOpen(true)}>
          Rough cut from {counted(found.length, 'silence or camera stop', 'silences and camera stops')}
        </Button>
      </div>
    );
  return <Found film={film} found={found} onAdd={onAdd} onClose={() => setOpen(false)} />;
}

interface FoundProps extends RoughCutProps {
  found: readonly TakeSpan[];
  onClose: () => void;
}

function Found({ film, found, onAdd, onClose }: FoundProps) {
  const player = usePlayer();
  const { busy, problem, run } = useAttempt();
  const [without, setWithout] = useState<ReadonlySet<string>>(new Set());
  const chosen = found.filter((span) => !without.has(keyOf(span)));
  const turn = (key: string) => setWithout((before) => turned(before, key));
  const add = () =>
    run(async () => {
      await onAdd(chosen, `${counted(chosen.length, 'part')} left out`);
      onClose();
    });
  return (
    <div className={styles.preview} role="group" aria-label="Rough cut">
      <ul className={styles.found}>
        {found.map((span) => {
          const key = keyOf(span);
          const lies = onFilm(film, span);
          return (
            lies && (
              <li key={key}>
                <label className={styles.tick}>
                  <input type="checkbox" checked={!without.has(key)} onChange={() => turn(key)} />
                  <span className="figures">
                    {exactTime(lies.fromMs)} – {exactTime(lies.toMs)}
                  </span>
                </label>
                <Button
                  weight="bare"
                  aria-label={`Look at ${shortTime(lies.fromMs)}`}
                  onClick={() => player?.seek(lies.fromMs)}
                >
                  Look
                </Button>
              </li>
            )
          );
        })}
      </ul>
      <div className={styles.maker}>
        <Button weight="main" aria-disabled={busy || chosen.length === 0} onClick={() => void add()}>
          Leave out {counted(chosen.length, 'part')}, {shortTime(lengthOf(chosen))}
        </Button>
        <Button weight="bare" onClick={onClose}>
          Close
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}

function turned(keys: ReadonlySet<string>, key: string): ReadonlySet<string> {
  const next = new Set(keys);
  if (!next.delete(key)) next.add(key);
  return next;
}
