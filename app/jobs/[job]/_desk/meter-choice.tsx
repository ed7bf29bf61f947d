'use client';

import type { Meter } from '@/shared/readings';
import styles from './meter-choice.module.css';

interface MeterChoiceProps {
  meters: readonly Meter[];
  value: string | null;
  onChoose: (id: string) => void;
}

/** Which meter lies on the bench; readings noted from here on carry it. Nothing where no meter is known. */
export function MeterChoice({ meters, value, onChoose }: MeterChoiceProps) {
  if (meters.length === 0) return null;
  return (
    <label className={styles.meter}>
      <span>Meter</span>
      <select value={value ?? ''} onChange={(event) => onChoose(event.currentTarget.value)}>
        <option value="">none</option>
        {meters.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
