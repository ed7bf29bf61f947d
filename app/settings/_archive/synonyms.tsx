'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type Synonym, synonymsSchema } from '@/shared/archive';
import settings from '../settings.module.css';
import styles from './archive.module.css';
import { SynonymForm } from './synonym-form';

/** Words of the repairer's own that the archive finds like the trade's. */
export function Synonyms({ first }: { first: readonly Synonym[] }) {
  const { done, wrong } = useNotices();
  const [synonyms, setSynonyms] = useState(first);
  const [changing, setChanging] = useState<Synonym | null>(null);
  const keep = async (next: readonly Synonym[], told: string, undo?: readonly Synonym[]) => {
    try {
      const answer = await call('PUT', '/api/archive/synonyms', synonymsSchema, { synonyms: next });
      setSynonyms(answer.synonyms);
      setChanging(null);
      done(told, undo && (() => void keep(undo, 'Put back')));
      return true;
    } catch (error) {
      wrong(error);
      return false;
    }
  };
  const write = (synonym: Synonym) => {
    const others = synonyms.filter((known) => known !== changing && !isSame(known, synonym));
    return keep([...others, synonym], 'Word kept', synonyms);
  };
  const remove = (synonym: Synonym) =>
    keep(
      synonyms.filter((known) => known !== synonym),
      'Word removed',
      synonyms,
    );
  return (
    <>
      <h3>Words that mean the same</h3>
      <p>
        What you type or say, and what it means in the trade’s words: the one is found by the other. When a
        word changes, all jobs are taken in anew; in a large archive the last of them follow after a while.
      </p>
      {synonyms.length > 0 && (
        <ul className={styles.words}>
          {synonyms.map((synonym) => (
            <li key={`${synonym.said} ${synonym.means}`}>
              <span className={styles.word}>
                “{synonym.said}” means “{synonym.means}”
              </span>
              <Button
                weight="bare"
                aria-label={`Change ${synonym.said}`}
                onClick={() => setChanging(synonym)}
              >
                Change
              </Button>
              <Button
                weight="bare"
                aria-label={`Remove ${synonym.said}`}
                onClick={() => void remove(synonym)}
              >
                Remove
              </Button>
            </li>
          ))}
        </ul>
      )}
      <SynonymForm
        key={changing ? `${changing.said} ${changing.means}` : ''}
        from={changing}
        onWrite={write}
        onLeave={() => setChanging(null)}
      />
      {synonyms.length === 0 && <p className={settings.soft}>None of your own yet.</p>}
    </>
  );
}

function isSame(one: Synonym, other: Synonym): boolean {
  return (
    one.said.toLowerCase() === other.said.toLowerCase() &&
    one.means.toLowerCase() === other.means.toLowerCase()
  );
}
