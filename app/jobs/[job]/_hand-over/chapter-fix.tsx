'use client';

import { useEffect, useMemo, useRef } from 'react';
import { Button } from '@/app/_parts/button';
import { saveFile } from '@/app/_parts/save-file';
import { chapterFormats, fixChapters } from '@/lib/handover';
import { useDesk } from '../_desk/use-record';
import { CopyButton } from './copy-button';
import styles from './hand-over.module.css';
import { HeldBack } from './held-back';
import { useHandOver } from './use-hand-over';

const mostRows = 14;

/** The list as hosts would take it, with what was changed. The markers on the record stay as they are. */
export function ChapterFix({ onClose }: { onClose: () => void }) {
  const { view } = useHandOver();
  const { job } = useDesk().record;
  const fixed = useMemo(
    () => fixChapters(view.chapters.chapters, view.cut.durationMs),
    [view.chapters.chapters, view.cut.durationMs],
  );
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  const text = chapterFormats.text.write(fixed.chapters);
  return (
    <div className={styles.fix}>
      <h4 ref={head} tabIndex={-1}>
        What would be changed
      </h4>
      {fixed.changes.length === 0 ? (
        <p>Nothing that a change of the list can mend.</p>
      ) : (
        <ol className={styles.numbered}>
          {fixed.changes.map((change) => (
            <li key={change}>{change}</li>
          ))}
        </ol>
      )}
      {fixed.left.map(({ rule, chapter, sentence }) => (
        <p key={`${rule}-${chapter}`} className={styles.warn}>
          Still so: {sentence}
        </p>
      ))}
      <p className={styles.fine}>
        Only this list is mended; rename a marker on the job’s page to change the record.
      </p>
      <textarea
        className={styles.listText}
        aria-label="The mended list"
        readOnly
        rows={Math.min(mostRows, fixed.chapters.length + 1)}
        value={text}
      />
      <HeldBack document="chapters">
        <div className={styles.row}>
          <CopyButton
            main
            label="Copy the mended list"
            told="Mended list copied"
            text={() => text}
            of={text}
          />
          {Object.entries(chapterFormats).map(([name, { label, extension, contentType, write }]) => (
            <Button
              key={name}
              aria-label={`Save the mended list as ${label}`}
              onClick={() =>
                saveFile(
                  new File([write(fixed.chapters)], `job-${job.number}-chapters.${extension}`, {
                    type: contentType,
                  }),
                )
              }
            >
              Save as {label}
            </Button>
          ))}
        </div>
      </HeldBack>
      <Button weight="bare" onClick={onClose}>
        Close the preview
      </Button>
    </div>
  );
}
