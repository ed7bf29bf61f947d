import type { Database } from '@/db/open';
import { kindOf } from '@/lib/readings';
import { momentOf } from '@/shared/moments';
import {
  type Listed,
  type Look,
  list,
  listNewest,
  listReadings,
  listTogether,
  listValues,
  readingsByNumber,
  takesByNumber,
  thingsByNumber,
} from './hits-store';
import { stands } from './index-store';
import type { AskedReading } from './narrow-store';
import { jobOfThing, kindOfThing, msOfPassage, takeOfPassage } from './numbers';
import type { Question, QuestionTerm, QuestionValue } from './question';
import { metInJob, weighedSum } from './rank';
import type { Hit } from './rank/hits';
import { Pool, type RawHit } from './rank/pool';
import { closeness, valueBounds } from './rank/values';

/** Things and passages that are read for one word at most, and for all together. */
const mostForWord = 450;
const mostForAll = 1600;
const leastForWord = 200;
const mostValues = 400;
/** Of the newest, so many of one job. */
const mostNewest = 20;
/** Words that are too common to be read through are looked for beside this many others. */
const mostTogether = 4;

/** A word that stands nowhere, nor anything that goes with it, speaks against every answer. */
const unknownWeight = 2;

/** How well other words answer that mean the same as a phrase. */
const meantFit = 0.97;

/** How well words answer that go with the one that was asked for: signs, causes, cures. */
const relatedFit = 0.5;

/** How well a value answers that is only told in words, against a reading of it. */
const spokenFit = 0.9;

/** Jobs that may answer, each with its hits, and what each word and value of the question weighs. */
export interface Gathered {
  jobs: { job: number; hits: Hit[] }[];
  weights: number[];
}

/**
 * Asks the index for what may answer. Reading is bounded: of a word that stands in very many places the newest are
 * read, and those where it stands together with rarer ones.
 * @param jobs how many there are to be looked in
 * @param limit of jobs that are ranked
 */
export function gather(db: Database, question: Question, look: Look, jobs: number, limit: number): Gathered {
  const pool = new Pool();
  const { terms, values } = question;
  const most = Math.max(
    leastForWord,
    Math.min(mostForWord, Math.floor(mostForAll / Math.max(1, terms.length))),
  );
  const closely = terms.map((term) => list(db, closeWords(term), look, most));
  const found: Found[] = closely.map((listed, word) => ({
    ...{ words: [word], listed },
    fit: terms[word]?.exact.length ? meantFit : 1,
  }));
  terms.forEach(({ exact }, word) => {
    if (exact.length === 0) return;
    const each = exact.map((said) => [said]);
    found.push({ words: [word], listed: listTogether(db, each, look, most), fit: 1 });
  });
  terms.forEach((term, word) => {
    const related = relatedWords(term, terms);
    if (related.length > 0)
      found.push({ words: [word], listed: list(db, related, look, most), fit: relatedFit });
  });
  values.forEach(({ words }, index) => {
    const listed = list(db, [words.join(' ')], look, leastForWord);
    found.push({ words: [terms.length + index], listed, fit: spokenFit });
  });
  found.push(...together(db, terms, closely, look, most));
  addFound(db, pool, found);
  values.forEach((value, index) => {
    addValues(db, pool, value, terms.length + index, look);
  });
  const weights = [...terms, ...values].map((each, word) => {
    const listed = closely[word];
    const told = pool.rarityOf(word, jobs, listed === undefined || isAll(listed));
    if (!('weight' in each)) return told;
    const isKnown = pool.isMet(word) || each.any.some((one) => stands(db, one));
    return each.weight * told * (isKnown ? 1 : unknownWeight);
  });
  const worth = (hits: readonly RawHit[]) => weighedSum(metInJob(hits, weights.length), weights);
  return { jobs: placed(db, pool, pool.best(worth, limit)), weights };
}

/** The newest of what the tags say, for a question without words. */
export function gatherNewest(db: Database, look: Look, limit: number): Gathered {
  const pool = new Pool();
  for (const id of listNewest(db, look, mostForAll)) {
    const job = jobOfThing(id);
    if (pool.jobs.size === limit && !pool.jobs.has(job)) break;
    if ((pool.jobs.get(job)?.size ?? 0) < mostNewest) pool.add(0, job, kindOfThing(id), id);
  }
  return { jobs: placed(db, pool, [...pool.jobs.keys()]), weights: [1] };
}

