'use client';

import { Button } from '@/app/_parts/button';
import { ClashNote } from '@/app/_parts/kept-field-clash';
import { useKeptPick } from '@/app/_parts/kept-field-pick';
import { exactTime, shortTime } from '@/lib/film';
import { type FilmMoment, momentSchema } from '@/shared/moments';
import { usePlayer } from '../_film/use-film';
import styles from './ticket.module.css';
import { useMomentsOnFilm } from './use-moments';

interface MomentPinProps {
  /** Name of the field in the contract. */
  name: string;
  label: string;
  /** What it belongs to, for those who hear the page. */
  of: string;
  value: FilmMoment | null;
  onKeep: (next: FilmMoment | null, was: FilmMoment | null) => Promise<unknown>;
}

const pinSchema = momentSchema.nullable();

/** A moment of the film: a touch goes there, “here” pins the one that the film shows. */
export function MomentPin({ name, label, of, value, onKeep }: MomentPinProps) {
  const player = usePlayer();
  const { filmMsOf, hasFilm } = useMomentsOnFilm();
  const { pick, problem, clash, keepMine, takeThat } = useKeptPick({
    name,
    schema: pinSchema,
    value,
    onKeep,
  });
  const pinHere = () => {
    const here = player?.moment;
    if (here) void pick(here);
  };
  const saidThere = clash?.there ? filmMsOf(clash.there) : null;
  if (value === null && !hasFilm) return null;
  return (
    <div className={styles.pin} role="group" aria-label={`${label}: ${of}`}>
      <span className={styles.pinLabel}>{label}</span>
      {value ? <MomentButton moment={value} label={`Go to: ${label}`} /> : <span>not pinned</span>}
      {hasFilm && (
        <Button weight="bare" onClick={pinHere}>
          {value ? 'Here instead' : 'Here'}
        </Button>
      )}
      {value && (
        <Button weight="bare" onClick={() => void pick(null)}>
          Take off
        </Button>
      )}
      {problem && (
        <p className={styles.warn} role="alert">
          {problem}
        </p>
      )}
      {clash && (
        <ClashNote
          there={saidThere === null ? '' : exactTime(saidThere)}
          onKeepMine={() => void keepMine()}
          onTakeThat={takeThat}
        />
      )}
    </div>
  );
}

/** A time of the film; a touch goes there. */
export function MomentButton({ moment, label }: { moment: FilmMoment; label: string }) {
  const player = usePlayer();
  const { filmMsOf } = useMomentsOnFilm();
  const filmMs = filmMsOf(moment);
  if (filmMs === null) return <span className={styles.fine}>on a take that is gone</span>;
  return (
    <button
      type="button"
      className={styles.moment}
      aria-label={`${label}, ${shortTime(filmMs)}`}
      onClick={() => player?.seek(filmMs)}
    >
      {shortTime(filmMs)}
    </button>
  );
}
