import { READING_TOPICS, type TopicEntry } from '../lexicon/reading-topics';
import { PhraseBook } from '../words/phrases';
import { SpanIndex } from '../words/span-index';
import { STOP } from '../words/token';
import { type Conductor, type ConductorPair, findConductors, findPairs } from './conductors';
import { Marks } from './marks';
import { findMeasured, type Measured } from './measured';
import { NoReading } from './no-reading';
import { findSubjects, SubjectFinder } from './subjects';
import { gapMs, stopAt, type Talk, wordAt } from './talk';

const TOPIC_BOOK = new PhraseBook<TopicEntry>(READING_TOPICS);

/** Everything named in the talk that the rules ask for, found once. */
export interface Scene {
  readonly talk: Talk;
  readonly measured: SpanIndex<Measured>;
  readonly topics: Marks<TopicEntry>;
  readonly noReading: NoReading;
  readonly conductors: readonly Conductor[];
  readonly pairs: SpanIndex<ConductorPair>;
  readonly subjects: SubjectFinder;
}

export function setScene(talk: Talk): Scene {
  const conductors = findConductors(talk);
  return {
    talk,
    measured: new SpanIndex(findMeasured(talk)),
    topics: new Marks(talk, TOPIC_BOOK),
    noReading: new NoReading(talk),
    conductors,
    pairs: new SpanIndex(findPairs(talk, conductors)),
    subjects: new SubjectFinder(talk, findSubjects(talk)),
  };
}

/** The last pair named before `at`, no longer than `withinMs` ago and not before `notBefore`. */
export function pairBefore(
  scene: Scene,
  at: number,
  notBefore: number,
  withinMs: number,
): ConductorPair | null {
  const pair = scene.pairs.lastUpTo(at);
  if (!pair || pair.from < notBefore) return null;
  return gapMs(scene.talk, pair.to - 1, at) <= withinMs ? pair : null;
}

/** "… across red and white": a pair right behind a value. */
export function pairBehind(scene: Scene, to: number, before: number): ConductorPair | null {
  const pair = scene.pairs.firstFrom(to);
  const led = LEADS_TO_PAIR.has(wordAt(scene.talk, to)) && stopAt(scene.talk, to - 1) < STOP.clause;
  return pair && led && pair.to <= before && pair.from - to <= 3 ? pair : null;
}

const LEADS_TO_PAIR = new Set(['between', 'across', 'from', 'for', 'on', 'with', 'there', 'over', 'of']);
