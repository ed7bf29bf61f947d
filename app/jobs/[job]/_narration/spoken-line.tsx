'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { KeyHint } from '@/app/_parts/key-hint';
import type { KeptLine } from '@/shared/narration-record';
import { usePlayer } from '../_film/use-film';
import styles from '../_sheet/sheet.module.css';
import type { SheetLine } from '../_sheet/sheet-lines';
import { useNarrationChanges } from './use-narration';

interface SpokenLineProps {
  line: SheetLine & { type: 'spoken' };
  selected: boolean;
  onSelect: (line: SheetLine) => void;
}

/** The small print between the markers: touch it and the film plays it; selected, its words can be put right. */
export function SpokenLine({ line, selected, onSelect }: SpokenLineProps) {
  const [writing, setWriting] = useState(false);
  const { spoken } = line;
  const { shift } = useNarrationChanges();
  const player = usePlayer();
  const saidNow = () => {
    const at = player?.moment;
    if (at?.takeId === spoken.takeId) void shift(at.takeId, at.ms - spoken.startMs);
  };
  if (writing) return <Correction spoken={spoken} onDone={() => setWriting(false)} />;
  return (
    <div className={styles.spoken}>
      <button type="button" className={styles.spokenWords} onClick={() => onSelect(line)}>
        {spoken.voice && <span className={styles.voice}>{spoken.voice}: </span>}
        {spoken.text}
      </button>
      {selected && (
        <div className={styles.tools}>
          <Button onClick={() => setWriting(true)}>Correct the words</Button>
          <Button
            onClick={saidNow}
            title="Play, and press it on the word: the narration of this take moves with it"
          >
            It is said now <KeyHint>H</KeyHint>
          </Button>
          {spoken.heardText && <p className={styles.fine}>Heard at first: {spoken.heardText}</p>}
        </div>
      )}
    </div>
  );
}

function Correction({ spoken, onDone }: { spoken: KeptLine; onDone: () => void }) {
  const { correct } = useNarrationChanges();
  const [text, setText] = useState(spoken.text);
  const keep = () => {
    onDone();
    if (text.trim() !== '' && text !== spoken.text) void correct(spoken, text);
  };
  return (
    <textarea
      className={styles.correction}
      aria-label="Words of this line"
      value={text}
      rows={2}
      // biome-ignore lint/a11y/noAutofocus: it opens because the repairer asked to write here.
      autoFocus
      onChange={(event) => setText(event.currentTarget.value)}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone();
        if (event.key !== 'Enter' || event.shiftKey) return;
        event.preventDefault();
        keep();
      }}
    />
  );
}
