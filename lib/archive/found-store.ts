import { inArray } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { jobs } from '@/db/schema';
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
  const rows = db.select({ id: jobs.id }).from(jobs).where(inArray(jobs.number, numbers)).all();
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
  const lines = linesAt(db, hits);
  const sections = sectionsAt(db, [...lines.values()].flat());
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
  lines: Lines;
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
    const line = bestLine(hit.place ? (lines.get(keyOf(hit.place)) ?? []) : [], marking);
    if (!line) return null;
    const { takeId, ms, id, words } = line;
    const title = sections.get(id) ?? told.job.title;
    return { ...base, recordId: id, moment: { takeId, ms }, title, words };
  }
  const thing = things.get(`${hit.kind} ${hit.recordId}`);
  if (!thing) return null;
  const { recordId, title, texts } = thing;
  const moment = hit.place && { ...hit.place, takeId: takeIdSchema.parse(hit.place.takeId) };
  const [first, ...rest] = texts;
  const text = first === title && rest.length > 0 ? rest.join('; ') : texts.join('; ');
  const pieces = marked(text, marking);
  // The words that matched are shown, be it in the title.
  const words = pieces.some(({ matched }) => matched) ? pieces : marked(title, marking);
  return { ...base, recordId, moment, title, words };
}

/** The line of a passage in which most of the question's words stand. */
function bestLine(lines: readonly Line[], marking: Marking): (Line & Pick<Found, 'words'>) | undefined {
  return lines
    .map((line) => ({ ...line, words: marked(line.text, marking) }))
    .reduce<(Line & Pick<Found, 'words'>) | undefined>(
      (best, line) => (best && matchesIn(best.words) >= matchesIn(line.words) ? best : line),
      undefined,
    );
}

function matchesIn(words: Found['words']): number {
  return new Set(words.flatMap(({ text, matched }) => (matched ? [text.toLowerCase()] : []))).size;
}

function marked(text: string, { stems, own }: Marking): Found['words'] {
  const line = text.replace(/\s+/g, ' ').trim();
  return snippet(line, preparedStretches(line, own), stems);
}

/** Ids of the readings near the best moment of each job. */
function readingsNear(db: Database, shown: readonly Shown[]): ReadingId[] {
  const places = shown.flatMap(({ moments }) => moments[0]?.hit.place ?? []);
  const rows = db.$client
    .prepare(
      `SELECT readings.id FROM json_each(?) JOIN takes ON takes.id = json_extract(value, '$.takeId')
        JOIN readings ON readings.job_id = takes.job_id AND take_id = takes.id
        AND ms BETWEEN json_extract(value, '$.ms') - ${nearByMs} AND json_extract(value, '$.ms') + ${nearByMs}`,
    )
    .pluck()
    .all(JSON.stringify(places));
  return rows.map((id) => readingIdSchema.parse(id));
}

const sectionsSchema = z.array(z.object({ id: z.string(), title: z.string().nullable() }));

/** Titles of the markers under which lines lie, by the lines' ids. */
function sectionsAt(db: Database, lines: readonly Line[]): Map<string, string> {
  const rows = db.$client
    .prepare(
      `SELECT json_extract(value, '$.id') AS id, (SELECT title FROM markers
        WHERE take_id = json_extract(value, '$.takeId') AND ms <= json_extract(value, '$.ms')
        ORDER BY ms DESC LIMIT 1) AS title FROM json_each(?)`,
    )
    .all(JSON.stringify(lines.map(({ id, takeId, ms }) => ({ id, takeId, ms }))));
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
  const rows = db.$client
    .prepare(
      `SELECT take_id AS takeId, start_ms AS ms, narration_lines.id AS id, text
        FROM json_each(?) JOIN narration_lines ON take_id = json_extract(value, '$.takeId')
        AND start_ms BETWEEN json_extract(value, '$.ms') AND json_extract(value, '$.ms') + ${passageMs - 1}
        ORDER BY start_ms, narration_lines.id`,
    )
    .all(JSON.stringify([...passages.values()]));
  const lines = new Map<string, Line[]>();
  for (const line of linesSchema.parse(rows)) {
    const key = keyOf({ ...line, ms: line.ms - (line.ms % passageMs) });
    lines.set(key, [...(lines.get(key) ?? []), line]);
  }
  return lines;
}

function keyOf({ takeId, ms }: { takeId: string; ms: number }): string {
  return `${takeId} ${ms}`;
}
