'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { units } from '@/lib/readings';
import type { Meter, NewMeter } from '@/shared/readings';
import { unitIdSchema } from '@/shared/readings';
import styles from './meters.module.css';
import { draftOf, figures, type RangeDraft, rangeOf } from './range-draft';

interface MeterFormProps {
  /** The meter to change; none for a new one. */
  meter?: Meter;
  onSave: (meter: NewMeter) => Promise<void>;
  onLeave: () => void;
}

/** Names a meter and writes down the accuracy of each of its ranges, as its data sheet has it. */
export function MeterForm({ meter, onSave, onLeave }: MeterFormProps) {
  const { busy, problem, run } = useAttempt();
  const [name, setName] = useState(meter?.name ?? '');
  const [ranges, setRanges] = useState<RangeDraft[]>(() => meter?.ranges.map(draftOf) ?? [draftOf()]);
  const read = ranges.map(rangeOf);
  const whole = read.flatMap((range) => range ?? []);
  const isWhole = whole.length === ranges.length;
  const change = (key: number, part: Partial<RangeDraft>) =>
    setRanges((all) => all.map((range) => (range.key === key ? { ...range, ...part } : range)));
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (isWhole) void run(() => onSave({ name, ranges: whole }));
      }}
    >
      <TextField
        label="Name of the meter"
        hint="As you call it on the bench."
        value={name}
        required
        maxLength={100}
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <div className={styles.scroller}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Unit</th>
              {figures.map(({ field, label }) => (
                <th key={field} scope="col">
                  {label}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {ranges.map((range, index) => (
              <RangeRow
                key={range.key}
                range={range}
                number={index + 1}
                onChange={(part) => change(range.key, part)}
                onRemove={() => setRanges((all) => all.filter(({ key }) => key !== range.key))}
              />
            ))}
          </tbody>
        </table>
      </div>
      {!isWhole && (
        <p role="status">
          Every range needs its four figures, such as 20, 0.01, 0.8 and 2: reads up to 20 kΩ in steps of 0.01
          kΩ, ± (0.8 % + 2 counts).
        </p>
      )}
      <div className={styles.row}>
        <Button onClick={() => setRanges((all) => [...all, draftOf()])}>One more range</Button>
        <Button type="submit" weight="main" aria-disabled={busy || !isWhole}>
          Keep this meter
        </Button>
        <Button weight="bare" onClick={onLeave}>
          Leave it
        </Button>
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </form>
  );
}

interface RangeRowProps {
  range: RangeDraft;
  number: number;
  onChange: (part: Partial<RangeDraft>) => void;
  onRemove: () => void;
}

function RangeRow({ range, number, onChange, onRemove }: RangeRowProps) {
  return (
    <tr>
      <td>
        <select
          aria-label={`Unit, range ${number}`}
          value={range.unit}
          onChange={(event) => onChange({ unit: unitIdSchema.parse(event.currentTarget.value) })}
        >
          {units
            .filter(({ quantity }) => quantity !== 'direction')
            .map(({ id }) => (
              <option key={id}>{id}</option>
            ))}
        </select>
      </td>
      {figures.map(({ field, label }) => (
        <td key={field}>
          <input
            aria-label={`${label}, range ${number}`}
            inputMode="decimal"
            value={range[field]}
            onChange={(event) => onChange({ [field]: event.currentTarget.value })}
          />
        </td>
      ))}
      <td>
        <Button weight="bare" onClick={onRemove} aria-label={`Take range ${number} away`}>
          Take away
        </Button>
      </td>
    </tr>
  );
}
