'use client';

import { useEffect, useRef, useState } from 'react';
import { TextField } from '@/app/_parts/field';
import { dayInWords } from '@/app/_parts/words';
import { daySchema } from '@/shared/days';
import styles from './narrow.module.css';

interface DaysProps {
  from: string | undefined;
  to: string | undefined;
  onDays: (days: { from: string | undefined; to: string | undefined }) => void;
}

/** First and last day of the jobs that are asked; one of them may be left empty. */
export function NarrowDays({ from, to, onDays }: DaysProps) {
  const [wrong, setWrong] = useState<string | null>(null);
  const set = (days: { from: string | undefined; to: string | undefined }) => {
    const isBackwards = days.from !== undefined && days.to !== undefined && days.from > days.to;
    setWrong(isBackwards ? 'The last day lies before the first: change one of them.' : null);
    if (!isBackwards) onDays(days);
  };
  return (
    <div className={styles.days}>
      <Day label="From" day={from} wrong={wrong} onDay={(day) => set({ from: day, to })} />
      <Day label="To" day={to} wrong={null} onDay={(day) => set({ from, to: day })} />
    </div>
  );
}

interface DayProps {
  label: string;
  day: string | undefined;
  wrong: string | null;
  onDay: (day: string | undefined) => void;
}

/** The browser keeps the half of a date that is typed so far: it is only written to when another day is asked. */
function Day({ label, day = '', wrong, onDay }: DayProps) {
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (box.current && box.current.value !== day) box.current.value = day;
  }, [day]);
  const read = (value: string) => {
    if (value === '') return onDay(undefined);
    const typed = daySchema.safeParse(value);
    if (typed.success) onDay(typed.data);
  };
  return (
    <TextField
      ref={box}
      label={label}
      type="date"
      defaultValue={day}
      wrong={wrong}
      onChange={(event) => read(event.currentTarget.value)}
    />
  );
}

/** "3 Mar 2025 to 5 May 2026", "from 3 Mar 2025", "until 5 May 2026". */
export function sayDays(from: string | undefined, to: string | undefined): string {
  const say = (day: string) => dayInWords(day, '0000-01-01');
  if (from !== undefined && to !== undefined) return `${say(from)} to ${say(to)}`;
  if (from !== undefined) return `from ${say(from)}`;
  return to === undefined ? 'any day' : `until ${say(to)}`;
}
