'use client';

import type { Film } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';
import { usePlayer, usePlayerValue } from '../_film/use-film';
import styles from './cut.module.css';
import { keyOf, onFilm } from './spans';
import { useHandOver } from './use-hand-over';

const rows = [
  { list: 'cutAway', word: 'left out' },
  { list: 'muted', word: 'muted' },
  { list: 'covers', word: 'covered' },
] as const;

/**
 * The whole film as a bar, with what is left out, muted and covered. The lists below say the same, so it is for the
 * eye and the pointer only.
 */
export function FilmBar({ film }: { film: Film }) {
  const { settings } = useHandOver().view.cut;
  const player = usePlayer();
  const at = usePlayerValue((p) => Math.round(p.filmMs / 250) * 250, 0);
  const seek = (event: React.PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    player?.seek(((event.clientX - box.left) / box.width) * film.durationMs);
  };
  return (
    <div className={styles.bar} aria-hidden="true">
      <div className={styles.lanes} onPointerDown={seek}>
        {rows.map(({ list, word }) => (
          <div key={list} className={styles.lane} title={word}>
            {settings[list].map((span) => (
              <Stretch key={keyOf(span)} film={film} span={span} list={list} />
            ))}
          </div>
        ))}
        <span className={styles.now} style={{ left: part(at, film) }} />
      </div>
      <p className={styles.key}>
        {rows.map(({ list, word }) => (
          <span key={list}>
            <span className={styles.stretch} data-list={list} /> {word}
          </span>
        ))}
      </p>
    </div>
  );
}

function Stretch({ film, span, list }: { film: Film; span: TakeSpan; list: string }) {
  const lies = onFilm(film, span);
  if (!lies) return null;
  const width = `max(2px, ${part(lies.toMs - lies.fromMs, film)})`;
  return (
    <span className={styles.stretch} data-list={list} style={{ left: part(lies.fromMs, film), width }} />
  );
}

function part(ms: number, film: Film): string {
  return `${(ms / Math.max(1, film.durationMs)) * 100}%`;
}
