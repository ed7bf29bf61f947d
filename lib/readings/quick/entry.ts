import type { NewReading } from '@/shared/readings';

/** What the line is read against. */
export interface QuickContext {
  instrumentType: string;
  /** Conductors known from the job's traces: two-colour names are told from pairs by them. */
  conductors?: readonly string[];
  /** What readings were of last: a line without a subject is of that. */
  lastSubject?: string;
}

/** One part of the line and what it was taken for. */
export interface Understood {
  text: string;
  as: string;
}

export interface Choice {
  label: string;
  reading: NewReading;
}

export type QuickEntry =
  | { state: 'empty' }
  /** Not enough yet: `missing` says what, with an example. */
  | { state: 'unfinished'; understood: Understood[]; missing: string }
  | { state: 'question'; understood: Understood[]; question: string; choices: Choice[] }
  | { state: 'understood'; understood: Understood[]; reading: NewReading };
