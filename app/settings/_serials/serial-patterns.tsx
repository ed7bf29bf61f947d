'use client';

import { useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type SerialPattern, serialPatternsSchema } from '@/shared/claims';
import settings from '../settings.module.css';
import { PatternForm } from './pattern-form';
import styles from './serials.module.css';

/** The repairer's own serial patterns: written down, tried, deleted. The tool brings none. */
export function SerialPatterns({ first }: { first: readonly SerialPattern[] }) {
  const { done, wrong } = useNotices();
  const head = useRef<HTMLHeadingElement>(null);
  const [patterns, setPatterns] = useState(first);
  const keep = async (next: readonly SerialPattern[], told: string, undo?: readonly SerialPattern[]) => {
    const kept = await call('PUT', '/api/serial-patterns', serialPatternsSchema, { patterns: next });
    setPatterns(kept.patterns);
    done(told, undo && (() => void keep(undo, 'Put back').catch(wrong)));
  };
  const remove = async (pattern: SerialPattern) => {
    const others = patterns.filter((other) => other !== pattern);
    await keep(others, 'Pattern deleted', patterns);
    // The button that was pressed is gone with its pattern.
    head.current?.focus();
  };
  return (
    <section className={settings.sheet} aria-labelledby="serial-patterns">
      <h2 id="serial-patterns" ref={head} tabIndex={-1}>
        Serial patterns
      </h2>
      <p>
        A serial is read only by patterns that you write down here, from left to right, in plain words.
        Benchtake brings none: which maker wrote serials how is for you to know.
      </p>
      {patterns.length > 0 && (
        <ul className={styles.patterns}>
          {patterns.map((pattern) => (
            <li key={pattern.name}>
              <p>
                <strong>{pattern.name}</strong>: {pattern.words}
              </p>
              <Button
                weight="bare"
                aria-label={`Delete ${pattern.name}`}
                onClick={() => void remove(pattern).catch(wrong)}
              >
                Delete
              </Button>
            </li>
          ))}
        </ul>
      )}
      <PatternForm onKeep={(pattern) => keep([...patterns, pattern], 'Pattern kept', patterns)} />
    </section>
  );
}
