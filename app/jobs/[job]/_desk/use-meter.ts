'use client';

import { useSyncExternalStore } from 'react';
import { kindOf, unitOf } from '@/lib/readings';
import type { Meter, NewReading } from '@/shared/readings';

const key = 'benchtake.meter';
const listeners = new Set<() => void>();

function listen(changed: () => void): () => void {
  listeners.add(changed);
  return () => listeners.delete(changed);
}

/** The meter that lies on the bench: this browser remembers it. Null for none, and for one that is gone. */
export function useMeter(meters: readonly Meter[]): [Meter | null, (id: string) => void] {
  const kept = useSyncExternalStore(
    listen,
    () => localStorage.getItem(key),
    () => null,
  );
  const choose = (id: string) => {
    localStorage.setItem(key, id);
    for (const changed of listeners) changed();
  };
  return [meters.find(({ id }) => id === kept) ?? null, choose];
}

/** Whether a reading can come from the meter: a rule, not the meter, tells the height of a string. */
export function canRead({ ranges }: Meter, { kind }: NewReading): boolean {
  const { quantity } = unitOf(kindOf(kind).baseUnit);
  return quantity === 'direction' || ranges.some(({ unit }) => unitOf(unit).quantity === quantity);
}
