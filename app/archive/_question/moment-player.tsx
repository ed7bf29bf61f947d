'use client';

import { useEffect, useRef, useState } from 'react';
import { Button, ButtonLink } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { shortTime } from '@/lib/film';
import type { FilmMoment } from '@/shared/moments';
import { type Take, takeSchema } from '@/shared/takes';
import styles from './answers.module.css';

interface MomentPlayerProps {
  moment: FilmMoment;
  title: string;
  /** The job's page at this moment. */
  address: string;
  onClose: () => void;
}

/** The film at a moment, played where the answer stands. */
export function MomentPlayer({ moment, title, address, onClose }: MomentPlayerProps) {
  const { takeId, ms } = moment;
  const frame = useRef<HTMLDivElement>(null);
  const [take, setTake] = useState<Take | null>(null);
  const [problem, setProblem] = useState<unknown>(null);
  // What was touched went from the page.
  useEffect(() => frame.current?.focus(), []);
  useEffect(() => {
    let isWanted = true;
    call('GET', `/api/takes/${takeId}`, takeSchema).then(
      (found) => isWanted && setTake(found),
      (error: unknown) => isWanted && setProblem(error),
    );
    return () => {
      isWanted = false;
    };
  }, [takeId]);
  const trouble = take && troubleOf(take);
  return (
    <div
      ref={frame}
      tabIndex={-1}
      role="group"
      aria-label={`Film: ${title}`}
      className={styles.player}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      {take && !trouble && <Picture key={`${takeId} ${ms}`} take={take} ms={ms} title={title} />}
      {problem !== null && <ProblemNote error={problem} />}
      {trouble && <p role="alert">{trouble}</p>}
      <div className={styles.playerWays}>
        <ButtonLink href={address} prefetch={false}>
          {trouble ? 'See to it in the job' : 'Go on in the job'}
        </ButtonLink>
        <Button onClick={onClose}>Close the film</Button>
      </div>
    </div>
  );
}

function Picture({ take, ms, title }: { take: Take; ms: number; title: string }) {
  const video = useRef<HTMLVideoElement>(null);
  const [isBroken, setBroken] = useState(false);
  const copy = take.viewingCopy ? '?copy=viewing' : '';
  // A viewing copy begins with its first picture; a recording may begin later on its own clock.
  const fileMs = ms + (take.viewingCopy ? 0 : (take.probe?.firstFrameMs ?? 0));
  useEffect(() => {
    const element = video.current;
    if (!element) return;
    element.currentTime = fileMs / 1000;
    // A browser that wants to be asked again keeps the film at the moment, with its own button to play.
    element.play().catch((error: unknown) => {
      const name = error instanceof DOMException ? error.name : '';
      if (name !== 'NotAllowedError' && name !== 'AbortError') setBroken(true);
    });
    element.focus();
    element.scrollIntoView({ block: 'nearest' });
  }, [fileMs]);
  if (isBroken)
    return (
      <p role="alert">This browser does not play {take.name}. In the job a viewing copy can be made of it.</p>
    );
  return (
    // biome-ignore lint/a11y/useMediaCaption: what is said stands on the running sheet of the job.
    <video
      ref={video}
      className={take.probe && !take.probe.video ? styles.sound : styles.video}
      src={`/api/takes/${take.id}/film${copy}`}
      controls
      playsInline
      preload="auto"
      aria-label={`${title}, from ${shortTime(ms)} of the take`}
      onError={() => setBroken(true)}
    />
  );
}

/** Why a take cannot be played here, and what can be done; null where it can. */
function troubleOf({ state, name, problem, probe, viewingCopy }: Take): string | null {
  if (state === 'new') return `${name} is still being looked at. Try again in a moment.`;
  if (state === 'missing')
    return `${name} is not where it was. ${problem ?? 'In the job it can be looked for.'}`;
  if (state === 'failed') return `${name} cannot be used. ${problem ?? ''}`;
  if (probe && !probe.playable.ok && !viewingCopy)
    return `This browser may not play ${name}. In the job a viewing copy can be made of it.`;
  return null;
}
