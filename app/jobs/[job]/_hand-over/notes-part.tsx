'use client';

import { buttonClass } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { useDesk } from '../_desk/use-record';
import { CopyButton } from './copy-button';
import styles from './hand-over.module.css';
import { HeldBack } from './held-back';
import { NoteLine } from './note-line';
import { Section } from './section';
import { useHandOver } from './use-hand-over';

/** The episode notes: sections that are switched, put in order and written over. */
export function NotesPart() {
  const { sections } = useHandOver().view.notes;
  return (
    <Section id="notes" title="Episode notes">
      <NotesOut />
      <VideoAddress />
      {sections.length === 0 ? (
        <p>The record gives nothing to tell yet: note what was asked, found and done first.</p>
      ) : (
        <>
          <p className={styles.fine}>
            Drafted from the record, in Markdown. Write over what you like; it is kept as you leave it.
          </p>
          <ol className={styles.notes} aria-label="Sections in their order">
            {sections.map((note, place) => (
              <NoteLine
                key={note.id}
                note={note}
                isFirst={place === 0}
                isLast={place === sections.length - 1}
              />
            ))}
          </ol>
        </>
      )}
    </Section>
  );
}

const formats = [
  { as: 'markdown', label: 'Markdown', extension: 'md' },
  { as: 'text', label: 'plain text', extension: 'txt' },
  { as: 'html', label: 'a web page', extension: 'html' },
] as const;

function NotesOut() {
  const { job } = useDesk().record;
  const { notes } = useHandOver().view;
  const address = `/api/jobs/${job.id}/exports/notes?as=`;
  const markdown = async () => {
    const answer = await fetch(`${address}markdown`);
    if (!answer.ok) throw new Error('The notes could not be fetched. Load the page again.');
    return answer.text();
  };
  return (
    <HeldBack document="notes">
      <div className={styles.row}>
        <CopyButton
          main
          label="Copy the notes"
          told="Episode notes copied as Markdown"
          text={markdown}
          of={JSON.stringify(notes)}
        />
        <a className={buttonClass()} href={`${address}html`} target="_blank" rel="noreferrer">
          See them as a page <span className="only-read">(opens a new tab)</span>
        </a>
        {formats.map(({ as, label, extension }) => (
          <a
            key={as}
            className={buttonClass()}
            href={`${address}${as}`}
            download={`job-${job.number}-notes.${extension}`}
          >
            Save as {label}
          </a>
        ))}
      </div>
    </HeldBack>
  );
}

function VideoAddress() {
  const { view, keepNotes } = useHandOver();
  return (
    <KeptField
      label="Where the video will be seen"
      hint="An address that begins with https://. Times in the notes lead into the video there; {seconds} in it says where its host wants them."
      name="videoAddress"
      value={view.notes.videoAddress ?? ''}
      onKeep={(address, was) =>
        keepNotes(
          { videoAddress: address || null },
          { videoAddress: was || null },
          'Address of the video kept',
        )
      }
      maxLength={2000}
    />
  );
}
