'use client';

import { useEffect, useMemo, useRef } from 'react';
import { QuickReading } from '../_desk/quick-reading';
import { useDesk } from '../_desk/use-record';
import type { Pair } from './pair-grid';

interface PairEntryProps {
  subject: string;
  conductors: readonly string[];
  pair: Pair | null;
  onNoted: () => void;
}

/** The typed line of the worksheet: with a pair chosen, only the value is left to type. */
export function PairEntry({ subject, conductors, pair, onNoted }: PairEntryProps) {
  const holder = useRef<HTMLDivElement>(null);
  const { record } = useDesk();
  const before = useMemo(() => (pair ? `${subject} ${pair[0]} - ${pair[1]}` : subject), [subject, pair]);
  useEffect(() => {
    if (pair) holder.current?.querySelector<HTMLInputElement>('[data-quick-reading]')?.focus();
  }, [pair]);
  const label = pair ? `Between ${pair[0]} and ${pair[1]}` : `Of the ${subject}`;
  return (
    <div ref={holder}>
      <QuickReading
        key={record.job.id}
        conductors={conductors}
        before={before}
        label={label}
        placeholder={pair ? '4.08k · open · 0.3 ohm' : 'total 8.08k · red-white 4.08k'}
        onNoted={onNoted}
      />
    </div>
  );
}
