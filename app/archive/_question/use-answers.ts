'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import { call } from '@/app/_parts/call';
import { type ArchiveAnswer, archiveAnswerSchema } from '@/shared/archive';
import { routeOf } from './asked';

/** An answer with the question that it belongs to. */
export interface Answered {
  search: string;
  answer: ArchiveAnswer;
}

export interface Answers {
  /** The answer to the question, or the last one until it is there. */
  shown: Answered;
  /** The answer shown belongs to another question than the one that is asked now. */
  isBehind: boolean;
  /** Why the question was not answered; null where nothing is wrong. */
  problem: unknown;
  askAgain(): void;
  /** Brings the answers that follow; true once they are there. */
  further(): Promise<boolean>;
}

const mostAtOnce = 100;
const atFirst = 20;
/** Jobs that wait to be taken in are there after a moment. */
const waitingMs = 1500;
/** Questions whose answers are kept while the page is open, so that Back shows them at once. */
const mostKept = 30;
const kept = new Map<string, ArchiveAnswer>();

function keep({ search, answer }: Answered): void {
  kept.delete(search);
  kept.set(search, answer);
  const [oldest] = kept.keys();
  if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
}

/**
 * Answers the question of the address. Only the latest counts: what comes late for an earlier one is dropped.
 * @param first the answer that the page came with
 */
export function useAnswers(search: string, first: Answered): Answers {
  const [heard, setHeard] = useState(first);
  const [failed, setFailed] = useState<{ search: string; problem: unknown } | null>(null);
  const [tries, setTries] = useState(0);
  const latest = useRef(search);
  const known = kept.get(search);
  const fromServer = first.search === search ? first : undefined;
  const atHand = heard.search === search ? heard : known ? { search, answer: known } : fromServer;
  const shown = atHand ?? heard;

  // biome-ignore lint/correctness/useExhaustiveDependencies: another try asks the same question again.
  useEffect(() => {
    latest.current = search;
    if (search === first.search && !kept.has(search)) return keep(first);
    const limit = Math.min(mostAtOnce, Math.max(atFirst, kept.get(search)?.answers.length ?? 0));
    let isLatest = true;
    call('GET', routeOf(search, { limit }), archiveAnswerSchema).then(
      (answer) => {
        if (!isLatest) return;
        keep({ search, answer });
        setHeard({ search, answer });
        setFailed(null);
      },
      (problem: unknown) => isLatest && setFailed({ search, problem }),
    );
    return () => {
      isLatest = false;
    };
  }, [search, first, tries]);

  const askAgain = useCallback(() => setTries((count) => count + 1), []);
  const isWaiting = atHand !== undefined && atHand.answer.waiting > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each answer that still waits is a reason to ask again.
  useEffect(() => {
    if (!isWaiting) return;
    const timer = setTimeout(askAgain, waitingMs);
    return () => clearTimeout(timer);
  }, [isWaiting, atHand, askAgain]);

  const further = async () => {
    const after = shown.answer.next;
    if (after === null) return false;
    try {
      const more = await call('GET', routeOf(search, { after }), archiveAnswerSchema);
      if (latest.current !== search) return false;
      const next = { search, answer: joined(shown.answer, more) };
      keep(next);
      setHeard(next);
      setFailed(null);
      return true;
    } catch (problem) {
      if (latest.current === search) setFailed({ search, problem });
      return false;
    }
  };
  const problem = failed?.search === search ? failed.problem : null;
  return { shown, isBehind: atHand === undefined, problem, askAgain, further };
}

/** What was found later stands below; a job that was shown already is not shown twice. */
function joined(before: ArchiveAnswer, more: ArchiveAnswer): ArchiveAnswer {
  const known = new Set(before.answers.map(({ job }) => job.id));
  const answers = [...before.answers, ...more.answers.filter(({ job }) => !known.has(job.id))];
  return { ...before, answers, next: more.next, waiting: more.waiting };
}
