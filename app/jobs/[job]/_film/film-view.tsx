'use client';

import { useEffect, useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import type { Film } from '@/lib/film';
import type { Take } from '@/shared/takes';
import { useDesk } from '../_desk/use-record';
import styles from './film.module.css';
import { FilmPlayer } from './film-player';
import { usePlayerValue } from './use-film';

interface FilmViewProps {
  film: Film;
  takes: readonly Take[];
  onPlayer: (player: FilmPlayer | null) => void;
  onAddTakes: () => void;
}

/** The picture. Two media elements: one shows, the other holds the next take ready. */
export function FilmView({ film, takes, onPlayer, onAddTakes }: FilmViewProps) {
  const first = useRef<HTMLVideoElement>(null);
  const second = useRef<HTMLVideoElement>(null);
  const [player, setPlayer] = useState<FilmPlayer | null>(null);

  useEffect(() => {
    if (!first.current || !second.current) return;
    const made = new FilmPlayer(first.current, second.current);
    setPlayer(made);
    onPlayer(made);
    return () => {
      onPlayer(null);
      made.release();
    };
  }, [onPlayer]);

  useEffect(() => {
    player?.setFilm(film, takes.map(playable));
  }, [player, film, takes]);

  return (
    <div className={styles.picture}>
      {/* biome-ignore lint/a11y/useMediaCaption: the narration of a take stands on the running sheet. */}
      <video
        ref={first}
        className={styles.video}
        playsInline
        preload="auto"
        onClick={() => player?.toggle()}
      />
      {/* biome-ignore lint/a11y/useMediaCaption: the narration of a take stands on the running sheet. */}
      <video
        ref={second}
        className={styles.video}
        playsInline
        preload="auto"
        onClick={() => player?.toggle()}
      />
      <OverPicture film={film} takes={takes} onAddTakes={onAddTakes} />
    </div>
  );
}

function OverPicture({
  film,
  takes,
  onAddTakes,
}: {
  film: Film;
  takes: readonly Take[];
  onAddTakes: () => void;
}) {
  const takeId = usePlayerValue((player) => player.moment?.takeId ?? null, null);
  const take = takes.find((candidate) => candidate.id === takeId) ?? takes[0];
  if (!take) {
    return (
      <div className={styles.over}>
        <p>No takes yet.</p>
        <Button weight="main" onClick={onAddTakes}>
          Add takes
        </Button>
      </div>
    );
  }
  if (take.state === 'new') return <p className={styles.over}>Looking at {take.name} …</p>;
  if (take.state === 'missing' || take.state === 'failed') return <TakeTrouble take={take} />;
  if (take.probe && !take.probe.playable.ok && !take.viewingCopy) return <NeedsCopy take={take} />;
  if (take.probe && !take.probe.video) return <p className={styles.soundOnly}>Sound only: {take.name}</p>;
  return film.durationMs === 0 ? (
    <p className={styles.over}>Nothing of these takes is kept: open “Takes” and undo a trim.</p>
  ) : null;
}

const startedSchema = z.unknown();

function TakeTrouble({ take }: { take: Take }) {
  const { change } = useDesk();
  return (
    <div className={styles.over} role="status">
      <p className={styles.trouble}>
        {take.state === 'missing' ? `${take.name} is not where it was.` : `${take.name} cannot be used.`}
      </p>
      <p>
        {take.problem ??
          'If it was moved, name its new folder under Settings, then look for it. Nothing on the record is lost.'}
      </p>
      <Button onClick={() => void change('POST', `/api/takes/${take.id}/look`, {}, startedSchema)}>
        {take.state === 'missing' ? 'Look for it' : 'Try again'}
      </Button>
    </div>
  );
}

function NeedsCopy({ take }: { take: Take }) {
  const { record, change } = useDesk();
  const task = record.tasks.find(
    (candidate) => candidate.kind === 'viewing-copy' && candidate.recordingId === take.recordingId,
  );
  return (
    <div className={styles.over} role="status">
      <p className={styles.trouble}>This browser may not play {take.name}.</p>
      <p>
        {take.probe?.playable.reason} A viewing copy (H.264, up to 720 lines) can be made; the recording stays
        as it is.
      </p>
      {task ? (
        <>
          <progress value={task.progress} max={1} aria-label="Viewing copy" />
          <Button onClick={() => void change('DELETE', `/api/tasks/${task.id}`, undefined, startedSchema)}>
            Cancel
          </Button>
        </>
      ) : (
        <Button
          weight="main"
          onClick={() => void change('POST', `/api/takes/${take.id}/viewing-copy`, {}, startedSchema)}
        >
          Make a viewing copy
        </Button>
      )}
    </div>
  );
}

function playable(take: Take) {
  const copy = take.viewingCopy ? '?copy=viewing' : '';
  return {
    id: take.id,
    address: `/api/takes/${take.id}/film${copy}`,
    firstFrameMs: take.viewingCopy ? 0 : (take.probe?.firstFrameMs ?? 0),
  };
}
