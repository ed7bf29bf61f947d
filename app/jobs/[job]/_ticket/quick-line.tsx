'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { shortTime } from '@/lib/film';
import { usePlayerValue } from '../_film/use-film';
import styles from './ticket.module.css';
import { useMomentsOnFilm } from './use-moments';

interface QuickLineProps {
  label: string;
  placeholder: string;
  /** Plain choices that the line is written down with. */
  children: React.ReactNode;
  onAdd: (what: string) => Promise<void>;
}

const mostLetters = 300;

/** One typed line; Enter writes it down at the moment that the film shows. What is refused stays in the line. */
export function QuickLine({ label, placeholder, children, onAdd }: QuickLineProps) {
  const [text, setText] = useState('');
  const { busy, problem, run } = useAttempt();
  const { hasFilm } = useMomentsOnFilm();
  const second = usePlayerValue((player) => Math.floor(player.filmMs / 1000), 0);
  const what = text.trim();
  const tooLong = what.length > mostLetters;
  const add = () =>
    run(async () => {
      await onAdd(what);
      setText('');
    });
  return (
    <form
      className={styles.quick}
      onSubmit={(event) => {
        event.preventDefault();
        if (what !== '' && !tooLong) void add();
      }}
    >
      {children}
      <div className={styles.quickRow}>
        <TextField
          label={label}
          hint={hasFilm ? `Enter adds it at ${shortTime(second * 1000)} of the film.` : 'Enter adds it.'}
          wrong={
            tooLong
              ? `At most ${mostLetters} letters fit, and this has ${what.length.toLocaleString('en-GB')}. Shorten it.`
              : null
          }
          value={text}
          placeholder={placeholder}
          autoComplete="off"
          onChange={(event) => setText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') event.currentTarget.blur();
          }}
        />
        <Button type="submit" weight="main" aria-disabled={busy || what === ''} className={styles.add}>
          Add
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </form>
  );
}
