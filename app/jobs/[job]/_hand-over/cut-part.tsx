'use client';

import { useMemo } from 'react';
import { layOut, shortTime } from '@/lib/film';
import { useDesk } from '../_desk/use-record';
import { Covers } from './covers';
import { CutHow } from './cut-how';
import { CutMaking } from './cut-making';
import { FilmBar } from './film-bar';
import styles from './hand-over.module.css';
import { LeftOut } from './left-out';
import { MadeCuts } from './made-cuts';
import { MutedByHand } from './muted-by-hand';
import { Section } from './section';
import { useHandOver } from './use-hand-over';

/** The public cut: what is left out, muted and covered, how it is made, and what was made. */
export function CutPart() {
  const { view } = useHandOver();
  const { takes } = useDesk().record;
  const film = useMemo(() => layOut(takes), [takes]);
  return (
    <Section id="cut" title="Public cut">
      {film.durationMs === 0 ? (
        <p>There is no film yet: add takes first.</p>
      ) : (
        <>
          <p>
            {shortTime(view.cut.durationMs)} of {shortTime(film.durationMs)} will be shown. The recordings
            stay as they are.
          </p>
          <FilmBar film={film} />
          <LeftOut film={film} />
          <MutedByHand film={film} />
          <Covers film={film} />
          <CutHow />
          <CutMaking />
        </>
      )}
      <MadeCuts />
      <p className={styles.fine}>
        Place, device and personal tags of the recordings never go into the cut; its title and chapters do.
      </p>
    </Section>
  );
}
