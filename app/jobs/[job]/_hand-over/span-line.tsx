'use client';

import { Button } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { exactTime, type Film, shortTime } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';
import { DomainError } from '@/shared/problem';
import { usePlayer } from '../_film/use-film';
import { Fold } from '../_ticket/fold';
import { stayAt } from '../_ticket/use-anchor';
import styles from './cut.module.css';
import { onFilm } from './spans';
import { typedTime } from './typed-time';

interface SpanLineProps<T extends TakeSpan> {
  film: Film;
  span: T;
  /** "left out": what happens to it. */
  what: string;
  onChange: (next: T) => Promise<unknown>;
  onRemove: () => Promise<unknown>;
  /** More to change about it. */
  children?: React.ReactNode;
}

/** A span of the film in a list: the way there, its times to be typed or taken from the film, and the way off. */
export function SpanLine<T extends TakeSpan>({
  film,
  span,
  what,
  onChange,
  onRemove,
  children,
}: SpanLineProps<T>) {
  const player = usePlayer();
  const { busy, problem, run } = useAttempt();
  const lies = onFilm(film, span);
  const name = lies
    ? `${what} ${shortTime(lies.fromMs)} to ${shortTime(lies.toMs)}`
    : `${what}, not on the film any more`;
  const remove = (button: HTMLElement) =>
    run(async () => {
      const line = button.closest('li');
      const next =
        line?.nextElementSibling ?? line?.previousElementSibling ?? line?.closest('section') ?? null;
      await onRemove();
      stayAt(next);
    });
  const off = (
    <Button
      weight="bare"
      aria-disabled={busy}
      aria-label={`Take off: ${name}`}
      onClick={(event) => void remove(event.currentTarget)}
    >
      Take off
    </Button>
  );
  return (
    <li className={styles.span} tabIndex={-1}>
      {lies ? (
        <Fold
          label="Change"
          of={name}
          beside={
            <div className={styles.spanTimes}>
              <Button
                weight="bare"
                className={styles.time}
                aria-label={`Go to the start: ${name}`}
                onClick={() => player?.seek(lies.fromMs)}
              >
                {exactTime(lies.fromMs)}
              </Button>
              <span aria-hidden="true">–</span>
              <Button
                weight="bare"
                className={styles.time}
                aria-label={`Go to the end: ${name}`}
                onClick={() => player?.seek(lies.toMs)}
              >
                {exactTime(lies.toMs)}
              </Button>
              <span className={styles.fine}>{lengthInWords(lies.toMs - lies.fromMs)}</span>
              {off}
            </div>
          }
        >
          <SpanEnds film={film} span={span} lies={lies} onChange={onChange} />
          {children}
        </Fold>
      ) : (
        <div className={styles.spanTimes}>
          <span>Not on the film any more: its take is gone or trimmed.</span>
          {off}
        </div>
      )}
      {problem !== null && <ProblemNote error={problem} />}
    </li>
  );
}

/** "0.4 s", "12.0 s", "3:40". */
function lengthInWords(ms: number): string {
  return ms < 60_000 ? `${(ms / 1000).toFixed(1)} s` : shortTime(ms);
}

interface SpanEndsProps<T extends TakeSpan> {
  film: Film;
  span: T;
  lies: { fromMs: number; toMs: number };
  onChange: (next: T) => Promise<unknown>;
}

const ends = [
  { name: 'fromMs', label: 'Starts at', here: 'Starts here' },
  { name: 'toMs', label: 'Ends at', here: 'Ends here' },
] as const;

function SpanEnds<T extends TakeSpan>({ film, span, lies, onChange }: SpanEndsProps<T>) {
  const player = usePlayer();
  const { problem, run } = useAttempt();
  const set = async (end: 'fromMs' | 'toMs', filmMs: number | null) => {
    const next = { ...span, [end]: takeTime(film, span, filmMs) };
    if (next.toMs <= next.fromMs) throw new SpanTimeError('It would end before it starts.');
    await onChange(next);
  };
  return (
    <div className={styles.ends}>
      {ends.map(({ name, label, here }) => (
        <div key={name} className={styles.end}>
          <KeptField
            label={label}
            name={name}
            value={exactTime(lies[name])}
            onKeep={(text) => set(name, typedTime(text))}
          />
          <Button onClick={() => void run(() => set(name, player?.filmMs ?? null))}>{here}</Button>
        </div>
      ))}
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}

class SpanTimeError extends DomainError {
  constructor(title: string) {
    super('invalid', title, 'Write a time of the film within its take, as in 1:02.500.');
  }
}

/** A film time as time of the span’s own take. @throws SpanTimeError where it lies outside of it */
function takeTime(film: Film, { takeId }: TakeSpan, filmMs: number | null): number {
  const take = film.takes.find((candidate) => candidate.takeId === takeId);
  if (filmMs === null || !take) throw new SpanTimeError('That is no time.');
  if (filmMs < take.filmStartMs || filmMs > take.filmEndMs)
    throw new SpanTimeError('That lies in another take.');
  return Math.round(take.startMs + filmMs - take.filmStartMs);
}
