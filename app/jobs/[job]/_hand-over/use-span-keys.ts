'use client';

import { useMemo, useRef } from 'react';
import type { TakeSpan } from '@/shared/cut';
import { keyOf } from './spans';

/** Names for spans in a list that stay while their times are changed, so that an open line stays open. */
export function useSpanKeys() {
  const first = useRef(new Map<string, string>());
  return useMemo(() => {
    const keyFor = (span: TakeSpan) => first.current.get(keyOf(span)) ?? keyOf(span);
    return {
      keyFor,
      /** Told before a span becomes another. */
      becomes: (span: TakeSpan, next: TakeSpan) => {
        first.current.set(keyOf(next), keyFor(span));
      },
    };
  }, []);
}
