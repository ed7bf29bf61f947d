'use client';

import { useEffect, useState } from 'react';
import type { z } from 'zod';
import { call } from '@/app/_parts/call';

/** A person who types on has not asked yet. */
const waitMs = 120;

export interface Answer<T> {
  /** The address that was asked. */
  address: string;
  value: T | null;
  /** Why there is no value; null where there is one. */
  problem: unknown;
}

/**
 * Asks a route a moment after its address last changed. Only the latest question counts: what comes late for an
 * earlier one is dropped. The last answer stands until the next is there, so compare its address.
 * @param address null asks nothing
 * @param asOf the same address is asked again when this changes
 */
export function useAnswer<T>(address: string | null, schema: z.ZodType<T>, asOf = 0): Answer<T> | null {
  const [answer, setAnswer] = useState<Answer<T> | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a newer state of things is a reason to ask again.
  useEffect(() => {
    if (address === null) return;
    let latest = true;
    const settle = (next: Answer<T>) => latest && setAnswer(next);
    const timer = setTimeout(() => {
      call('GET', address, schema).then(
        (value) => settle({ address, value, problem: null }),
        (problem: unknown) => settle({ address, value: null, problem }),
      );
    }, waitMs);
    return () => {
      latest = false;
      clearTimeout(timer);
    };
  }, [address, schema, asOf]);
  return answer;
}
