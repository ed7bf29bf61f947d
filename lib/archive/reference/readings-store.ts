import { and, count, desc, eq, inArray, isNotNull, isNull, ne, or, type SQL, sql } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { instruments, jobs, readings } from '@/db/schema';
import { kindOf, sayReading } from '@/lib/readings';
import { momentOf } from '@/shared/moments';
import type { Reading, ReadingKindId } from '@/shared/readings';
import type { ReadingGroup, ReadingsAnswer, ReadingsQuery } from '@/shared/reference';
import { whileUnchanged } from '../ready-store';
import { asReferenceJob, jobColumns } from './jobs-store';
import { type Placed, placeOf, sayGroup } from './place';
import { spreadOf, standingOf } from './spread';
import { readTyped, type Typed } from './typed';

/** Readings of the chosen place that are named. */
const mostNamed = 60;
/** Readings written much like them that are looked through for these. */
const mostLookedAt = 400;
/** Ways in which one place may be written in the record. */
const mostWays = 200;

/** Readings that are written alike: one row of the database for all of them. */
interface Alike extends Placed {
  type: string;
  basis: Reading['basis'];
  open: boolean;
  place: string;
  count: number;
  /** None where they are open. */
  values: number[];
}

/** How the values of one kind spread by instrument type and place; a typed reading among them. */
export function readingsAnswer(db: Database, query: ReadingsQuery): ReadingsAnswer {
  const kinds = kindsOf(db);
  const typed = query.reading === '' ? null : readTyped(query.reading, query.instrument);
  const kind = typed?.kind ?? (query.kind || (kinds[0]?.kind ?? null));
  const alike = kind === null ? [] : alikeOf(db, kind);
  const wanted = alike.filter(({ type }) => query.instrument === '' || type === query.instrument);
  const groups = groupsOf(wanted);
  const place = typed?.place ?? query.place;
  return {
    kinds,
    instruments: instrumentsOf(alike),
    kind,
    groups: groups.slice(0, query.limit),
    left: Math.max(0, groups.length - query.limit),
    standing: typed && standingIn(typed, wanted, query.instrument),
    unclear: typed?.unclear ?? null,
    chosen: place === '' || kind === null ? null : chosenOf(db, wanted, place),
  };
}

function standingIn(
  { said, place, value }: Typed,
  alike: readonly Alike[],
  instrument: string,
): ReadingsAnswer['standing'] {
  if (value === undefined || place === undefined) return null;
  const earlier = sorted(alike.filter((each) => each.place === place && isValue(each)));
  const is = standingOf(value, earlier, (n) => sayGroup(place, instrument, n));
  return { said, instrument, place, is };
}

