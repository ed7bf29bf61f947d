import type { FindableKind, UnderstoodPart } from '@/shared/archive';
import type { ClientId } from '@/shared/ids';
import type { MarkerKind } from '@/shared/markers';
import type { Basis, ReadingKindId } from '@/shared/readings';
import type { OwnSynonym } from '../words';
import { type Day, earlierOf, laterOf, type Span } from './time/days';
import type { Hemisphere } from './time/seasons';

/** What a question is read against. */
export interface QuestionContext {
  /** The day that "last spring" is counted from. */
  today: Day;
  hemisphere: Hemisphere;
  /** 0 for Sunday to 6. */
  firstDayOfWeek: number;
  instrumentTypes: readonly string[];
  clients: readonly { id: ClientId; name: string }[];
  /** Give the same list each time: what is made of it is kept. */
  ownSynonyms: readonly OwnSynonym[];
  /** Whether a prepared word occurs anywhere in what is indexed. */
  knows(word: string): boolean;
  /** The nearest word that does; null where none is near. */
  near(word: string): string | null;
}

/** One thing that is looked for by its words. */
export interface QuestionTerm {
  /** The id of its part. */
  id: string;
  said: string;
  /** Prepared words, one of which must be met; those that mean the same first. */
  any: string[];
  /** How many of `any`, from the first on, mean the same; the others go with it (signs, causes, cures) and say less. */
  close: number;
  /** The words of a phrase as they were said, which say more than what it means; empty for a word. */
  exact: string[];
  /** 1 for a usual word. */
  weight: number;
  isSlip: boolean;
}

export interface QuestionValue {
  /** The id of its part. */
  id: string;
  /** Null where any kind may be meant. */
  kindIds: ReadingKindId[] | null;
  /** In the base unit of the kinds; null for an open end. */
  low: number | null;
  high: number | null;
  /** The value that is looked for as nearly as can be; null for a range. */
  near: number | null;
  /** Words beside it that say what was measured: "neck". They are terms too. */
  subject: string | null;
  /** Prepared words that say the same value in a text. */
  words: string[];
}

/** What one part of the question adds. */
export interface Finding {
  part: UnderstoodPart;
  term?: QuestionTerm;
  span?: Span;
  value?: QuestionValue;
  instruments?: readonly string[];
  markerKinds?: readonly MarkerKind[];
  kinds?: readonly FindableKind[];
  basis?: Basis;
  clients?: readonly ClientId[];
}

/** A question as it was understood. What is null or empty narrows nothing. */
export interface Question {
  parts: UnderstoodPart[];
  terms: QuestionTerm[];
  /** Days from the first to the last. */
  span: Span | null;
  values: QuestionValue[];
  instruments: string[];
  markerKinds: MarkerKind[];
  kinds: FindableKind[];
  basis: Basis | null;
  clients: ClientId[];
  /** What each part adds, in the order of the question. */
  findings: readonly Finding[];
}

const unique = <T>(values: readonly T[]): T[] => [...new Set(values)];

/** Parts brought together into a question. */
export function asQuestion(findings: readonly Finding[]): Question {
  return {
    parts: findings.map(({ part }) => part),
    terms: findings.flatMap(({ term }) => term ?? []),
    span: commonSpan(findings.flatMap(({ span }) => span ?? [])),
    values: findings.flatMap(({ value }) => value ?? []),
    instruments: unique(findings.flatMap(({ instruments }) => instruments ?? [])),
    markerKinds: unique(findings.flatMap(({ markerKinds }) => markerKinds ?? [])),
    kinds: unique(findings.flatMap(({ kinds }) => kinds ?? [])),
    basis: findings.find(({ basis }) => basis)?.basis ?? null,
    clients: unique(findings.flatMap(({ clients }) => clients ?? [])),
    findings,
  };
}

/** The same question without some of its parts. Ids that it does not have change nothing. */
export function withoutParts(question: Question, ids: Iterable<string>): Question {
  const gone = new Set(ids);
  return asQuestion(question.findings.filter(({ part }) => !gone.has(part.id)));
}

/** Times that overlap narrow one another; times apart are all meant, with what lies between. */
function commonSpan(spans: readonly Span[]): Span | null {
  const [first, ...others] = spans;
  if (!first) return null;
  return others.reduce((span, other) => {
    const [from, to] = [laterOf(span.from, other.from), earlierOf(span.to, other.to)];
    return from <= to
      ? { from, to }
      : { from: earlierOf(span.from, other.from), to: laterOf(span.to, other.to) };
  }, first);
}
