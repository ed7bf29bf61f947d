'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { parsePattern, readSerial, type SerialLayout, SerialPatternError, sayLayout } from '@/lib/work';
import type { SerialPattern } from '@/shared/claims';
import styles from './serials.module.css';

interface PatternFormProps {
  onKeep: (pattern: SerialPattern) => Promise<void>;
}

/** Writes a pattern down: what was understood of it stands below, and a serial can be tried on it. */
export function PatternForm({ onKeep }: PatternFormProps) {
  const [name, setName] = useState('');
  const [words, setWords] = useState('');
  const { busy, problem, run } = useAttempt();
  const understood = understand(words);
  const layout = understood instanceof SerialPatternError ? null : understood;
  const keep = () =>
    run(async () => {
      await onKeep({ name: name.trim(), words: words.trim() });
      setName('');
      setWords('');
    });
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (layout) void keep();
      }}
    >
      <TextField
        label="Name of the pattern"
        hint="Such as “year and month, after the move”."
        value={name}
        maxLength={80}
        required
        autoComplete="off"
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <TextField
        label="In words, from left to right"
        hint="Such as: one letter factory, two digits year, two digits month, the rest number."
        value={words}
        maxLength={300}
        required
        autoComplete="off"
        onChange={(event) => setWords(event.currentTarget.value)}
      />
      <Understood of={understood} />
      <TryIt layout={layout} />
      <div>
        <Button type="submit" aria-disabled={busy || !layout || name.trim() === ''}>
          Keep this pattern
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
      <Grammar />
    </form>
  );
}

/** Null while nothing is written. */
function understand(words: string): SerialLayout | SerialPatternError | null {
  if (words.trim() === '') return null;
  try {
    return parsePattern(words);
  } catch (error) {
    if (error instanceof SerialPatternError) return error;
    throw error;
  }
}

function Understood({ of }: { of: SerialLayout | SerialPatternError | null }) {
  return (
    <div className={styles.understood} role="status">
      {of instanceof SerialPatternError && (
        <p>
          <strong>{of.message}</strong> {of.detail}
        </p>
      )}
      {of !== null && !(of instanceof SerialPatternError) && (
        <>
          <p>Understood:</p>
          <ol>
            {numbered(sayLayout(of)).map(({ line, number }) => (
              <li key={number}>{line}</li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
}

/** Pieces may say the same twice; their place tells them apart. */
function numbered(lines: readonly string[]): { line: string; number: number }[] {
  return lines.map((line, index) => ({ line, number: index + 1 }));
}

function TryIt({ layout }: { layout: SerialLayout | null }) {
  const [serial, setSerial] = useState('');
  const isTried = layout !== null && serial.trim() !== '';
  const reading = isTried ? readSerial(layout, serial, new Date().getFullYear()) : null;
  return (
    <div>
      <TextField
        label="Try it on a serial"
        hint="It is not kept."
        value={serial}
        maxLength={200}
        autoComplete="off"
        onChange={(event) => setSerial(event.currentTarget.value)}
      />
      <p role="status">{isTried && (reading ? reading.sentence : 'The pattern does not fit this serial.')}</p>
    </div>
  );
}

/** What may stand in a pattern, for whoever writes the first one. */
function Grammar() {
  return (
    <details className={styles.grammar}>
      <summary>What can be written</summary>
      <ul>
        <li>Pieces from left to right, with commas between them.</li>
        <li>
          A piece is a count (one, two … or 1, 2 …), then digits, letters or characters, then what they mean:
          year, month, week, day, factory, number, or ignored.
        </li>
        <li>“The rest number” takes all that is left, and so does “anything”, which is ignored.</li>
        <li>
          Signs that stand there as they are: “a dash”, “a space”, “a slash”, “a dot”, “the letters AB”.
          Spaces and dashes that the pattern does not name do not count.
        </li>
        <li>
          What codes mean comes behind a colon: “one letter month: A January, B February, the rest number”.
        </li>
        <li>A year of two digits stands for every year from 1850 on that ends in them: both are shown.</li>
      </ul>
    </details>
  );
}