/** Kinds with their numbers of readings, the commonest first; a kick of the needle has no size to spread. */
function kindsOf(db: Database): ReadingsAnswer['kinds'] {
  const inBin = countsByKind(db, inArray(readings.jobId, binned(db)));
  return [...countsByKind(db, ne(readings.kind, 'polarity-kick'))]
    .map(([kind, count]) => ({ kind, label: kindOf(kind).label, count: count - (inBin.get(kind) ?? 0) }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count);
}

/** All kinds are counted off an index alone; what lies in the bin is little, and taken off again. */
function countsByKind(db: Database, where: SQL): Map<ReadingKindId, number> {
  const rows = db
    .select({ kind: readings.kind, count: count() })
    .from(readings)
    .where(where)
    .groupBy(readings.kind)
    .all();
  return new Map(rows.map(({ kind, count }) => [kind, count]));
}

const binned = (db: Database) => db.select({ id: jobs.id }).from(jobs).where(isNotNull(jobs.deletedAt));

/**
 * SQLite puts together what is written alike: tens of thousands of readings come as some hundred rows. The plus keeps it
 * from going over an index, which takes twice as long where one kind is most of them.
 */
const alikeOf = whileUnchanged((db: Database, kind: ReadingKindId): Alike[] => {
  const { subject, between, details, open, basis, baseValue } = readings;
  return db
    .select({
      ...{ type: instruments.type, subject, between, details, open, basis },
      count: count(),
      values: sql<string | null>`group_concat(${baseValue})`,
    })
    .from(readings)
    .innerJoin(jobs, eq(jobs.id, readings.jobId))
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(and(sql`+${readings.kind} = ${kind}`, isNull(jobs.deletedAt)))
    .groupBy(instruments.type, subject, between, details, open, basis)
    .all()
    .map((row) => ({
      ...row,
      kind,
      place: placeOf({ ...row, kind }),
      values: row.values?.split(',').map(Number) ?? [],
    }));
});

function instrumentsOf(alike: readonly Alike[]): ReadingsAnswer['instruments'] {
  const counts = new Map<string, number>();
  for (const { type, count } of alike) counts.set(type, (counts.get(type) ?? 0) + count);
  return [...counts].map(([value, count]) => ({ value, count })).sort((a, b) => b.count - a.count);
}

function groupsOf(alike: readonly Alike[]): ReadingGroup[] {
  const groups = new Map<string, Alike[]>();
  for (const each of alike) {
    const key = JSON.stringify([each.type, each.place]);
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()]
    .flatMap((group) => {
      const [first] = group;
      return first ? [{ instrument: first.type, place: first.place, ...spread(group) }] : [];
    })
    .sort((a, b) => b.n - a.n || a.place.localeCompare(b.place) || a.instrument.localeCompare(b.instrument));
}

function spread(alike: readonly Alike[]) {
  return spreadOf(sorted(alike.filter(isValue)), {
    open: together(alike.filter(({ basis, open }) => open && basis === 'measured')),
    notMeasured: together(alike.filter(({ basis }) => basis !== 'measured')),
  });
}

const together = (alike: readonly Alike[]) => alike.reduce((sum, { count }) => sum + count, 0);

/** Only what was measured, and showed a value. */
const isValue = ({ basis, open }: Alike) => basis === 'measured' && !open;

function sorted(alike: readonly Alike[]): number[] {
  // Typed arrays are sorted by number, several times faster than plain ones.
  return Array.from(Float64Array.from(alike.flatMap(({ values }) => values)).sort());
}

function chosenOf(db: Database, alike: readonly Alike[], place: string): ReadingsAnswer['chosen'] {
  const here = alike.filter((each) => each.place === place && each.basis === 'measured');
  const [first] = here;
  if (!first) return { place, count: 0, readings: [] };
  const rows = db
    .select({ reading: readings, job: jobColumns, type: instruments.type })
    .from(readings)
    .innerJoin(jobs, eq(jobs.id, readings.jobId))
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(and(sql`+${readings.kind} = ${first.kind}`, isNull(jobs.deletedAt), ...writtenLike(here)))
    .orderBy(desc(readings.createdAt), desc(readings.id))
    .limit(mostLookedAt)
    .all()
    .filter(({ reading }) => placeOf(reading) === place);
  return {
    place,
    count: together(here),
    readings: rows.slice(0, mostNamed).map(({ reading, job, type }) => ({
      id: reading.id,
      job: asReferenceJob(job, type),
      said: sayReading(reading),
      value: reading.baseValue,
      moment: momentOf(reading),
    })),
  };
}

/** Holds for readings written like these, and for few others. */
function writtenLike(alike: readonly Alike[]): (SQL | undefined)[] {
  const ways = alike.slice(0, mostWays);
  const ends = ways.flatMap(({ between }) => (between ? [between] : []));
  return [
    eq(readings.basis, 'measured'),
    inArray(instruments.type, [...new Set(ways.map(({ type }) => type))]),
    inArray(readings.subject, [...new Set(ways.map(({ subject }) => subject))]),
    inArray(
      readings.details,
      ways.map(({ details }) => details),
    ),
    ends.length === 0
      ? isNull(readings.between)
      : or(isNull(readings.between), inArray(readings.between, ends)),
  ];
}
