'use client';

import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { counted } from '@/app/_parts/words';
import type { Film } from '@/lib/film';
import { cutSettingsSchema } from '@/shared/cut';
import { DomainError } from '@/shared/problem';
import styles from './cut.module.css';
import { Step } from './section';
import { SpanLine } from './span-line';
import { SpanMaker } from './span-maker';
import { inFilmOrder, isSame, joined } from './spans';
import { useHandOver } from './use-hand-over';
import { useSpanKeys } from './use-span-keys';

const muteWithSchema = cutSettingsSchema.shape.muteWith.unwrap();
const muteWords = { silence: 'silence', tone: 'a tone' };

/** What is not heard: private words that were found, with a margin, and spans marked by hand. */
export function MutedByHand({ film }: { film: Film }) {
  const { view, keepCut, amendSpans } = useHandOver();
  const { keyFor, becomes } = useSpanKeys();
  const { settings, findings } = view.cut;
  const heard = findings.filter(({ what, decision }) => what === 'spoken' && decision === 'held back').length;
  const { muted } = settings;
  return (
    <Step id="cut-muted" title="Muted">
      <p>
        {heard === 0
          ? 'No private words that were heard are muted.'
          : `${counted(heard, 'heard private word', 'heard private words')} will be muted.`}
      </p>
      <KeptChoice
        label="In their place stands"
        name="muteWith"
        schema={muteWithSchema}
        options={muteWithSchema.options}
        words={muteWords}
        value={settings.muteWith}
        onKeep={(muteWith, was) =>
          keepCut({ muteWith }, { muteWith: was }, `Muted with ${muteWords[muteWith]}`)
        }
      />
      <KeptField
        label="Mute this much more before and after each heard word, in milliseconds"
        hint="Where a word lies within its caption is reckoned from the letters, not measured: widen it until nothing of it is heard."
        name="widenMs"
        value={String(settings.widenMs)}
        onKeep={(text, was) =>
          keepCut({ widenMs: wholeMs(text) }, { widenMs: Number(was) }, 'Margin of muted words kept')
        }
      />
      <SpanMaker
        film={film}
        verb="Mute"
        onSpans={(spans) => amendSpans('muted', (there) => joined([...there, ...spans]), 'Muted in the cut')}
      />
      {muted.length > 0 && (
        <ul className={styles.spans} aria-label={`Muted by hand: ${counted(muted.length, 'span')}`}>
          {inFilmOrder(film, muted).map((span) => (
            <SpanLine
              key={keyFor(span)}
              film={film}
              span={span}
              what="muted"
              onChange={(next) => {
                becomes(span, next);
                return amendSpans(
                  'muted',
                  (there) => joined([...there.filter((each) => !isSame(each, span)), next]),
                  'Muted span changed',
                );
              }}
              onRemove={() =>
                amendSpans(
                  'muted',
                  (there) => there.filter((each) => !isSame(each, span)),
                  'Heard again in the cut',
                )
              }
            />
          ))}
        </ul>
      )}
    </Step>
  );
}

function wholeMs(text: string): number {
  if (/^\d{1,4}$/.test(text.trim()) && Number(text) <= 5000) return Number(text);
  throw new DomainError('invalid', 'That is no margin.', 'Write whole milliseconds from 0 to 5000.');
}
