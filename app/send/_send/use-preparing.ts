'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Part } from './part';
import { type Prepared, prepare } from './prepare';

export type Preparing =
  | { phase: 'none' }
  | { phase: 'working'; share: number | null }
  | { phase: 'ready'; prepared: Prepared }
  | { phase: 'failed'; error: unknown };

const none: Preparing = { phase: 'none' };

/** The preparation of the recording that is picked; ended when another is, or when the page is left. */
export function usePreparing() {
  const [state, setState] = useState<Preparing>(none);
  const running = useRef<AbortController | null>(null);
  const stop = useCallback(() => {
    running.current?.abort();
    running.current = null;
    setState(none);
  }, []);
  useEffect(() => () => running.current?.abort(), []);

  const start = useCallback(async (file: File, part: Part) => {
    running.current?.abort();
    const mine = new AbortController();
    running.current = mine;
    const show = (next: Preparing) => {
      if (running.current === mine) setState(next);
    };
    show({ phase: 'working', share: null });
    try {
      const onShare = (share: number | null) => show({ phase: 'working', share });
      const prepared = await prepare(file, part, { onShare, signal: mine.signal });
      show({ phase: 'ready', prepared });
    } catch (error) {
      show({ phase: 'failed', error });
    }
  }, []);
  return { state, start, stop };
}
