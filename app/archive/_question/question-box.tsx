'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import styles from './question.module.css';

interface QuestionBoxProps {
  typed: string;
  onType: (words: string) => void;
  onAsk: () => void;
}

/** The one line that is asked. The slash key leads to it from anywhere on the page. */
export function QuestionBox({ typed, onType, onAsk }: QuestionBoxProps) {
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || isWriting(event.target))
        return;
      if (document.querySelector('[role="dialog"]:not([aria-modal="false"])')) return;
      event.preventDefault();
      box.current?.focus();
      box.current?.select();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
  return (
    <search>
      <form
        className={styles.box}
        onSubmit={(event) => {
          event.preventDefault();
          onAsk();
        }}
      >
        <TextField
          ref={box}
          label="Ask the archive"
          hint="In plain words: what it was, when it was, what was read. The / key leads here."
          type="search"
          name="q"
          value={typed}
          maxLength={2000}
          onChange={(event) => onType(event.target.value)}
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="search"
        />
        <Button type="submit" weight="main">
          Ask
        </Button>
      </form>
    </search>
  );
}

function isWriting(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'))
  );
}
