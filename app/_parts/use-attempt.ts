'use client';

import { useCallback, useRef, useState } from 'react';

export interface Attempt {
  busy: boolean;
  /** What the last attempt threw; null where nothing is wrong. */
  problem: unknown;
  /** Does nothing while an attempt is under way. */
  run(work: () => Promise<void>): Promise<void>;
}

/** One thing that is tried, with its busy state and its problem, for a form that shows both itself. */
export function useAttempt(): Attempt {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<unknown>(null);
  const underWay = useRef(false);
  const run = useCallback(async (work: () => Promise<void>) => {
    if (underWay.current) return;
    underWay.current = true;
    setBusy(true);
    setProblem(null);
    try {
      await work();
    } catch (error) {
      setProblem(error);
    } finally {
      underWay.current = false;
      setBusy(false);
    }
  }, []);
  return { busy, problem, run };
}
