'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { TextField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import type { Slang } from '@/shared/narration';
import { slangListSchema } from '@/shared/narration-record';
import settings from '../settings.module.css';
import styles from './slang.module.css';

/** Words of the repairer's own, and what they mean: the narration is read with them. */
export function OwnWords({ first }: { first: readonly Slang[] }) {
  const { done, wrong } = useNotices();
  const [words, setWords] = useState(first);
  const [said, setSaid] = useState('');
  const [means, setMeans] = useState('');
  const keep = async (next: readonly Slang[], told: string, undo?: readonly Slang[]) => {
    try {
      const { slang } = await call('PUT', '/api/slang', slangListSchema, { slang: next });
      setWords(slang);
      done(told, undo && (() => void keep(undo, 'Put back')));
    } catch (error) {
      wrong(error);
    }
  };
  const add = async (event: React.FormEvent) => {
    event.preventDefault();
    const others = words.filter((word) => word.said.toLowerCase() !== said.trim().toLowerCase());
    await keep([...others, { said: said.trim(), means: means.trim() }], 'Word kept', words);
    setSaid('');
    setMeans('');
  };
  return (
    <section className={settings.sheet} aria-labelledby="own-words">
      <h2 id="own-words">Words of your own</h2>
      <p>
        What you say, and what it means in the trade’s words: “bucker” for “humbucker”. Narration that is put
        in from now on is read with them.
      </p>
      {words.length > 0 && (
        <ul className={styles.words}>
          {words.map((word) => (
            <li key={word.said}>
              <span>
                “{word.said}” means {word.means}
              </span>
              <Button
                weight="bare"
                aria-label={`Delete ${word.said}`}
                onClick={() =>
                  void keep(
                    words.filter((other) => other !== word),
                    'Word deleted',
                    words,
                  )
                }
              >
                Delete
              </Button>
            </li>
          ))}
        </ul>
      )}
      <form className={styles.add} onSubmit={(event) => void add(event)}>
        <TextField
          label="You say"
          value={said}
          maxLength={60}
          required
          onChange={(event) => setSaid(event.currentTarget.value)}
        />
        <TextField
          label="It means"
          value={means}
          maxLength={60}
          required
          onChange={(event) => setMeans(event.currentTarget.value)}
        />
        <Button type="submit">Keep this word</Button>
      </form>
    </section>
  );
}
