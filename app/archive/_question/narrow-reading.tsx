'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { counted } from '@/app/_parts/words';
import { kindOf, sayBase } from '@/lib/readings';
import type { ArchiveAnswer } from '@/shared/archive';
import { type ReadingKindId, readingKindIdSchema } from '@/shared/readings';
import styles from './narrow.module.css';
import { readTyped } from './typed-range';

export interface ReadingRange {
  reading: ReadingKindId | undefined;
  low: number | undefined;
  high: number | undefined;
}

interface NarrowReadingProps {
  chosen: ReadingRange;
  offered: ArchiveAnswer['filters']['readings'];
  onRange: (range: ReadingRange) => void;
}

/** Kind and range of a reading that the job must hold, typed as it is said: "7k" to "9k". */
export function NarrowReading({ chosen, offered, onRange }: NarrowReadingProps) {
  const [kind, setKind] = useState<ReadingKindId | ''>(chosen.reading ?? '');
  const [low, setLow] = useState(written(chosen, chosen.low));
  const [high, setHigh] = useState(written(chosen, chosen.high));
  const [shown, setShown] = useState(chosen);
  if (shown.reading !== chosen.reading || shown.low !== chosen.low || shown.high !== chosen.high) {
    setShown(chosen);
    setKind(chosen.reading ?? '');
    setLow(written(chosen, chosen.low));
    setHigh(written(chosen, chosen.high));
  }
  const [wrong, setWrong] = useState<{ low: string | null; high: string | null }>({ low: null, high: null });
  const submit = (event: React.FormEvent) => {
    event.preventDefault();
    if (kind === '') return onRange({ reading: undefined, low: undefined, high: undefined });
    const [from, to] = [readTyped(low, kind), readTyped(high, kind)];
    setWrong({ low: 'wrong' in from ? from.wrong : null, high: 'wrong' in to ? to.wrong : null });
    if ('wrong' in from || 'wrong' in to) return;
    // Typed the wrong way round, it is plain what is meant.
    const ends = [from.base, to.base];
    const isTurned = from.base !== null && to.base !== null && from.base > to.base;
    const [least, most] = isTurned ? ends.toReversed() : ends;
    onRange({ reading: kind, low: least ?? undefined, high: most ?? undefined });
  };
  const kinds = [
    ...new Set([...offered.map((each) => each.kind), ...(chosen.reading ? [chosen.reading] : [])]),
  ];
  const spread = offered.find((each) => each.kind === kind);
  return (
    <form className={styles.reading} onSubmit={submit} noValidate>
      <ChoiceField
        label="Kind of reading"
        value={kind}
        onChange={(event) => setKind(readingKindIdSchema.safeParse(event.currentTarget.value).data ?? '')}
        {...(spread && kind !== ''
          ? {
              hint: `${counted(spread.count, 'job')}, ${sayBase(spread.low, kind)} to ${sayBase(spread.high, kind)}`,
            }
          : {})}
      >
        <option value="">Any</option>
        {kinds.map((each) => (
          <option key={each} value={each}>
            {kindOf(each).label}
          </option>
        ))}
      </ChoiceField>
      <div className={styles.pair}>
        <TextField
          label="From"
          placeholder="7k"
          wrong={wrong.low}
          value={low}
          maxLength={40}
          autoComplete="off"
          onChange={(event) => setLow(event.currentTarget.value)}
        />
        <TextField
          label="To"
          placeholder="9k"
          wrong={wrong.high}
          value={high}
          maxLength={40}
          autoComplete="off"
          onChange={(event) => setHigh(event.currentTarget.value)}
        />
      </div>
      <Button type="submit">Narrow to these readings</Button>
    </form>
  );
}

function written({ reading }: ReadingRange, base: number | undefined): string {
  return reading === undefined || base === undefined ? '' : sayBase(base, reading);
}
