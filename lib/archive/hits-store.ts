import { sql } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { type FindableKind, findableKinds } from '@/shared/archive';
import { takeIdSchema } from '@/shared/ids';
import { markerKindSchema } from '@/shared/markers';
import { basisSchema, type ReadingKindId, readingKindIdSchema } from '@/shared/readings';
import { matchAny } from './match';
import { type AskedReading, isReading, type Range, type Within } from './narrow-store';
import { betweenWhole, jobOfThing, kindOfThingSql, takeOfPassage, thingsOfKind } from './numbers';
import { readyOnce } from './ready-store';

/** Numbers of things and passages that meet one word of the question, the newest first. */
export interface Listed {
  things: number[];
  passages: number[];
  /** Whether these are all that there are. */
  allThings: boolean;
  allPassages: boolean;
}

/** What is looked for, and where. */
export interface Look {
  within: Within;
  tags: readonly string[];
  /** Whether the record is looked in, and what was said. */
  things: boolean;
  passages: boolean;
}

/** Where one wide range stands for many, more has to be read to find as much. */
const passedOver = 4;

/** Things and passages that hold one of these words, at most `limit` of each. */
export function list(db: Database, words: readonly string[], look: Look, limit: number): Listed {
  return listMatch(db, matchAny(words, look.tags), look, limit);
}

/** Things and passages that hold a word of each of these. */
export function listTogether(
  db: Database,
  each: readonly (readonly string[])[],
  look: Look,
  limit: number,
): Listed {
  const matches = each.map((words) => matchAny(words));
  const match = matches.includes(null) ? null : matches.map((one) => `(${one})`).join(' AND ');
  const tags = look.tags.map((tag) => ` AND "${tag}"`).join('');
  return listMatch(db, match && match + tags, look, limit);
}

function listMatch(db: Database, match: string | null, look: Look, limit: number): Listed {
  const { inWords, inSaid } = statements(db);
  const { isExact, things, passages } = look.within;
  const [jobs, takes] = isExact ? [null, null] : [look.within.jobs, look.within.takes];
  const inThings =
    match !== null && look.things
      ? read(inWords, match, things, limit, jobs && ((id) => jobs.has(jobOfThing(id))))
      : nothing;
  const inPassages =
    match !== null && look.passages
      ? read(inSaid, match, passages, limit, takes && ((id) => takes.has(takeOfPassage(id))))
      : nothing;
  return {
    things: inThings.found,
    passages: inPassages.found,
    allThings: inThings.all,
    allPassages: inPassages.all,
  };
}

const nothing = { found: [], all: true };

/** @param isWithin passes over what lies between; null where nothing does */
function read(
  ask: Statements['inWords'],
  match: string,
  ranges: readonly Range[],
  limit: number,
  isWithin: ((id: number) => boolean) | null,
): { found: number[]; all: boolean } {
  const most = isWithin ? limit * passedOver : limit;
  const found: number[] = [];
  let all = true;
  for (const [from, to] of [...ranges].reverse()) {
    const rows = ask.all(match, from, to, most).map(Number);
    all &&= rows.length < most;
    found.push(...(isWithin ? rows.filter(isWithin) : rows));
    if (found.length >= limit) return { found: found.slice(0, limit), all: false };
  }
  return { found, all };
}

/** The newest things that bear all the tags of what is looked for, the tags of one kind at least. */
export function listNewest(db: Database, look: Look, limit: number): number[] {
  const match = look.tags.map((tag) => `"${tag}"`).join(' AND ');
  return match === '' ? [] : listMatch(db, match, { ...look, passages: false }, limit).things;
}

const valuesSchema = z.array(z.object({ id: z.int(), value: z.number() }));
type Value = z.infer<typeof valuesSchema>[number];

/** Readings of a kind between two bounds, in its base unit: those next to `near`, or the newest. */
export function listValues(
  db: Database,
  kind: ReadingKindId,
  { low, high, near }: { low: number; high: number; near: number | null },
  limit: number,
): Value[] {
  const { values, valuesUp, valuesDown } = statements(db);
  if (near === null) return valuesSchema.parse(values.all(kind, low, high, limit));
  const up = valuesUp.all(kind, near, high, limit / 2);
  return valuesSchema.parse([...up, ...valuesDown.all(kind, low, near, limit / 2)]);
}

const idsSchema = z.array(z.int());

