'use client';

import { useState } from 'react';
import { z } from 'zod';
import { Button, buttonClass } from '@/app/_parts/button';
import { sizeInWords } from '@/app/_parts/words';
import { shortTime } from '@/lib/film';
import type { MadeCut } from '@/shared/cut';
import { useDesk } from '../_desk/use-record';
import { When } from '../_ticket/loose-end-list';
import styles from './cut.module.css';
import { foundInCut } from './made-words';
import { Step } from './section';
import { useHandOver } from './use-hand-over';

/** Cuts that were made, each with what a fresh look at its file found. */
export function MadeCuts() {
  const { made } = useHandOver().view.cut;
  if (made.length === 0) return null;
  return (
    <Step id="cut-made" title="Made">
      <ul className={styles.made} aria-label="Public cuts that were made">
        {made.map((cut) => (
          <MadeCutLine key={cut.id} cut={cut} />
        ))}
      </ul>
    </Step>
  );
}

function MadeCutLine({ cut }: { cut: MadeCut }) {
  const { change } = useDesk();
  const [playing, setPlaying] = useState(false);
  const { id, path, present, inspection, createdAt } = cut;
  const name = path.split(/[\\/]/).at(-1) ?? path;
  const film = `/api/cuts/${id}/film`;
  const takeOff = () =>
    change('DELETE', `/api/cuts/${id}`, undefined, z.unknown(), `${name} taken off the list; its file stays`);
  return (
    <li className={styles.cut}>
      <h4>
        {name} <span className={styles.fine}>{shortTime(inspection.durationMs)}, </span>
        <span className={styles.fine}>{sizeInWords(inspection.sizeBytes)}, made </span>
        <span className={styles.fine}>
          <When at={createdAt} />
        </span>
      </h4>
      <p className={styles.path}>{path}</p>
      {!present && (
        <p className={styles.warn}>
          It does not lie there any more. Put it back, or make it again; the recordings are untouched.
        </p>
      )}
      <dl className={styles.inspection}>
        {foundInCut(cut).map(({ what, found, bad }) => (
          <div key={what} data-bad={bad || undefined}>
            <dt>{what}</dt>
            <dd>
              {bad && <strong>Look at this: </strong>}
              {found}
            </dd>
          </div>
        ))}
      </dl>
      <div className={styles.maker}>
        {present && (
          <>
            <Button
              aria-expanded={playing}
              aria-label={`${playing ? 'Close' : 'Play'} ${name}`}
              onClick={() => setPlaying(!playing)}
            >
              {playing ? 'Close' : 'Play it'}
            </Button>
            <a className={buttonClass()} href={film} download={name}>
              Save a copy<span className="only-read"> of {name}</span>
            </a>
          </>
        )}
        <Button weight="bare" aria-label={`Take off the list: ${name}`} onClick={() => void takeOff()}>
          Take off the list
        </Button>
      </div>
      {playing && present && <CutFilm address={film} name={name} />}
    </li>
  );
}

function CutFilm({ address, name }: { address: string; name: string }) {
  const [refused, setRefused] = useState(false);
  if (refused)
    return (
      <p className={styles.warn}>This browser does not play {name}. Save a copy and open it elsewhere.</p>
    );
  return (
    // biome-ignore lint/a11y/useMediaCaption: the narration of the takes stands on the running sheet.
    <video
      className={styles.film}
      src={address}
      controls
      preload="metadata"
      aria-label={name}
      onError={() => setRefused(true)}
    />
  );
}
