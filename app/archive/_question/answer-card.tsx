'use client';

import Link from 'next/link';
import { useId } from 'react';
import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { counted, dayInWords, ticketNumber } from '@/app/_parts/words';
import { shortTime } from '@/lib/film';
import type { Answer, Found } from '@/shared/archive';
import styles from './answers.module.css';
import { addressOfFound } from './found-place';
import { Title, Words } from './found-words';
import { FindableShape, findableWords } from './kind-words';
import { MomentPlayer } from './moment-player';
import { PlayShape, Still } from './still';

interface AnswerCardProps {
  answer: Answer;
  today: string;
  /** Which of this job's moments plays; null where none does. */
  playing: Found | null;
  onPlay: (found: Found | null) => void;
}

/** So many of a job's other moments stand openly under the best. */
const openly = 2;

/** A job that answers: its best moment with picture and words, and its other moments under it. */
export function AnswerCard({ answer, today, playing, onPlay }: AnswerCardProps) {
  const { best, others, job, still } = answer;
  const id = useId();
  const button = `${id}-play`;
  const close = () => {
    onPlay(null);
    // The button is there again once the film has gone.
    requestAnimationFrame(() => document.getElementById(button)?.focus());
  };
  const other = (found: Found) => <OtherHit key={keyOf(found)} found={found} onPlay={onPlay} />;
  const rest = others.slice(openly);
  return (
    <article className={styles.card} aria-labelledby={id} data-playing={playing !== null}>
      {playing?.moment ? (
        <MomentPlayer
          moment={playing.moment}
          title={playing.title}
          address={addressOfFound(playing)}
          onClose={close}
        />
      ) : (
        <Still id={button} found={best} still={still} onPlay={() => onPlay(best)} />
      )}
      <div className={styles.told}>
        <p className={styles.kind}>
          <KindOfFound found={best} />
          {best.filmMs !== null && <span className={styles.time}>{shortTime(best.filmMs)} on the film</span>}
        </p>
        <h3 id={id} className={styles.title}>
          <Link href={addressOfFound(best)} prefetch={false} data-answer>
            <Title found={best} />
          </Link>
        </h3>
        <Words found={best} />
        <p className={styles.job}>
          <span className={styles.number}>{ticketNumber(job.number)}</span>{' '}
          <Link href={`/jobs/${job.id}`} prefetch={false} className={styles.jobTitle}>
            {job.title}
          </Link>
          {' · '}
          {job.instrument}
          {' · '}
          <time dateTime={job.day}>{dayInWords(job.day, today)}</time>
        </p>
        <NearBy name="Readings near by" lines={answer.readings.filter((line) => line !== best.title)} />
        <NearBy name="Joined" lines={answer.joints.filter((line) => line !== best.title)} />
      </div>
      {others.length > 0 && (
        <div className={styles.others}>
          <h4 className="only-read">More of this job</h4>
          <ul>{others.slice(0, openly).map(other)}</ul>
          {rest.length > 0 && (
            <details>
              <summary>{counted(rest.length, 'more moment')} of this job</summary>
              <ul>{rest.map(other)}</ul>
            </details>
          )}
        </div>
      )}
    </article>
  );
}

/** A marker is told by its own kind. */
function KindOfFound({ found: { kind, markerKind } }: { found: Found }) {
  return markerKind ? (
    <>
      <MarkerShape kind={markerKind} />
      {markerWords[markerKind]}
    </>
  ) : (
    <>
      <FindableShape kind={kind} />
      {findableWords[kind]}
    </>
  );
}

function keyOf({ kind, recordId }: Found): string {
  return `${kind} ${recordId}`;
}

/** Another moment of the same job, in one line. */
function OtherHit({ found, onPlay }: { found: Found; onPlay: (found: Found) => void }) {
  const { title, moment, filmMs } = found;
  return (
    <li className={styles.other}>
      {moment ? (
        <button
          type="button"
          className={styles.playOther}
          onClick={() => onPlay(found)}
          aria-label={`Play from ${shortTime(filmMs ?? moment.ms)}: ${title}`}
        >
          <PlayShape /> {shortTime(filmMs ?? moment.ms)}
        </button>
      ) : (
        <span className={styles.noTime}>–</span>
      )}
      <div>
        <p className={styles.otherHead}>
          <span className={styles.kind}>
            <KindOfFound found={found} />
          </span>
          <Link href={addressOfFound(found)} prefetch={false}>
            <Title found={found} />
          </Link>
        </p>
        <Words found={found} />
      </div>
    </li>
  );
}

function NearBy({ name, lines }: { name: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div className={styles.nearBy}>
      <h4>{name}</h4>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
