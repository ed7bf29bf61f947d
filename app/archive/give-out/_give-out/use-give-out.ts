'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { call } from '@/app/_parts/call';
import { type GiveOutJob, type GiveOutPreview, giveOutPreviewSchema } from '@/shared/archive-exports';
import { type Finding, findingsSchema } from '@/shared/cut';
import { changeIdSchema } from '@/shared/ids';
import { type Chosen, previewRoute, readChosen, searchOf } from './chosen';

export interface GiveOut {
  chosen: Chosen;
  /** Null until it is there for the first time. */
  preview: GiveOutPreview | null;
  /** The preview belongs to what was chosen before. */
  isBehind: boolean;
  problem: unknown;
  choose(change: Chosen): void;
  lookAgain(): void;
  /** Decides on a finding as the hand-over of its job does. */
  decide(job: GiveOutJob, finding: Finding, decision: Finding['decision']): Promise<void>;
}

/** What is chosen, kept in the address, and what of it would go out. Only the latest choice counts. */
export function useGiveOut(): GiveOut {
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [preview, setPreview] = useState<GiveOutPreview | null>(null);
  const [isBehind, setBehind] = useState(true);
  const [problem, setProblem] = useState<unknown>(null);
  const asked = useRef(0);

  const look = useCallback(async (now: Chosen) => {
    asked.current += 1;
    const own = asked.current;
    setBehind(true);
    setProblem(null);
    try {
      const next = await call('GET', previewRoute(now), giveOutPreviewSchema);
      if (own !== asked.current) return;
      setPreview(next);
      setBehind(false);
    } catch (error) {
      if (own === asked.current) setProblem(error);
    }
  }, []);

  // The address is only known in the browser.
  useEffect(() => {
    const now = readChosen(location.search);
    setChosen(now);
    void look(now);
  }, [look]);

  const current = chosen ?? {};
  const choose = (change: Chosen) => {
    const next = { ...current, ...change };
    setChosen(next);
    const search = searchOf(next);
    history.replaceState(null, '', search === '' ? location.pathname : `?${search}`);
    void look(next);
  };
  const decide: GiveOut['decide'] = async (job, { id }, decision) => {
    const answer = findingsSchema.extend({ change: changeIdSchema });
    await call('POST', `/api/jobs/${job.id}/findings`, answer, { id, decision });
    await look(current);
  };
  return { chosen: current, preview, isBehind, problem, choose, lookAgain: () => void look(current), decide };
}
