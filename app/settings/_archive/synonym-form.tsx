'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import type { Synonym } from '@/shared/archive';
import styles from './archive.module.css';

interface SynonymFormProps {
  /** The one that is changed; null writes a new one. */
  from: Synonym | null;
  /** True once it is kept. */
  onWrite: (synonym: Synonym) => Promise<boolean>;
  onLeave: () => void;
}

export function SynonymForm({ from, onWrite, onLeave }: SynonymFormProps) {
  const first = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState(from?.said ?? '');
  const [means, setMeans] = useState(from?.means ?? '');
  const [isBusy, setBusy] = useState(false);
  useEffect(() => {
    if (from) first.current?.focus();
  }, [from]);
  const submit = async (event: React.FormEvent) => {
    event.preventDefault();
    if (isBusy) return;
    setBusy(true);
    const isKept = await onWrite({ said: said.trim(), means: means.trim() });
    setBusy(false);
    if (!isKept || from) return;
    setSaid('');
    setMeans('');
    first.current?.focus();
  };
  return (
    <form className={styles.add} onSubmit={(event) => void submit(event)}>
      <TextField
        ref={first}
        label="Your word"
        value={said}
        maxLength={60}
        required
        autoComplete="off"
        onChange={(event) => setSaid(event.currentTarget.value)}
      />
      <TextField
        label="Means in the trade"
        value={means}
        maxLength={60}
        required
        autoComplete="off"
        onChange={(event) => setMeans(event.currentTarget.value)}
      />
      <div className={styles.buttons}>
        <Button type="submit" aria-disabled={isBusy}>
          {from ? 'Keep the change' : 'Add this word'}
        </Button>
        {from && (
          <Button weight="bare" onClick={onLeave}>
            Leave as it was
          </Button>
        )}
      </div>
    </form>
  );
}
