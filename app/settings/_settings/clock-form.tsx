'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import styles from '../settings.module.css';
import { type CameraClock, clockExample, clockOf, clockWays, offsetOf } from './camera-clock';

interface ClockFormProps {
  offsetMinutes: number;
  busy: boolean;
  onSet: (offsetMinutes: number) => void;
}

const wayWords = { right: 'right as it is', earlier: 'earlier by', later: 'later by' } as const;

/** Sets the times of a folder's recordings right by hours and minutes. */
export function ClockForm({ offsetMinutes, busy, onSet }: ClockFormProps) {
  const [clock, setClock] = useState<CameraClock>(() => clockOf(offsetMinutes));
  const [held, setHeld] = useState(offsetMinutes);
  if (held !== offsetMinutes) {
    // Set elsewhere, or taken back.
    setHeld(offsetMinutes);
    setClock(clockOf(offsetMinutes));
  }
  const write = (part: Partial<CameraClock>) => setClock((before) => ({ ...before, ...part }));
  const offset = offsetOf(clock);
  const set = (event: React.FormEvent) => {
    event.preventDefault();
    onSet(offset);
  };
  return (
    <form className={styles.clock} onSubmit={set}>
      <ChoiceField
        label="Camera clock"
        value={clock.way}
        onChange={(event) => write({ way: clockWays.find((way) => way === event.target.value) ?? 'right' })}
      >
        {clockWays.map((way) => (
          <option key={way} value={way}>
            {wayWords[way]}
          </option>
        ))}
      </ChoiceField>
      {clock.way !== 'right' && (
        <>
          <CountField label="Hours" most={14} value={clock.hours} onCount={(hours) => write({ hours })} />
          <CountField
            label="Minutes"
            most={59}
            value={clock.minutes}
            onCount={(minutes) => write({ minutes })}
          />
        </>
      )}
      <Button type="submit" aria-disabled={busy} className={styles.beside}>
        Set the clock
      </Button>
      <p className={styles.example} aria-live="polite">
        {offset === 0 ? 'Times are taken as the recordings say.' : clockExample(offset)}
      </p>
    </form>
  );
}

interface CountFieldProps {
  label: string;
  most: number;
  value: number;
  onCount: (count: number) => void;
}

function CountField({ label, most, value, onCount }: CountFieldProps) {
  return (
    <TextField
      label={label}
      type="number"
      inputMode="numeric"
      min={0}
      max={most}
      step={1}
      required
      value={String(value)}
      onFocus={(event) => event.currentTarget.select()}
      onChange={(event) => onCount(event.target.valueAsNumber || 0)}
    />
  );
}
