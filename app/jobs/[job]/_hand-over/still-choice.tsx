'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { useKeptPick } from '@/app/_parts/kept-field-pick';
import type { FilmMoment } from '@/shared/moments';
import { mostStills, type StillKey, stillKeySchema } from '@/shared/summary';
import { useDesk } from '../_desk/use-record';
import styles from './hand-over.module.css';
import { useHandOver } from './use-hand-over';

const chosenSchema = z.array(stillKeySchema).nullable();

/** Which moments are shown in the summary, each with its picture. */
export function StillChoice() {
  const { view, keepSummary } = useHandOver();
  const { kept, stills } = view.summary;
  const { pick, amend, problem, busy } = useKeptPick({
    name: 'stills',
    schema: chosenSchema,
    value: kept.stills,
    onKeep: (next, was) => keepSummary({ stills: next }, { stills: was }, 'Stills chosen'),
  });
  const usual = stills.filter((still) => still.usual).map(({ key }) => key);
  const chosen = kept.stills ?? usual;
  const turn = (key: StillKey) =>
    amend((was) => {
      const on = was ?? usual;
      const next = on.includes(key) ? on.filter((each) => each !== key) : [...on, key];
      // They stand in the order of the film.
      return stills.flatMap((still) => (next.includes(still.key) ? [still.key] : []));
    });
  if (stills.length === 0)
    return <p>No marker, reading or joint lies on the film yet, so there is no moment to show.</p>;
  return (
    <>
      <div className={styles.row}>
        <p aria-live="polite">
          {chosen.length} of at most {mostStills} chosen{kept.stills === null ? ', as usual' : ''}
        </p>
        {kept.stills !== null && (
          <Button weight="bare" onClick={() => void pick(null)}>
            As usual again
          </Button>
        )}
      </div>
      {problem && (
        <p className={styles.warn} role="alert">
          {problem}
        </p>
      )}
      <ul className={styles.stills} aria-label="Moments that can be shown" aria-busy={busy}>
        {stills.map(({ key, caption, moment }) => {
          const on = chosen.includes(key);
          return (
            <li key={key}>
              <label className={styles.still} data-chosen={on || undefined}>
                <StillPicture moment={moment} />
                <span className={styles.stillWords}>
                  <input
                    type="checkbox"
                    checked={on}
                    disabled={!on && chosen.length >= mostStills}
                    onChange={() => void turn(key)}
                  />
                  <span>{caption}</span>
                </span>
              </label>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** A take without pictures gives none. */
function StillPicture({ moment: { takeId, ms } }: { moment: FilmMoment }) {
  const { takes } = useDesk().record;
  const take = takes.find(({ id }) => id === takeId);
  if (!take?.probe?.video) return <span className={styles.noStill}>no picture</span>;
  return (
    // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
    <img
      src={`/api/takes/${takeId}/still?ms=${ms}&size=strip`}
      alt=""
      loading="lazy"
      className={styles.stillPicture}
    />
  );
}
