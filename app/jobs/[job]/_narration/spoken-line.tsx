'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { KeptLine } from '@/shared/narration-record';
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
