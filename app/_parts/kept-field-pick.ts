'use client';

import { useRef, useState } from 'react';
import type { z } from 'zod';
import { clashOf, sayWrong } from './kept-field-clash';

export interface KeptPick<T> {
  /** Name of the field in the contract: a clash with another window is told by it. */
  name: string;
  schema: z.ZodType<T>;
  /** What is on the record. */
  value: T;
  /** Keeps what was picked; `was` is what the person saw before. Throws what the server refuses. */
  onKeep: (next: T, was: T) => Promise<unknown>;
}

/** Something that is picked, not written: kept at once, with the choice that is left where another window was faster. */
export function useKeptPick<T>({ name, schema, value, onKeep }: KeptPick<T>) {
  const [problem, setProblem] = useState<string | null>(null);
  const [clash, setClash] = useState<{ mine: T; there: T } | null>(null);
  const [busy, setBusy] = useState(false);
  const underWay = useRef<Promise<void> | null>(null);
  const latest = useRef({ value, onKeep });
  latest.current = { value, onKeep };

  const settle = () => {
    setProblem(null);
    setClash(null);
  };
  const send = async (next: T, was: T) => {
    setBusy(true);
    try {
      await latest.current.onKeep(next, was);
      settle();
    } catch (error) {
      const there = clashOf(error, name);
      const stands = there && schema.safeParse(there.now);
      setProblem(sayWrong(error, name));
      setClash(stands?.success ? { mine: next, there: stands.data } : null);
    } finally {
      setBusy(false);
    }
  };
  /** One after the other: a touch that comes while an earlier one is being kept is not lost. */
  const queue = async (nextOf: (was: T) => T, seen = value) => {
    let was = seen;
    while (underWay.current) {
      await underWay.current;
      await drawnAgain();
      was = latest.current.value;
    }
    underWay.current = send(nextOf(was), was).finally(() => {
      underWay.current = null;
    });
    return underWay.current;
  };
  return {
    pick: (next: T) => queue(() => next),
    /** Picks what follows from what stands there. */
    amend: queue,
    problem,
    clash,
    busy,
    keepMine: async () => {
      if (clash) await queue(() => clash.mine, clash.there);
    },
    takeThat: settle,
  };
}

/** What is sent next starts from what the page shows by then, so it has to be drawn first. */
function drawnAgain(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
