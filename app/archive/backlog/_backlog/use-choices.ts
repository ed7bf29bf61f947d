'use client';

import { useCallback, useState } from 'react';
import type { Choice, ProposedJob } from '@/shared/backlog';

export type ChoiceChange = Partial<Omit<Choice, 'key'>>;

export type Decided = Omit<Choice, 'key'>;

export interface Choices {
  of(job: ProposedJob): Decided;
  change(key: string, change: ChoiceChange): void;
  /** Takes all of them in, or leaves all of them out. */
  all(jobs: readonly ProposedJob[], leftOut: boolean): void;
  /** Those that were made, to be sent. */
  made(jobs: readonly ProposedJob[]): Choice[];
}

const none: Decided = { leftOut: false };

/** What is decided about proposed jobs, until it is imported. */
export function useChoices(): Choices {
  const [byKey, setByKey] = useState<ReadonlyMap<string, Choice>>(new Map());
  const change = useCallback((key: string, changed: ChoiceChange) => {
    setByKey((now) => new Map(now).set(key, { ...none, ...now.get(key), ...changed, key }));
  }, []);
  const all = useCallback((jobs: readonly ProposedJob[], leftOut: boolean) => {
    setByKey((now) => {
      const next = new Map(now);
      for (const { key } of jobs) next.set(key, { ...none, ...now.get(key), leftOut, key });
      return next;
    });
  }, []);
  const of = ({ key }: ProposedJob): Decided => byKey.get(key) ?? none;
  return {
    of,
    change,
    all,
    made: (jobs) => jobs.flatMap(({ key }) => byKey.get(key) ?? []).map(withoutEmptyTitle),
  };
}

/** A title that was wiped out is the proposed one again. */
function withoutEmptyTitle({ title, ...choice }: Choice): Choice {
  return title?.trim() ? { ...choice, title } : choice;
}
