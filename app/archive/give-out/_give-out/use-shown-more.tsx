'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';

/** Lines that are shown before more are asked for: thousands would hold up the page. */
const atFirst = 50;

/** The first lines of a long list, and the button that brings the next ones where there are any. */
export function useShownMore<T>(all: readonly T[]): { shown: readonly T[]; more: React.ReactNode } {
  const [count, setCount] = useState(atFirst);
  const left = all.length - count;
  return {
    shown: all.slice(0, count),
    more: left > 0 && (
      <div>
        <Button onClick={() => setCount(count + atFirst)}>Show more: {left} left</Button>
      </div>
    ),
  };
}