/** The readings of these jobs that a filter asks for, of which some have to be shown. */
export function askedReadings(
  db: Database,
  reading: AskedReading,
  jobs: readonly number[],
): Map<number, Hit[]> {
  const pool = new Pool();
  for (const id of listReadings(db, reading, jobs)) pool.add(0, jobOfThing(id), 'reading', id);
  return new Map(placed(db, pool, [...pool.jobs.keys()]).map(({ job, hits }) => [job, hits]));
}

/** What was found for words of the question, by their places in it. */
interface Found {
  words: readonly number[];
  listed: Listed;
  fit: number;
}

function closeWords({ any, close }: Pick<QuestionTerm, 'any' | 'close'>): string[] {
  return any.slice(0, close);
}

/** A word that is asked for by itself is no sign of another: it would count twice. */
function relatedWords({ any, close }: QuestionTerm, terms: readonly QuestionTerm[]): string[] {
  const asked = new Set(terms.flatMap(closeWords));
  return any.slice(close).filter((word) => !asked.has(word));
}

function isAll({ allThings, allPassages }: Listed): boolean {
  return allThings && allPassages;
}

/** Where common words stand with another, which may be long ago; all that are common, and each with each rarer one. */
function together(
  db: Database,
  terms: readonly QuestionTerm[],
  listed: readonly Listed[],
  look: Look,
  most: number,
): Found[] {
  const common = terms.flatMap((_, word) => (isAll(listed[word] ?? nothingListed) ? [] : [word]));
  const rarer = terms.flatMap((_, word) => (common.includes(word) ? [] : [word]));
  const ask = (words: number[]): Found => {
    const each = words.map((word) => closeWords(terms[word] ?? { any: [], close: 0 }));
    return { words, listed: listTogether(db, each, look, most), fit: 1 };
  };
  const pairs = common.flatMap((word) => rarer.map((other) => [word, other])).slice(0, mostTogether);
  return [...(common.length > 1 ? [common.slice(0, mostTogether)] : []), ...pairs].map(ask);
}

const nothingListed: Listed = { things: [], passages: [], allThings: true, allPassages: true };

function addFound(db: Database, pool: Pool, found: readonly Found[]): void {
  const passages = found.flatMap(({ listed }) => listed.passages);
  const takes = takesByNumber(db, new Set(passages.map(takeOfPassage)));
  for (const { words, listed, fit } of found)
    for (const word of words) {
      for (const id of listed.things) pool.add(word, jobOfThing(id), kindOfThing(id), id, fit);
      for (const id of listed.passages) {
        const take = takes.get(takeOfPassage(id));
        if (take) pool.add(word, take.job, 'narration', id, fit);
      }
    }
}

function addValues(db: Database, pool: Pool, value: QuestionValue, word: number, look: Look): void {
  if (!look.things) return;
  const { kinds, ...bounds } = valueBounds(value);
  const found = kinds.flatMap((kind) => listValues(db, kind, bounds, mostValues));
  const readings = readingsByNumber(
    db,
    found.map(({ id }) => id),
  );
  for (const { id, value: read } of found) {
    const reading = readings.get(id);
    const job = jobOfThing(id);
    if (!reading || !(look.within.jobs?.has(job) ?? true)) continue;
    const of = `${reading.subject} ${kindOf(reading.kind).label}`;
    pool.add(word, job, 'reading', id, closeness(value, { value: read, of, isPart: reading.isPart === 1 }));
  }
}

/** The hits of these jobs with their places on the film. */
function placed(db: Database, pool: Pool, jobs: readonly number[]): Gathered['jobs'] {
  const raw = jobs.map((job) => ({ job, hits: pool.hitsOf(job) }));
  const all = raw.flatMap(({ hits }) => hits);
  const spoken = all.filter(({ kind }) => kind === 'narration');
  const takes = takesByNumber(db, new Set(spoken.map(({ id }) => takeOfPassage(id))));
  const written = all.filter(({ kind }) => kind !== 'narration');
  const things = thingsByNumber(
    db,
    written.map(({ id }) => id),
  );
  const placedSaid = ({ id, kind, met }: RawHit): Hit | undefined => {
    const take = takes.get(takeOfPassage(id));
    const place = take && { takeId: take.takeId, ms: msOfPassage(id) };
    return place && { id, kind, met, recordId: null, markerKind: null, basis: null, place };
  };
  const placedThing = ({ id, kind, met }: RawHit): Hit | undefined => {
    const thing = things.get(id);
    if (!thing) return undefined;
    const { recordId, markerKind, basis } = thing;
    return { id, kind, met, recordId, markerKind, basis, place: momentOf(thing) };
  };
  const place = (hit: RawHit) => (hit.kind === 'narration' ? placedSaid(hit) : placedThing(hit)) ?? [];
  return raw.map(({ job, hits }) => ({ job, hits: hits.flatMap(place) }));
}
