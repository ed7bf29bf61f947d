'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { folded } from '@/app/_parts/words';
import styles from './sheet.module.css';
import type { SheetLine } from './sheet-lines';
import { wordsOfLine } from './sheet-lines';

interface FindProps {
  lines: readonly SheetLine[];
  onSelect: (line: SheetLine) => void;
}

/** Finds words on the sheet, spoken or written; Enter goes to the next place where they stand. */
export function FindInSheet({ lines, onSelect }: FindProps) {
  const [words, setWords] = useState('');
  const [at, setAt] = useState(-1);
  const found = useMemo(() => {
    const wanted = folded(words.trim());
    return wanted === '' ? [] : lines.filter((line) => folded(wordsOfLine(line)).includes(wanted));
  }, [words, lines]);
  const go = (by: number) => {
    const next = found.length === 0 ? -1 : (at + by + found.length) % found.length;
    const line = found[next];
    setAt(next);
    if (line) onSelect(line);
  };
  return (
    <search className={styles.find}>
      <input
        data-find
        type="search"
        aria-label="Find words on the sheet"
        placeholder="Find words (F)"
        value={words}
        onChange={(event) => {
          setWords(event.currentTarget.value);
          setAt(-1);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') go(event.shiftKey ? -1 : 1);
          if (event.key === 'Escape') {
            setWords('');
            event.currentTarget.blur();
          }
        }}
      />
      <span role="status">
        {words.trim() === ''
          ? ''
          : found.length === 0
            ? 'nowhere'
            : `${Math.max(1, at + 1)} of ${found.length}`}
      </span>
      <Button disabled={found.length === 0} onClick={() => go(1)}>
        Next
      </Button>
    </search>
  );
}
