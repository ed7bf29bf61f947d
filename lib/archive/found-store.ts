import { inArray } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { jobs } from '@/db/schema';
import { filmTimeOf } from '@/lib/film';
import { sayReading } from '@/lib/readings';
import type { Answer, FindableKind, Found, Synonym } from '@/shared/archive';
import {
  markerIdSchema,
  narrationLineIdSchema,
  type ReadingId,
  readingIdSchema,
  takeIdSchema,
} from '@/shared/ids';
import type { FilmMoment } from '@/shared/moments';
import { passageMs } from './numbers';
import type { Ranked } from './rank';
import type { Hit } from './rank/hits';
import { listed, readyOnce } from './ready-store';
import { snippet } from './snippet';
import { type Thing, type ToldJob, thingsOf } from './things';
import { toldJobs } from './told-store';
import { preparedStretches } from './words';

/** A job that answers: the hits to be shown of it, the best first. */
export interface Shown {
  job: number;
  moments: readonly Ranked[];
  /** How well the job answers. */
  score: number;
}

/** What makes a hit readable. */
interface Marking {
  /** Stems of prepared words that are marked where they stand. */
  stems: ReadonlySet<string>;
  own: readonly Synonym[];
}

const nearByMs = 60_000;
const mostNearBy = 4;
const mostJoints = 3;

/** Answers as a page shows them. Everything is looked up for all of them at once. */
export function answersOf(db: Database, shown: readonly Shown[], marking: Marking): Answer[] {
  const numbers = shown.map(({ job }) => job);
  const rows = statements(db).jobs.all({ numbers: JSON.stringify(numbers) });
  const hits = shown.flatMap(({ moments }) => moments.map(({ hit }) => hit));
  const idsOf = (kind: FindableKind) =>
    hits.flatMap((hit) => (hit.kind === kind ? (hit.recordId ?? []) : []));
  const told = toldJobs(
    db,
    rows.map(({ id }) => id),
    {
      markers: idsOf('marker').map((id) => markerIdSchema.parse(id)),
      readings: [...idsOf('reading').map((id) => readingIdSchema.parse(id)), ...readingsNear(db, shown)],
    },
  );
  const byNumber = new Map([...told.values()].map((each) => [each.job.number, each]));
  const lines = bestLines(linesAt(db, hits), shown, byNumber, marking);
  const sections = sectionsAt(db, [...lines.values()]);
  return shown.flatMap(({ job, moments, score }) => {
    const record = byNumber.get(job);
    if (!record) return [];
    const things = new Map(thingsOf(record).map((thing) => [`${thing.kind} ${thing.recordId}`, thing]));
    const around = { told: record, things, lines, sections };
    const [best, ...others] = moments.flatMap((moment) => foundOf(around, moment, marking) ?? []);
    return best ? [answerOf(record, { ...best, score }, others)] : [];
  });
}

/** What is found is read from: the record of its job, what is said, and the markers that it is said under. */
interface Around {
  told: ToldJob;
  things: ReadonlyMap<string, Thing>;
  /** The best line of each passage. */
  lines: ReadonlyMap<string, MarkedLine>;
  sections: ReadonlyMap<string, string>;
}

function answerOf(told: ToldJob, best: Found, others: Found[]): Answer {
  const { id, number, title, receivedOn } = told.job;
  const { moment } = best;
  const take = told.takes.find((each) => each.id === moment?.takeId);
  return {
    best,
    others,
    job: { id, number, title, instrument: told.instrument.type, day: take?.day ?? receivedOn },
    still: moment && take?.hasPicture ? `/api/takes/${moment.takeId}/still?ms=${moment.ms}` : null,
    readings: nearest(moment, told.readings, nearByMs).slice(0, mostNearBy).map(sayReading),
    joints: nearest(moment, told.outcomes, Number.POSITIVE_INFINITY)
      .slice(0, mostJoints)
      .map(({ outcome }) => `${outcome.subject}: ${outcome.title}`),
  };
}

/** Those within reach of a moment, by their distance from it; in another take it is as far as can be. */
function nearest<T extends { takeId: string | null; ms: number | null }>(
  moment: FilmMoment | null,
  all: readonly T[],
  reachMs: number,
): T[] {
  const away = ({ takeId, ms }: T) =>
    moment && takeId === moment.takeId && ms !== null ? Math.abs(ms - moment.ms) : Number.POSITIVE_INFINITY;
  return all
    .map((one) => ({ one, away: away(one) }))
    .filter((each) => each.away <= reachMs)
    .sort((a, b) => (a.away === b.away ? 0 : a.away - b.away))
    .map(({ one }) => one);
}

type Lines = ReadonlyMap<string, readonly Line[]>;

function foundOf(
  { told, things, lines, sections }: Around,
  { hit, score }: Ranked,
  marking: Marking,
): Found | null {
  const base = { kind: hit.kind, jobId: told.job.id, score };
  if (hit.kind === 'narration') {
    const line = hit.place && lines.get(keyOf(hit.place));
    if (!line) return null;
    const { takeId, ms, id, words } = line;
    const title = sections.get(id) ?? told.job.title;
    const moment = { takeId, ms };
    return { ...base, markerKind: null, recordId: id, moment, filmMs: filmMsOf(told, moment), title, words };
  }
  const thing = things.get(`${hit.kind} ${hit.recordId}`);
  if (!thing) return null;
  const { recordId, title, texts } = thing;
  const moment = hit.place && { ...hit.place, takeId: takeIdSchema.parse(hit.place.takeId) };
  const [first, ...rest] = texts;
  const text = first === title && rest.length > 0 ? rest.join('; ') : texts.join('; ');
  const markedHere = (each: string) => marked(each, told.instrument.type, marking);
  const pieces = markedHere(text);
  // The words that matched are shown, be it in the title.
  const words = pieces.some(({ matched }) => matched) ? pieces : markedHere(title);
  const { markerKind } = thing;
  return { ...base, markerKind, recordId, moment, filmMs: filmMsOf(told, moment), title, words };
}

