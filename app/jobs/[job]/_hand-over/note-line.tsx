'use client';

import { Button } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { type ComposedNote, keptNotesSchema } from '@/shared/notes';
import styles from './hand-over.module.css';
import { asSeen, asShown, draftOf, withMoved, withSection, withText } from './kept-notes';
import { NoteBehind } from './note-behind';
import { useHandOver } from './use-hand-over';

/** As many letters as the contract takes. */
const longestText = 500_000;

interface NoteLineProps {
  note: ComposedNote;
  isFirst: boolean;
  isLast: boolean;
}

/** A section of the notes: whether it goes out, where it stands, and its words. */
export function NoteLine({ note, isFirst, isLast }: NoteLineProps) {
  const { view, keepNotes } = useHandOver();
  const { busy, problem, run } = useAttempt();
  const { id, heading, on } = note;
  const anchor = anchorOf(id);
  const { notes } = view;
  const keep = (sections: typeof notes.kept, told: string) =>
    keepNotes({ sections }, { sections: notes.kept }, told);
  const move = (by: -1 | 1, button: HTMLElement) =>
    run(async () => {
      await keep(withMoved(notes, id, by), `“${heading}” moved ${by < 0 ? 'up' : 'down'}`);
      // Moving a line in the page takes the focus off its buttons.
      button.focus();
    });
  const turn = () =>
    run(() => keep(withSection(notes, id, { on: !on }), `“${heading}” ${on ? 'off' : 'on'}`));
  return (
    <li id={anchor} tabIndex={-1} className={styles.note} data-off={!on || undefined}>
      <div className={styles.noteHead}>
        <label className={styles.tick}>
          <input type="checkbox" checked={on} aria-busy={busy} onChange={() => void turn()} />
          <span className={styles.noteTitle}>{heading}</span>
        </label>
        <span className={styles.noteState}>{stateOf(note)}</span>
        <MoveButton
          label={`Move up: ${heading}`}
          sign="↑"
          off={isFirst}
          onMove={(button) => move(-1, button)}
        />
        <MoveButton
          label={`Move down: ${heading}`}
          sign="↓"
          off={isLast}
          onMove={(button) => move(1, button)}
        />
      </div>
      {problem !== null && <ProblemNote error={problem} />}
      {on && <NoteWords note={note} />}
      {on && note.behind && <NoteBehind note={note} />}
    </li>
  );
}

/** Where findings and loose ends lead to. */
function anchorOf(id: ComposedNote['id']): string {
  return `notes-${id.replaceAll(' ', '-')}`;
}

function stateOf({ on, edited, behind }: ComposedNote): string {
  if (!on) return 'left out';
  if (behind) return 'behind the record';
  return edited ? 'in your words' : 'as drafted';
}

interface MoveButtonProps {
  label: string;
  sign: string;
  /** It stands at the end already. */
  off: boolean;
  onMove: (button: HTMLElement) => void;
}

function MoveButton({ label, sign, off, onMove }: MoveButtonProps) {
  return (
    <Button
      weight="bare"
      aria-label={label}
      aria-disabled={off}
      onClick={(event) => !off && void onMove(event.currentTarget)}
    >
      {sign}
    </Button>
  );
}

function NoteWords({ note }: { note: ComposedNote }) {
  const { view, keepNotes } = useHandOver();
  const { notes } = view;
  const { id, heading, text, edited, behind } = note;
  const draft = draftOf(note, notes.kept);
  const say = (now: unknown) => {
    const kept = keptNotesSchema.parse(now).find((section) => section.id === id);
    return asShown(kept?.text ?? draft ?? '');
  };
  const keep = (words: string, was: string) =>
    keepNotes(
      { sections: withText(notes, id, words) },
      { sections: asSeen(notes, id, was) },
      `“${heading}” kept`,
    );
  return (
    <div className={styles.noteWords}>
      <KeptField
        label={`Words of “${heading}”`}
        name="sections"
        value={asShown(text)}
        onKeep={keep}
        say={say}
        rows={Math.min(12, text.split('\n').length + 1)}
        maxLength={longestText}
      />
      {edited && !behind && draft !== null && (
        <Button
          weight="bare"
          className={styles.remove}
          onClick={() => void keep(asShown(draft), asShown(text)).catch(() => undefined)}
        >
          Back to the draft
        </Button>
      )}
    </div>
  );
}
