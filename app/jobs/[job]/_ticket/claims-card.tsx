'use client';

import Link from 'next/link';
import { useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { addressOfMoment } from '@/app/_parts/places';
import { shortTime } from '@/lib/film';
import { sayReading } from '@/lib/readings';
import type { Claim } from '@/shared/claims';
import type { FilmMoment } from '@/shared/moments';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import styles from './claims.module.css';
import { ClaimForm } from './claims-form';
import { useMomentsOnFilm } from './use-moments';

interface ClaimCardProps {
  claim: Claim;
  /** Its form was left, or the claim is gone: what is to have the focus, if it is still there. */
  onLeft: (id?: string) => void;
}

/** One claim: what is said, how it is known, how sure it is, and what it rests on. */
export function ClaimCard({ claim, onLeft }: ClaimCardProps) {
  const { record, change } = useDesk();
  const [changing, setChanging] = useState(false);
  const leave = () => {
    setChanging(false);
    onLeft(claim.id);
  };
  if (changing)
    return (
      <li className={styles.claim}>
        <ClaimForm claim={claim} onLeave={leave} />
      </li>
    );
  const remove = async () => {
    const path = `/api/claims/${claim.id}?job=${record.job.id}`;
    const told = `Claim “${claim.value}” deleted`;
    if (await change('DELETE', path, undefined, z.looseObject({}), told)) onLeft();
  };
  return (
    <li id={claim.id} tabIndex={-1} className={styles.claim}>
      <p className={styles.value}>{claim.value}</p>
      <p className={styles.known}>
        <span className={styles.basis} data-basis={claim.basis}>
          {claim.basis}
        </span>
        <span>{claim.sure}</span>
      </p>
      <Evidence claim={claim} />
      <div className={styles.row}>
        <Button onClick={() => setChanging(true)} aria-label={`Change the claim “${claim.value}”`}>
          Change
        </Button>
        <Button weight="alarm" onClick={() => void remove()} aria-label={`Delete the claim “${claim.value}”`}>
          Delete
        </Button>
      </div>
    </li>
  );
}

function Evidence({ claim: { jobId, evidence, moment, readingId, value } }: { claim: Claim }) {
  const { job, readings } = useDesk().record;
  const reading = readings.find(({ id }) => id === readingId);
  const isElsewhere = jobId !== null && jobId !== job.id;
  return (
    <>
      {evidence && <p className={styles.evidence}>{evidence}</p>}
      {reading && <p className={styles.fine}>Reading: {sayReading(reading)}</p>}
      {moment && !isElsewhere && <Seen moment={moment} value={value} />}
      {isElsewhere && (
        <p className={styles.fine}>
          <Link href={moment ? addressOfMoment(jobId, moment) : `/jobs/${jobId}`}>From an earlier job</Link>
        </p>
      )}
    </>
  );
}

/** The still of the moment; a touch brings the film there. */
function Seen({ moment, value }: { moment: FilmMoment; value: string }) {
  const player = usePlayer();
  const { filmMsOf } = useMomentsOnFilm();
  const [lost, setLost] = useState(false);
  const filmMs = filmMsOf(moment);
  if (filmMs === null) return <p className={styles.fine}>Pinned to a take that is no longer in the film.</p>;
  return (
    <button
      type="button"
      className={styles.seen}
      aria-label={`Go to the evidence for “${value}”, ${shortTime(filmMs)}`}
      onClick={() => player?.seek(filmMs)}
    >
      {!lost && (
        // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
        <img
          src={`/api/takes/${moment.takeId}/still?ms=${moment.ms}&size=strip`}
          alt=""
          onError={() => setLost(true)}
        />
      )}
      <span className="figures">{shortTime(filmMs)}</span>
    </button>
  );
}