function filmMsOf({ film }: ToldJob, moment: FilmMoment | null): number | null {
  return moment && (filmTimeOf(film, moment)?.filmMs ?? null);
}

type MarkedLine = Line & Pick<Found, 'words'>;

/** Of each passage that is shown the line in which most of the question's words stand. */
function bestLines(
  lines: Lines,
  shown: readonly Shown[],
  byNumber: ReadonlyMap<number, ToldJob>,
  marking: Marking,
): Map<string, MarkedLine> {
  const best = new Map<string, MarkedLine>();
  for (const { job, moments } of shown) {
    const type = byNumber.get(job)?.instrument.type ?? '';
    for (const { hit } of moments) {
      if (hit.kind !== 'narration' || !hit.place) continue;
      const key = keyOf(hit.place);
      const line = bestLine(lines.get(key) ?? [], (text) => marked(text, type, marking));
      if (line) best.set(key, line);
    }
  }
  return best;
}

function bestLine(
  lines: readonly Line[],
  markedHere: (text: string) => Found['words'],
): MarkedLine | undefined {
  let best: MarkedLine | undefined;
  let most = -1;
  for (const line of lines) {
    const words = markedHere(line.text);
    const matches = matchesIn(words);
    if (matches > most) [best, most] = [{ ...line, words }, matches];
  }
  return best;
}

function matchesIn(words: Found['words']): number {
  return new Set(words.flatMap(({ text, matched }) => (matched ? [text.toLowerCase()] : []))).size;
}

function marked(text: string, instrument: string, { stems, own }: Marking): Found['words'] {
  const line = text.replace(/\s+/g, ' ').trim();
  return snippet(line, preparedStretches(line, own, instrument), stems);
}

/** Ids of the readings near the best moment of each job. */
function readingsNear(db: Database, shown: readonly Shown[]): ReadingId[] {
  const places = shown.flatMap(({ moments }) => moments[0]?.hit.place ?? []);
  const rows = statements(db).readingsNear.all(JSON.stringify(places));
  return rows.map((id) => readingIdSchema.parse(id));
}

const sectionsSchema = z.array(z.object({ id: z.string(), title: z.string().nullable() }));

/** Titles of the markers under which lines lie, by the lines' ids. */
function sectionsAt(db: Database, lines: readonly Line[]): Map<string, string> {
  const rows = statements(db).sections.all(
    JSON.stringify(lines.map(({ id, takeId, ms }) => ({ id, takeId, ms }))),
  );
  return new Map(
    sectionsSchema.parse(rows).flatMap(({ id, title }) => (title === null ? [] : [[id, title]])),
  );
}

const linesSchema = z.array(
  z.object({ takeId: takeIdSchema, ms: z.int(), id: narrationLineIdSchema, text: z.string() }),
);
type Line = z.infer<typeof linesSchema>[number];

/** What is said in the shown passages, in its order. */
function linesAt(db: Database, hits: readonly Hit[]): Lines {
  const passages = new Map(
    hits.flatMap((hit) =>
      hit.kind === 'narration' && hit.place ? [[keyOf(hit.place), hit.place] as const] : [],
    ),
  );
  const rows = statements(db).lines.all(JSON.stringify([...passages.values()]));
  const lines = new Map<string, Line[]>();
  for (const line of linesSchema.parse(rows)) {
    const key = keyOf({ ...line, ms: line.ms - (line.ms % passageMs) });
    const passage = lines.get(key);
    if (passage) passage.push(line);
    else lines.set(key, [line]);
  }
  return lines;
}

function keyOf({ takeId, ms }: { takeId: string; ms: number }): string {
  return `${takeId} ${ms}`;
}

/** Asked for each question: made ready once for each database. */
const statements = readyOnce((db) => ({
  jobs: db
    .select({ id: jobs.id })
    .from(jobs)
    .where(inArray(jobs.number, listed('numbers')))
    .prepare(),
  readingsNear: db.$client
    .prepare(
      `SELECT readings.id FROM json_each(?) JOIN takes ON takes.id = json_extract(value, '$.takeId')
        JOIN readings ON readings.job_id = takes.job_id AND take_id = takes.id
        AND ms BETWEEN json_extract(value, '$.ms') - ${nearByMs} AND json_extract(value, '$.ms') + ${nearByMs}`,
    )
    .pluck(),
  sections: db.$client.prepare(
    `SELECT json_extract(value, '$.id') AS id, (SELECT title FROM markers
      WHERE take_id = json_extract(value, '$.takeId') AND ms <= json_extract(value, '$.ms')
      ORDER BY ms DESC LIMIT 1) AS title FROM json_each(?)`,
  ),
  lines: db.$client.prepare(
    `SELECT take_id AS takeId, start_ms AS ms, narration_lines.id AS id, text
      FROM json_each(?) JOIN narration_lines ON take_id = json_extract(value, '$.takeId')
      AND start_ms BETWEEN json_extract(value, '$.ms') AND json_extract(value, '$.ms') + ${passageMs - 1}
      ORDER BY start_ms, narration_lines.id`,
  ),
}));
