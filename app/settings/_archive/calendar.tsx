'use client';

import { useState } from 'react';
import { call } from '@/app/_parts/call';
import { ChoiceField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { type ArchiveCalendar, archiveCalendarSchema } from '@/shared/archive';
import styles from './archive.module.css';

const hemispheres = { north: 'Northern', south: 'Southern' } as const;
const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** What “last spring” and “last week” follow from. */
export function ArchiveCalendarSheet({ first }: { first: ArchiveCalendar }) {
  const { done, wrong } = useNotices();
  const [calendar, setCalendar] = useState(first);
  const keep = async (next: ArchiveCalendar, told: string, undo?: ArchiveCalendar) => {
    setCalendar(next);
    try {
      setCalendar(await call('PUT', '/api/archive/calendar', archiveCalendarSchema, next));
      done(told, undo && (() => void keep(undo, 'Put back')));
    } catch (error) {
      setCalendar(calendar);
      wrong(error);
    }
  };
  const change = (part: Partial<ArchiveCalendar>, told: string) =>
    void keep({ ...calendar, ...part }, told, calendar);
  return (
    <div className={styles.pair}>
      <ChoiceField
        label="Hemisphere"
        hint={
          calendar.hemisphere === 'north'
            ? 'Spring is from March to May.'
            : 'Spring is from September to November.'
        }
        value={calendar.hemisphere}
        onChange={(event) =>
          change({ hemisphere: event.currentTarget.value === 'south' ? 'south' : 'north' }, 'Hemisphere kept')
        }
      >
        {Object.entries(hemispheres).map(([value, word]) => (
          <option key={value} value={value}>
            {word}
          </option>
        ))}
      </ChoiceField>
      <ChoiceField
        label="The week begins on"
        hint="“Last week” is counted from it."
        value={calendar.firstDayOfWeek}
        onChange={(event) =>
          change({ firstDayOfWeek: Number(event.currentTarget.value) }, 'First day of the week kept')
        }
      >
        {weekdays.map((word, day) => (
          <option key={word} value={day}>
            {word}
          </option>
        ))}
      </ChoiceField>
    </div>
  );
}
