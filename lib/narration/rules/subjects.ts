import { CORRECTING } from '../lexicon/reading-cues';
import { SUBJECTS, type SubjectEntry } from '../lexicon/subjects';
import { PhraseBook } from '../words/phrases';
import { SpanIndex } from '../words/span-index';
import { STOP, type TokenSpan } from '../words/token';
import { findStrings, type StringMention } from './strings';
import { stopAt, type Talk, timesOf, wordAt } from './talk';

export interface SubjectMention extends TokenSpan {
  readonly name: string;
  readonly sort: SubjectEntry['sort'] | StringMention['sort'];
}

const BOOK = new PhraseBook(SUBJECTS);
const CORRECTION = new PhraseBook(CORRECTING);
/** A subject said this long before a reading still belongs to it. */
const SUBJECT_LASTS_MS = 14_000;
const FRET_LASTS_MS = 40_000;
/** A pickup named by its place alone ("bridge"); with its noun it lasts until the next one. */
const PICKUP_LASTS_MS = 30_000;

const WITH_PICKUPS = new Set(['electric guitar', 'bass guitar', 'loose pickup', 'other']);
/** "the neck joint", "bridge pins", "nut and bridge": no pickup. */
const NOT_A_PICKUP_BEFORE = new Set([
  'joint',
  'relief',
  'angle',
  'pocket',
  'plate',
  'pin',
  'pins',
  'foot',
  'bolt',
  'bolts',
  'screws',
  'saddle',
  'blank',
  'heel',
  'profile',
  'is',
  'width',
]);

function isPickupTalk(talk: Talk, match: { from: number; to: number }): boolean {
  if (match.to - match.from > 1) return true;
  if (!WITH_PICKUPS.has(talk.context.instrumentType)) return false;
  const next = stopAt(talk, match.to - 1) === STOP.none ? wordAt(talk, match.to) : '';
  return !NOT_A_PICKUP_BEFORE.has(next) || next === 'is';
}

/** Every pickup, pot, row of poles, side, string and fret named in the talk, in order. */
export function findSubjects(talk: Talk): SubjectMention[] {
  const things = BOOK.all(talk.tokens, talk.places)
    .filter((match) => match.entry.sort !== 'pickup' || isPickupTalk(talk, match))
    .map(({ entry, from, to }) => ({ from, to, name: entry.name, sort: entry.sort }));
  const strings = findStrings(talk).filter(
    (mention) => !things.some((thing) => thing.from <= mention.from && mention.from < thing.to),
  );
  return [...things, ...strings].sort((a, b) => a.from - b.from);
}

export type Sorts = readonly SubjectMention['sort'][];

/** Finds what a measurement between two others was about. */
export class SubjectFinder {
  readonly #talk: Talk;
  readonly #mentions: SpanIndex<SubjectMention>;
  readonly #pickups: SpanIndex<SubjectMention>;
  readonly #nounPickups: SpanIndex<SubjectMention>;
  readonly #ends: ReadonlySet<number>;

  constructor(talk: Talk, mentions: readonly SubjectMention[]) {
    this.#talk = talk;
    this.#mentions = new SpanIndex(mentions);
    const pickups = mentions.filter((one) => one.sort === 'pickup');
    this.#pickups = new SpanIndex(pickups);
    this.#nounPickups = new SpanIndex(pickups.filter((one) => one.to - one.from > 1));
    this.#ends = new Set(mentions.map((mention) => mention.to));
  }

  #between(from: number, to: number, sorts: Sorts): SubjectMention[] {
    return this.#mentions
      .within(from, to)
      .filter((mention) => mention.to <= to && sorts.includes(mention.sort));
  }

  /** "… on the low E", right behind the value; a correction behind it wins ("on the fifth, on the fourth I should say"). */
  behind(to: number, before: number, sorts: Sorts): SubjectMention | null {
    const after = this.#between(to, before, sorts);
    const first = after[0];
    if (!first || first.from - to > 7 || !this.#leadsTo(to, first.from)) return null;
    const second = after[1];
    const corrected =
      second && second.from - first.to < 6 && CORRECTION.matchAt(this.#talk.tokens, second.to);
    return corrected ? second : first;
  }

  /** Only "on the", "at the", "for the" stand between. */
  #leadsTo(from: number, to: number): boolean {
    for (let at = from - 1; at < to; at++) if (this.#pauses(at)) return false;
    const small = new Set([
      'on',
      'at',
      'for',
      'the',
      'of',
      'over',
      'under',
      'in',
      'across',
      'my',
      'now',
      'dc',
      'ac',
      'a',
    ]);
    for (let at = from; at < to; at++)
      if (!small.has(wordAt(this.#talk, at)) && !this.#inFret(at)) return false;
    const joins = new Set(['on', 'at', 'for', 'of', 'over', 'across', 'in', 'under']);
    return joins.has(wordAt(this.#talk, from)) || joins.has(wordAt(this.#talk, from + 1));
  }

  /** A comma or more; the end of a line alone is no pause. */
  #pauses(at: number): boolean {
    const stop = stopAt(this.#talk, at);
    return (
      stop >= STOP.clause ||
      (stop === STOP.soft && this.#talk.tokens[at]?.line === this.#talk.tokens[at + 1]?.line)
    );
  }

  #inFret(at: number): boolean {
    const mention = this.#mentions.lastFrom(at);
    return mention?.sort === 'fret' && at < mention.to;
  }

  /** The nearest mention before `at`, not before `notBefore`. */
  ahead(at: number, notBefore: number, sorts: Sorts): SubjectMention | null {
    return (
      this.#between(notBefore, at, sorts).findLast(
        (mention) => this.#msBefore(mention, at) <= SUBJECT_LASTS_MS,
      ) ?? null
    );
  }

  /** Whether a mention ends right before this token. */
  endsAt(to: number): boolean {
    return this.#ends.has(to);
  }

  /** The fret that is being talked about. */
  fret(at: number): SubjectMention | null {
    const mention = this.#mentions.lastUpTo(at, (one) => one.sort === 'fret');
    return mention && this.#msBefore(mention, at) <= FRET_LASTS_MS ? mention : null;
  }

  /** The pickup that is being talked about: it stays until another is named with its noun. */
  pickup(at: number): SubjectMention | null {
    const nearest = this.#pickups.lastUpTo(at);
    if (nearest && this.#msBefore(nearest, at) <= PICKUP_LASTS_MS) return nearest;
    return this.#nounPickups.lastUpTo(at) ?? null;
  }

  #msBefore(mention: SubjectMention, at: number): number {
    return timesOf(this.#talk, { from: at, to: at + 1 }).startMs - timesOf(this.#talk, mention).endMs;
  }
}
