import { z } from 'zod';
import { msOf } from './form';

/** What makes a question of its sort hard; reported by sort. */
export type Sort =
  | 'plain'
  | 'half sentence'
  | 'no shared word'
  | 'date decides'
  | 'no answer'
  | 'value'
  | 'instrument type'
  | 'client'
  | 'basis'
  | 'one word'
  | 'quoted'
  | 'slip';

/**
 * A right answer: the job; where it matters the moment (within 30 s) or the record ("work: New nut from bone").
 * Grade 3 is what was asked for, 2 serves as well for most of it, 1 is worth a look.
 */
export interface Grade {
  job: string;
  ms: number | null;
  record: string | null;
  grade: 1 | 2 | 3;
}

export interface ScoredQuestion {
  sort: Sort;
  q: string;
  /** The day it is asked. */
  today: string;
  grades: Grade[];
}

const usualDay = '2026-11-25';

/** @param answers each as `job=3`, `job@m:ss=3` or `job#work: words of the record=3` */
export function ask(sort: Sort, q: string, answers: string[], today = usualDay): ScoredQuestion {
  return { sort, q, today, grades: answers.map(grade) };
}

function grade(written: string): Grade {
  const found = /^([a-z0-9-]+)(?:@(\d+:\d\d)|#(.+))?=([123])$/.exec(written);
  if (!found) throw new Error(`“${written}” is not written as an answer.`);
  const [, job = '', at, record, value] = found;
  return {
    job,
    ms: at ? msOf(at) : null,
    record: record ?? null,
    grade: z.union([z.literal(1), z.literal(2), z.literal(3)]).parse(Number(value)),
  };
}
