'use client';

import { counted } from '@/app/_parts/words';
import type { Film } from '@/lib/film';
import type { Cover, TakeSpan } from '@/shared/cut';
import { CoverRegion } from './cover-region';
import styles from './cut.module.css';
import { Step } from './section';
import { SpanLine } from './span-line';
import { SpanMaker } from './span-maker';
import { inFilmOrder, isSame } from './spans';
import { useHandOver } from './use-hand-over';
import { useSpanKeys } from './use-span-keys';

/** Where a cover begins before it is drawn: the middle of the picture. */
const middle = { x: 0.35, y: 0.35, width: 0.3, height: 0.3 };

/** Regions of the picture that are covered for a span: a label, a serial, an address. */
export function Covers({ film }: { film: Film }) {
  const { view, amendCovers } = useHandOver();
  const { keyFor, becomes } = useSpanKeys();
  const { covers } = view.cut.settings;
  const add = (spans: readonly TakeSpan[]) =>
    amendCovers(
      (there) => [...there, ...spans.map((span) => ({ ...span, ...middle }))],
      'Covered in the middle; open “Change” to draw where',
    );
  return (
    <Step id="cut-covers" title="Covered">
      <p className={styles.fine}>
        For a label, a serial or an address in the picture. Mark when it is to be seen, then draw where it is.
      </p>
      <SpanMaker film={film} verb="Cover" onSpans={add} />
      {covers.length > 0 && (
        <ul className={styles.spans} aria-label={`Covered: ${counted(covers.length, 'region')}`}>
          {named(inFilmOrder(film, covers), keyFor).map(({ key, cover }) => (
            <CoverLine key={key} film={film} cover={cover} becomes={becomes} />
          ))}
        </ul>
      )}
    </Step>
  );
}

interface CoverLineProps {
  film: Film;
  cover: Cover;
  becomes: (cover: Cover, next: Cover) => void;
}

function CoverLine({ film, cover, becomes }: CoverLineProps) {
  const { amendCovers } = useHandOver();
  const replace = (next: Cover, told: string) => {
    becomes(cover, next);
    return amendCovers((there) => there.map((each) => (isSameCover(each, cover) ? next : each)), told);
  };
  return (
    <SpanLine
      film={film}
      span={cover}
      what="covered"
      onChange={(next) => replace(next, 'Covered span changed')}
      onRemove={() =>
        amendCovers((there) => there.filter((each) => !isSameCover(each, cover)), 'Seen again in the cut')
      }
    >
      <CoverRegion film={film} cover={cover} onChange={(next) => replace(next, 'Covered region drawn')} />
    </SpanLine>
  );
}

/** The region is no part of a cover’s name, so that its line stays open while it is drawn anew. */
function named(covers: readonly Cover[], keyFor: (cover: Cover) => string): { key: string; cover: Cover }[] {
  return covers.map((cover, place) => {
    const nth = covers.slice(0, place).filter((before) => isSame(before, cover)).length;
    return { key: `${keyFor(cover)}-${nth}`, cover };
  });
}

function isSameCover(one: Cover, other: Cover): boolean {
  return JSON.stringify(inOrder(one)) === JSON.stringify(inOrder(other));
}

function inOrder({ takeId, fromMs, toMs, x, y, width, height }: Cover) {
  return [takeId, fromMs, toMs, x, y, width, height];
}