/** Numbers of the readings in these jobs that are of a kind and range. */
export function listReadings(db: Database, asked: AskedReading, jobNumbers: readonly number[]): number[] {
  const ranges = jobNumbers.map((job) => thingsOfKind(job, 'reading'));
  const rows = db.values(
    sql`select archive_things.id from json_each(${JSON.stringify(ranges)}) cross join archive_things not indexed
      on archive_things.id between value ->> 0 and value ->> 1 where ${isReading(asked)}`,
  );
  return idsSchema.parse(rows.flat());
}

const readingsSchema = z.array(
  z.object({ id: z.int(), kind: readingKindIdSchema, subject: z.string(), isPart: z.int() }),
);

/** What readings are of, by their numbers. */
export function readingsByNumber(db: Database, numbers: readonly number[]) {
  const rows = readingsSchema.parse(statements(db).readings.all(JSON.stringify(numbers)));
  return new Map(rows.map((row) => [row.id, row]));
}

const takesSchema = z.array(z.object({ id: z.int(), takeId: takeIdSchema, job: z.int() }));

/** Takes by their numbers in the index. */
export function takesByNumber(db: Database, numbers: Iterable<number>) {
  const rows = takesSchema.parse(statements(db).takes.all(JSON.stringify([...numbers])));
  return new Map(rows.map((row) => [row.id, row]));
}

const thingsSchema = z.array(
  z.object({
    id: z.int(),
    recordId: z.string(),
    takeId: takeIdSchema.nullable(),
    ms: z.int().nullable(),
    markerKind: markerKindSchema.nullable(),
    basis: basisSchema.nullable(),
  }),
);

/** Where things lie, of which kind of marker they are and how they are known. */
export function thingsByNumber(db: Database, numbers: Iterable<number>) {
  const rows = thingsSchema.parse(statements(db).things.all(JSON.stringify([...numbers])));
  return new Map(rows.map((row) => [row.id, row]));
}

/** How a thing is known stands with its record. */
const basisByKind: Partial<Record<FindableKind, string>> = {
  reading: 'SELECT basis FROM readings WHERE readings.id = record_id',
  trace: `SELECT CASE WHEN json_array_length(assumed) > 0 THEN 'assumed' END FROM traces WHERE traces.id = record_id`,
  joint: `SELECT outcome ->> '$.basis' FROM outcomes WHERE outcomes.id = record_id`,
  part: `SELECT doubt_basis FROM parts WHERE parts.id = record_id AND doubt <> ''`,
  claim: 'SELECT basis FROM claims WHERE claims.id = record_id',
};
const basisSql = `CASE ${kindOfThingSql('archive_things.id')} ${findableKinds
  .flatMap((kind, at) => (basisByKind[kind] ? [`WHEN ${at} THEN (${basisByKind[kind]})`] : []))
  .join(' ')} END`;

/** Asked many times for each question: made ready once for each database. */
const statements = readyOnce(prepare);
type Statements = ReturnType<typeof prepare>;

function prepare({ $client }: Database) {
  const matching = (table: string) =>
    $client
      .prepare(
        `SELECT rowid FROM ${table} WHERE ${table} MATCH ? AND rowid ${betweenWhole} ORDER BY rowid DESC LIMIT ?`,
      )
      .pluck();
  const valued = (order: string) =>
    $client.prepare(
      `SELECT id, base_value AS value FROM archive_things
        WHERE reading_kind = ? AND base_value BETWEEN ? AND ? ORDER BY ${order} LIMIT ?`,
    );
  return {
    inWords: matching('archive_words'),
    inSaid: matching('archive_said'),
    values: valued('id DESC'),
    valuesUp: valued('base_value'),
    valuesDown: valued('base_value DESC'),
    readings: $client.prepare(
      `SELECT archive_things.id AS id, kind, subject, "between" IS NOT NULL AS isPart
        FROM archive_things JOIN readings ON readings.id = record_id
        WHERE archive_things.id IN (SELECT value FROM json_each(?))`,
    ),
    takes: $client.prepare(
      `SELECT id, take_id AS takeId, job FROM archive_takes WHERE id IN (SELECT value FROM json_each(?))`,
    ),
    things: $client.prepare(
      `SELECT id, record_id AS recordId, take_id AS takeId, ms, marker_kind AS markerKind, ${basisSql} AS basis
        FROM archive_things WHERE id IN (SELECT value FROM json_each(?))`,
    ),
  };
}
