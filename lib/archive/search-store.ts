import { asc, count, eq, inArray, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { instruments, jobs } from '@/db/schema';
import { dayOf, folded } from '@/lib/work';
import type { ArchiveAnswer, ArchiveQuery } from '@/shared/archive';
import { type ClientId, clientIdSchema } from '@/shared/ids';
import { instrumentTypes } from '@/shared/instruments';
import { calendarOf } from './calendar-store';
import { answersOf, type Shown } from './found-store';
import { gather, gatherNewest } from './gather-store';
import type { Look } from './hits-store';
import { stands, takeInStale } from './index-store';
import { type Span, within } from './narrow-store';
import { type Question, readQuestion, withoutParts } from './question';
import { rankMoments, recency } from './rank';
import type { Hit } from './rank/hits';
import { answerThreshold, clearestMoments, countsOf, type RankedJob } from './rank/jobs';
import { stemsOf } from './snippet';
import { synonymsOf } from './synonyms-store';
import { basisTag, kindTag, typeTag } from './tags';
import { withWholeIndex } from './upkeep-store';
import { nearestWord } from './vocabulary-store';

/** Jobs that are ranked at most; so far can be leafed through. */
const mostRanked = 120;
/** What comes closest, where nothing answers. */
const mostNearest = 3;

/** Answers a question with the moments of all jobs that are not in the bin, the best first, each job once. */
export function searchArchive(db: Database, query: ArchiveQuery): ArchiveAnswer {
  return withWholeIndex(db, () => {
    const waiting = takeInStale(db);
    return { ...answer(db, query), waiting };
  });
}

function answer(db: Database, query: ArchiveQuery): Omit<ArchiveAnswer, 'waiting'> {
  const today = query.today ?? dayOf(Date.now());
  const own = synonymsOf(db);
  const asked = readQuestion(query.q, {
    ...calendarOf(db),
    today,
    instrumentTypes: typesOf(db),
    clients: clientsNamedIn(db, query.q),
    ownSynonyms: own,
    knows: (word) => stands(db, word),
    near: (word) => nearestWord(db, word),
  });
  const question = withBasisAsked(withoutParts(asked, query.without.split(',')));
  const ranked = rankJobs(db, question, query, today);
  const good = ranked.filter(({ share }) => share >= answerThreshold);
  const from = Number(query.after ?? 0) || 0;
  const marking = { stems: new Set(question.terms.flatMap(({ any }) => any.flatMap(stemsOf))), own };
  const page = good.slice(from, from + query.limit);
  const none = good.length === 0 && (query.q.trim() !== '' || isNarrowed(query));
  return {
    understood: question.parts,
    answers: answersOf(db, page, marking),
    none,
    nearest: none ? answersOf(db, ranked.slice(0, mostNearest), marking) : [],
    filters: countsOf(good),
    next: from + query.limit < good.length ? String(from + query.limit) : null,
  };
}

/** How a thing is known is asked for like a word: it stands in the index as one. */
function withBasisAsked(question: Question): Question {
  const { basis, terms } = question;
  if (basis === null || terms.length + question.values.length === 0) return question;
  const term = { id: 'basis', said: basis, any: [basisTag(basis)], close: 1, weight: 1.5, isSlip: false };
  return { ...question, terms: [...terms, term] };
}

function isNarrowed({ instrument, kind, client, basis, from, to }: ArchiveQuery): boolean {
  return [instrument, kind, client, basis, from, to].some((each) => each !== undefined);
}

function rankJobs(
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
  const briefs = briefsOf(
    db,
    found.map(({ job }) => job),
  );
  return found
    .flatMap(({ job, hits }) => {
      const brief = briefs.get(job);
      const moments = rankMoments(hits, weights, question);
      const [best] = moments;
      if (!brief || !best) return [];
      const weighed = fitOf(question, brief, hits);
      const share = weighed(best.share);
      const score = weighed(best.score) + recency(brief.day, today);
      const kinds = [...new Set(hits.flatMap(({ kind, markerKind }) => [kind, markerKind ?? []].flat()))];
      return [{ job, share, score, type: brief.type, kinds, moments: clearestMoments(moments) }];
    })
    .sort((a, b) => b.score - a.score || b.job - a.job);
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
    within: within(db, [isSureName(question) ? question.clients : [], client ? [client] : []], spans),
    tags: [
      instrument && typeTag(instrument),
      kind && !isSpoken && kindTag(kind),
      basis && basisTag(basis),
    ].flatMap((tag) => tag || []),
    things: !isSpoken,
    passages: (kind === undefined || isSpoken) && basis === undefined,
  };
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

/** Clients of whose names a word stands in the question: to read thousands of names word by word takes too long. */
function clientsNamedIn(db: Database, q: string): { id: ClientId; name: string }[] {
  const words = new Set(lettersOf(q));
  if (words.size === 0) return [];
  const ids = db.$client.prepare('SELECT id FROM clients ORDER BY id').pluck().all();
  const names = db.$client.prepare('SELECT name FROM clients ORDER BY id').pluck().all().map(String);
  return names.flatMap((name, at) =>
    lettersOf(name).some((word) => words.has(word)) ? [{ id: clientIdSchema.parse(ids[at]), name }] : [],
  );
}

function lettersOf(text: string): string[] {
  return folded(text).match(/[\p{L}\p{N}]{2,}/gu) ?? [];
}

function jobCount(db: Database): number {
  return db.select({ jobs: count() }).from(jobs).where(isNull(jobs.deletedAt)).get()?.jobs ?? 0;
}

function typesOf(db: Database): string[] {
  const own = db.selectDistinct({ type: instruments.type }).from(instruments).orderBy(asc(instruments.type));
  return [...new Set([...instrumentTypes, ...own.all().map(({ type }) => type)])];
}

interface Brief {
  type: string;
  clientId: ClientId | null;
  day: string;
}

function briefsOf(db: Database, numbers: readonly number[]): Map<number, Brief> {
  const rows = db
    .select({
      number: jobs.number,
      type: instruments.type,
      clientId: jobs.clientId,
      receivedOn: jobs.receivedOn,
      createdAt: jobs.createdAt,
    })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(inArray(jobs.number, [...numbers]))
    .all();
  return new Map(
    rows.map(({ number, type, clientId, receivedOn, createdAt }) => [
      number,
      { type, clientId, day: receivedOn ?? dayOf(createdAt) },
    ]),
  );
}
