'use client';

import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import type { ComposedNote, DifferencePiece } from '@/shared/notes';
import { stayAt } from '../_ticket/use-anchor';
import styles from './hand-over.module.css';
import { draftOf, withSection } from './kept-notes';
import { useHandOver } from './use-hand-over';

/** What changed on the record since a section was written, and the choice between both. */
export function NoteBehind({ note }: { note: ComposedNote }) {
  const { view, keepNotes } = useHandOver();
  const { busy, problem, run } = useAttempt();
  const { id, heading, text, difference } = note;
  const { notes } = view;
  const draft = draftOf(note, notes.kept);
  const choose = (mine: boolean, button: HTMLElement) =>
    run(async () => {
      const line = button.closest('li');
      const part = mine ? { text, madeFrom: draft } : { text: null, madeFrom: null };
      await keepNotes(
        { sections: withSection(notes, id, part) },
        { sections: notes.kept },
        mine ? `“${heading}” stays as you wrote it` : `“${heading}” is the new draft`,
      );
      stayAt(line);
    });
  return (
    <div className={styles.behind}>
      <p>
        <strong>Behind the record.</strong>{' '}
        {draft === null
          ? 'The record gives nothing for this section any more.'
          : 'Since you wrote this, the draft from the record has changed:'}
      </p>
      {difference && <Difference pieces={difference} />}
      <div className={styles.row}>
        <Button
          aria-disabled={busy}
          aria-label={`Take the new draft: ${heading}`}
          onClick={(event) => void choose(false, event.currentTarget)}
        >
          Take the new draft
        </Button>
        <Button
          aria-disabled={busy}
          aria-label={`Keep mine: ${heading}`}
          onClick={(event) => void choose(true, event.currentTarget)}
        >
          Keep mine
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}

/** Far from a change this much of what stayed the same is shown. */
const mostSame = 160;

/** What came and what went, in words as well as in colour. */
function Difference({ pieces }: { pieces: readonly DifferencePiece[] }) {
  return (
    <p className={styles.difference}>
      {withPlaces(pieces).map(({ what, text, at }) => {
        if (what === 'same') return <span key={at}>{shortened(text)}</span>;
        // Lines that were only set apart otherwise say nothing.
        if (text.trim() === '') return <span key={at}>{what === 'added' ? text : ''}</span>;
        const Mark = what === 'added' ? 'ins' : 'del';
        return (
          <Mark key={at}>
            <span className={styles.differenceWord}>{what}: </span>
            {text}
          </Mark>
        );
      })}
    </p>
  );
}

function withPlaces(pieces: readonly DifferencePiece[]): (DifferencePiece & { at: number })[] {
  let at = 0;
  return pieces.map((piece) => {
    const placed = { ...piece, at };
    at += piece.text.length + 1;
    return placed;
  });
}

function shortened(text: string): string {
  if (text.length <= mostSame) return text;
  const [start, end] = [text.slice(0, mostSame / 2), text.slice(-mostSame / 2)];
  return `${start.replace(/\S*$/, '')}… ${end.replace(/^\S*\s/, '')}`;
}
