'use client';

import { counted } from '@/app/_parts/words';
import type { Film } from '@/lib/film';
import type { TakeSpan } from '@/shared/cut';
import styles from './cut.module.css';
import { RoughCut } from './rough-cut';
import { Step } from './section';
import { SpanLine } from './span-line';
import { SpanMaker } from './span-maker';
import { inFilmOrder, isSame, joined } from './spans';
import { useHandOver } from './use-hand-over';
import { useSpanKeys } from './use-span-keys';

/** Parts of the film that are not shown. */
export function LeftOut({ film }: { film: Film }) {
  const { view, amendSpans } = useHandOver();
  const { keyFor, becomes } = useSpanKeys();
  const { cutAway } = view.cut.settings;
  const add = (spans: readonly TakeSpan[], told = 'Left out of the cut') =>
    amendSpans('cutAway', (there) => joined([...there, ...spans]), told);
  return (
    <Step id="cut-left-out" title="Left out">
      <SpanMaker film={film} verb="Leave out" onSpans={add} />
      {cutAway.length > 0 && (
        <ul className={styles.spans} aria-label={`Left out: ${counted(cutAway.length, 'part')}`}>
          {inFilmOrder(film, cutAway).map((span) => (
            <SpanLine
              key={keyFor(span)}
              film={film}
              span={span}
              what="left out"
              onChange={(next) => {
                becomes(span, next);
                return amendSpans(
                  'cutAway',
                  (there) => joined([...there.filter((each) => !isSame(each, span)), next]),
                  'Left out part changed',
                );
              }}
              onRemove={() =>
                amendSpans(
                  'cutAway',
                  (there) => there.filter((each) => !isSame(each, span)),
                  'Shown again in the cut',
                )
              }
            />
          ))}
        </ul>
      )}
      <RoughCut film={film} onAdd={add} />
    </Step>
  );
}
