import { count, eq, inArray, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { instruments, jobs } from '@/db/schema';
import { dayOfJob } from '@/lib/work';
import type { ArchiveQuery } from '@/shared/archive';
import type { ClientId } from '@/shared/ids';
import type { Shown } from './found-store';
import { askedReadings, gather, gatherNewest } from './gather-store';
import type { Look } from './hits-store';
import { type AskedReading, type Span, within } from './narrow-store';
import type { Question } from './question';
import { bestShare, leastShare, rankMoments, recency } from './rank';
import type { Hit } from './rank/hits';
import { answering, answerThreshold, clearestMoments, type RankedJob, withOneOf } from './rank/jobs';
import { listed, readyOnce } from './ready-store';
import { basisTag, kindTag, typeTag } from './tags';

/** Jobs that are ranked at most; so far can be leafed through. */
const mostRanked = 120;

/** Whether filters narrow what is looked in, whatever the words. */
export function isNarrowed({ instrument, kind, client, basis, from, to, reading }: ArchiveQuery): boolean {
  return [instrument, kind, client, basis, from, to, reading].some((each) => each !== undefined);
}

/**
 * Jobs that may answer, the best first, with the moments of each that are worth showing.
 * @param today newer jobs come first of two that answer as well
 */
export function rankJobs(
  db: Database,
  question: Question,
  query: ArchiveQuery,
  today: string,
): (RankedJob & Shown)[] {
  const look = lookOf(db, question, query);
  const asksWords = question.terms.length + question.values.length > 0;
  if (!asksWords && !asksAnything(question) && !isNarrowed(query)) return [];
  const { jobs: found, weights } = asksWords
    ? gather(db, question, look, jobCount(db), mostRanked)
    : gatherNewest(db, newestLook(look, question, query), mostRanked);
  const numbers = found.map(({ job }) => job);
  const briefs = briefsOf(db, numbers);
  const reading = readingOf(query);
  const asked = reading ? askedReadings(db, reading, numbers) : new Map<number, Hit[]>();
  return found
    .flatMap(({ job, hits }) => {
      const brief = briefs.get(job);
      const readings = asked.get(job) ?? [];
      const ranked = brief && rankJob({ job, brief, hits, readings }, { question, weights, query });
      return ranked ? [{ ...ranked, score: ranked.score + recency(ranked.day, today) }] : [];
    })
    .sort((a, b) => b.score - a.score || b.job - a.job);
}

interface Gained {
  job: number;
  brief: Brief;
  hits: readonly Hit[];
  /** Those that a filter asks for. */
  readings: readonly Hit[];
}

interface Asked {
  question: Question;
  weights: readonly number[];
  query: ArchiveQuery;
}

function rankJob({ job, brief, hits, readings }: Gained, { question, weights, query }: Asked) {
  const wanted = withReadings(hits, readings, question, query);
  const moments = rankMoments(wanted.hits, weights, question);
  const [best] = moments;
  if (!best) return null;
  const weighed = fitOf(question, brief, wanted.hits);
  const isAnswer = (share: number) => weighed(share) >= answerThreshold;
  // Mostly the quick look is enough: a moment meets what its job meets, and more.
  const answers = (some: readonly Hit[]) =>
    isAnswer(leastShare(some, weights)) || isAnswer(bestShare(some, weights, question));
  return {
    ...{ job, ...brief },
    share: weighed(best.share),
    score: weighed(best.score),
    kinds: answering(wanted.hits, ({ kind, markerKind }) => [kind, markerKind ?? []].flat(), answers),
    bases: answering(wanted.hits, ({ basis }) => (basis ? [basis] : []), answers),
    moments: withOneOf(clearestMoments(moments), moments, wanted.readings),
  };
}

/** Readings that a filter asks for, beside what the words met; where no words are asked they are what is found. */
function withReadings(
  hits: readonly Hit[],
  readings: readonly Hit[],
  { terms, values }: Question,
  { basis, kind }: ArchiveQuery,
): { hits: readonly Hit[]; readings: ReadonlySet<Hit> } {
  const fit = readings.filter((reading) => basis === undefined || reading.basis === basis);
  if (fit.length === 0) return { hits, readings: new Set() };
  const asksWords = terms.length + values.length > 0;
  if (!asksWords && kind === undefined) return { hits: fit, readings: new Set(fit) };
  const met = new Set(hits.map(({ id }) => id));
  const more = fit.filter(({ id }) => !met.has(id)).map((reading) => ({ ...reading, met: new Map() }));
  const all = [...hits, ...more];
  const ids = new Set(fit.map(({ id }) => id));
  return {
    hits: all,
    readings: new Set(all.filter(({ id, kind: its }) => its === 'reading' && ids.has(id))),
  };
}

/** What a job is still worth on another instrument, of another client, without the value that was asked for. */
const otherInstrument = 0.4;
const otherClient = 0.5;
const withoutValue = 0.5;
/** A value is met from here on. */
const isMet = 0.4;
/** What part of the question the name of an instrument or a client is. */
const namedPart = 0.25;

/** Holds what a job meets in words against what else was asked of it. */
function fitOf(
  { instruments: named, clients, terms, values }: Question,
  { type, clientId }: Brief,
  hits: readonly Hit[],
): (share: number) => number {
  const isOne = named.some((each) => each.toLowerCase() === type.toLowerCase());
  const isTheirs = clientId !== null && clients.includes(clientId);
  const isValued = values.every((_, index) =>
    hits.some(({ met }) => (met.get(terms.length + index) ?? 0) >= isMet),
  );
  const asNamed = (share: number, isAsked: boolean, isIt: boolean, other: number) => {
    if (!isAsked) return share;
    return isIt ? namedPart + (1 - namedPart) * share : share * other;
  };
  return (share) =>
    (isValued ? 1 : withoutValue) *
    asNamed(
      asNamed(share, named.length > 0, isOne, otherInstrument),
      clients.length > 0,
      isTheirs,
      otherClient,
    );
}

function asksAnything({
  span,
  instruments: named,
  markerKinds,
  kinds,
  basis,
  clients: people,
}: Question): boolean {
  return (
    span !== null || basis !== null || [named, markerKinds, kinds, people].some(({ length }) => length > 0)
  );
}

function lookOf(db: Database, question: Question, query: ArchiveQuery): Look {
  const { instrument, kind, basis, client, from, to } = query;
  const spans: Span[] = [question.span, from || to ? { from: from ?? null, to: to ?? null } : null].flatMap(
    (span) => span ?? [],
  );
  const isSpoken = kind === 'narration';
  return {
    within: within(db, {
      clients: [isSureName(question) ? question.clients : [], client ? [client] : []],
      spans,
      reading: readingOf(query),
    }),
    tags: [
      instrument && typeTag(instrument),
      kind && !isSpoken && kindTag(kind),
      basis && basisTag(basis),
    ].flatMap((tag) => tag || []),
    things: !isSpoken,
    passages: (kind === undefined || isSpoken) && basis === undefined,
  };
}

function readingOf({ reading, low, high }: ArchiveQuery): AskedReading | null {
  return reading ? { kind: reading, low: low ?? null, high: high ?? null } : null;
}

/** One word of a name may be meant as a word: then the client's jobs only come first. */
function isSureName({ parts, terms }: Question): boolean {
  const names = parts.filter(({ kind }) => kind === 'client');
  return terms.length === 0 || names.every(({ said }) => /\s/.test(said.trim()));
}

/** Without words the newest of what was asked for are shown; a job by its ticket where nothing says by what. */
function newestLook(
  look: Look,
  { instruments: named, kinds, markerKinds, basis }: Question,
  query: ArchiveQuery,
): Look {
  const [type] = named;
  const [kind] = [query.kind, ...markerKinds, ...kinds.filter((each) => each !== 'narration')].flatMap(
    (each) => each ?? [],
  );
  const tags = [
    ...look.tags,
    type && typeTag(type),
    basis && basisTag(basis),
    kind ? kindTag(kind) : query.basis || basis ? undefined : kindTag('ticket'),
  ];
  return { ...look, tags: tags.flatMap((tag) => tag || []) };
}

function jobCount(db: Database): number {
  return statements(db).jobCount.get()?.jobs ?? 0;
}

interface Brief {
  type: string;
  clientId: ClientId | null;
  day: string;
}

function briefsOf(db: Database, numbers: readonly number[]): Map<number, Brief> {
  const rows = statements(db).briefs.all({ numbers: JSON.stringify(numbers) });
  return new Map(
    rows.map(({ number, type, clientId, ...job }) => [number, { type, clientId, day: dayOfJob(job) }]),
  );
}

/** Asked for each question: made ready once for each database. */
const statements = readyOnce((db) => ({
  jobCount: db.select({ jobs: count() }).from(jobs).where(isNull(jobs.deletedAt)).prepare(),
  briefs: db
    .select({
      number: jobs.number,
      type: instruments.type,
      clientId: jobs.clientId,
      receivedOn: jobs.receivedOn,
      createdAt: jobs.createdAt,
    })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(inArray(jobs.number, listed('numbers')))
    .prepare(),
}));
