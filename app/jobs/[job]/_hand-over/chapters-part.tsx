'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button, buttonClass } from '@/app/_parts/button';
import { counted } from '@/app/_parts/words';
import { chapterFormats, chapterRules } from '@/lib/handover';
import type { HandOverView } from '@/shared/hand-over';
import { useDesk } from '../_desk/use-record';
import { ChapterFix } from './chapter-fix';
import { CopyButton } from './copy-button';
import styles from './hand-over.module.css';
import { HeldBack } from './held-back';
import { Section } from './section';
import { useHandOver } from './use-hand-over';

/** The chapter list on the clock of the published film. */
export function ChaptersPart() {
  const { view } = useHandOver();
  const { chapters, notes } = view.chapters;
  return (
    <Section id="chapters" title="Chapter list">
      {chapters.length === 0 ? (
        <p>Public markers become chapters. Drop a marker on the job’s page and leave “Chapter” ticked.</p>
      ) : (
        <ChapterText chapters={chapters} />
      )}
      {notes.length > 0 && <Moved notes={notes} />}
      {chapters.length > 0 && <HostRules />}
    </Section>
  );
}

const mostRows = 14;

function ChapterText({ chapters }: Pick<HandOverView['chapters'], 'chapters'>) {
  const { job } = useDesk().record;
  const text = chapterFormats.text.write(chapters);
  return (
    <>
      <textarea
        className={styles.listText}
        data-chapters
        aria-label={`Chapter list as text: ${counted(chapters.length, 'chapter')}`}
        readOnly
        rows={Math.min(mostRows, chapters.length + 1)}
        value={text}
      />
      <HeldBack document="chapters">
        <div className={styles.row}>
          <CopyButton main label="Copy the list" told="Chapter list copied" text={() => text} of={text} />
          {Object.entries(chapterFormats).map(([name, { label, extension }]) => (
            <a
              key={name}
              className={buttonClass()}
              href={`/api/jobs/${job.id}/exports/chapters?as=${name}`}
              download={`job-${job.number}-chapters.${extension}`}
            >
              Save as {label}
            </a>
          ))}
        </div>
      </HeldBack>
    </>
  );
}

/** Markers that do not stand where they were set, because their part of the film is left out. */
function Moved({ notes }: Pick<HandOverView['chapters'], 'notes'>) {
  const { job } = useDesk().record;
  return (
    <details className={styles.more} open={notes.length <= 5}>
      <summary>{counted(notes.length, 'marker')} moved or dropped by cuts</summary>
      <ul className={styles.plainList}>
        {notes.map(({ markerId, sentence }) => (
          <li key={markerId}>
            {sentence} <Link href={`/jobs/${job.id}?line=${markerId}`}>To the marker</Link>
          </li>
        ))}
      </ul>
    </details>
  );
}

const atFirst = 6;

function HostRules() {
  const { view } = useHandOver();
  const [fixing, setFixing] = useState(false);
  const [whole, setWhole] = useState(false);
  const broken = chapterRules(view.chapters.chapters, view.cut.durationMs);
  if (broken.length === 0)
    return <p className={styles.good}>Video hosts take this list as it is: no common rule is broken.</p>;
  return (
    <div className={styles.rules}>
      <h3>Where video hosts would refuse it</h3>
      <ul className={styles.plainList}>
        {(whole ? broken : broken.slice(0, atFirst)).map(({ rule, chapter, sentence }) => (
          <li key={`${rule}-${chapter}`}>{sentence}</li>
        ))}
      </ul>
      {!whole && broken.length > atFirst && (
        <Button weight="bare" onClick={() => setWhole(true)}>
          Show {broken.length - atFirst} more
        </Button>
      )}
      {fixing ? (
        <ChapterFix onClose={() => setFixing(false)} />
      ) : (
        <Button onClick={() => setFixing(true)}>Fix for me</Button>
      )}
    </div>
  );
}
