'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { TraceAnalysis } from '@/shared/wiring';
import { useReadingChanges } from '../_desk/use-reading-changes';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import styles from './trace.module.css';

/** Steel on the poles, and which way the needle went: five choices and one touch. */
export function KickEntry({ analysis }: { analysis: TraceAnalysis }) {
  const names = analysis.conductors.map(({ name }) => name);
  const suggested = analysis.next?.kind === 'kick' ? analysis.next : null;
  const [own, setOwn] = useState<{
    red?: string;
    black?: string;
    row?: string;
    steel?: string;
    size?: string;
  }>({});
  const { note } = useReadingChanges();
  const { record } = useDesk();
  const player = usePlayer();
  const red = own.red ?? suggested?.leads.red ?? names[0] ?? '';
  const black = own.black ?? suggested?.leads.black ?? names[1] ?? '';
  const row = own.row ?? suggested?.row ?? analysis.rows[0] ?? '';
  const kick = (sign: 1 | -1) => {
    const moment = player?.moment ?? null;
    void note({
      kind: 'polarity-kick',
      subject: analysis.subject,
      between: null,
      takeId: moment?.takeId ?? null,
      ms: moment?.ms ?? null,
      basis: 'measured',
      details: {
        leads: { red, black },
        steel: own.steel === 'taken off' ? 'taken off' : 'laid on',
        row,
        sign,
        size: own.size === 'small' ? 'small' : 'large',
      },
    }).then((noted) => noted && setOwn({}));
  };
  const choice = (label: string, value: string, key: keyof typeof own, options: readonly string[]) => (
    <label>
      {label}
      <select value={value} onChange={(event) => setOwn({ ...own, [key]: event.currentTarget.value })}>
        {options.map((option) => (
          <option key={option}>{option}</option>
        ))}
      </select>
    </label>
  );
  return (
    <div className={styles.entry} role="group" aria-label={`A kick on job ${record.job.number}`}>
      {choice('Red lead on', red, 'red', names)}
      {choice('Black lead on', black, 'black', names)}
      {choice('Row', row, 'row', analysis.rows)}
      {choice('Steel', own.steel ?? 'laid on', 'steel', ['laid on', 'taken off'])}
      {choice('Kick', own.size ?? 'large', 'size', ['large', 'small'])}
      <Button disabled={red === black} onClick={() => kick(1)}>
        + positive
      </Button>
      <Button disabled={red === black} onClick={() => kick(-1)}>
        − negative
      </Button>
    </div>
  );
}
