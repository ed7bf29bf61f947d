import { eq } from 'drizzle-orm';
import { type Edit, edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { instruments, jobs, meters, readings, traces } from '@/db/schema';
import { momentInJob } from '@/lib/film/store';
import {
  type ChangeId,
  type JobId,
  type MeterId,
  meterIdSchema,
  type ReadingId,
  readingIdSchema,
} from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Meter, NewMeter, NewReading, QuickReading, Reading, ReadingPatch } from '@/shared/readings';
import { kindOf } from './kinds';
import { parseQuickEntry, type QuickContext } from './quick/parse';
import { asSayable } from './say';
import { expandedUncertainty } from './uncertainty';
import { toBase, unitOf } from './units';

type ReadingRow = typeof readings.$inferSelect;

export class UnclearReadingError extends DomainError {
  constructor(detail: string, extra: Record<string, unknown>) {
    super('invalid', 'That line leaves something open.', detail, extra);
  }
}

/** The readings of a job, in the order they were noted. */
export function readingsOf(db: Database, jobId: JobId): Reading[] {
  return db
    .select()
    .from(readings)
    .where(eq(readings.jobId, jobId))
    .orderBy(readings.createdAt, readings.id)
    .all()
    .map(asReading);
}

export function addReading(
  db: Database,
  jobId: JobId,
  wanted: NewReading,
): { change: ChangeId; reading: Reading } {
  const { change, value } = edit(db, jobId, 'reading noted', (e) => insertReading(db, e, jobId, wanted));
  return { change, reading: value };
}

/** Notes a reading as part of a larger change. */
export function insertReading(db: Database, e: Edit, jobId: JobId, wanted: NewReading): Reading {
  const row = { id: newId(readingIdSchema), jobId, createdAt: Date.now(), ...checked(db, jobId, wanted) };
  e.insert('readings', row);
  return asReading(row);
}

/** One typed line. @throws UnclearReadingError with the question, where the line leaves something open */
export function addQuickReading(
  db: Database,
  jobId: JobId,
  { text, ...rest }: QuickReading,
): { change: ChangeId; reading: Reading } {
  const entry = parseQuickEntry(text, quickContext(db, jobId));
  if (entry.state === 'understood') return addReading(db, jobId, { ...entry.reading, ...rest });
  if (entry.state === 'question') {
    throw new UnclearReadingError(entry.question, { understood: entry.understood, choices: entry.choices });
  }
  throw new UnclearReadingError(
    entry.state === 'unfinished' ? entry.missing : 'Type what the meter showed.',
    {
      understood: entry.state === 'unfinished' ? entry.understood : [],
    },
  );
}

export function patchReading(
  db: Database,
  id: ReadingId,
  patch: ReadingPatch,
): { change: ChangeId; reading: Reading } {
  const row = readingRow(db, id);
  const { takeId, ms, basis, meterId, note } = row;
  const values = checked(db, row.jobId, {
    ...asSayable(asReading(row)),
    takeId,
    ms,
    basis,
    meterId,
    note,
    ...patch,
  });
  const label = patch.ms !== undefined ? 'reading moved' : 'reading corrected';
  const { change } = edit(db, row.jobId, label, (e) => e.update('readings', id, values));
  return { change, reading: asReading({ ...row, ...values }) };
}

export function removeReading(db: Database, id: ReadingId): ChangeId {
  const row = readingRow(db, id);
  return edit(db, row.jobId, 'reading deleted', (e) => e.remove('readings', id)).change;
}

export function listMeters(db: Database): Meter[] {
  return db.select().from(meters).orderBy(meters.createdAt).all().map(asMeter);
}

export function addMeter(db: Database, wanted: NewMeter): Meter {
  const row = { id: newId(meterIdSchema), ...wanted, createdAt: Date.now() };
  edit(db, null, `meter ${wanted.name} named`, (e) => e.insert('meters', row));
  return asMeter(row);
}

export function patchMeter(db: Database, id: MeterId, patch: Partial<NewMeter>): Meter {
  edit(db, null, 'meter changed', (e) => e.update('meters', id, patch));
  return asMeter(meterRow(db, id));
}

/** Takes a meter away that no reading was taken with. */
export function removeMeter(db: Database, id: MeterId): ChangeId {
  const row = meterRow(db, id);
  const used = db.select({ id: readings.id }).from(readings).where(eq(readings.meterId, id)).limit(1).get();
  if (used)
    throw new DomainError(
      'conflict',
      'Readings were taken with this meter.',
      'Leave it in the list: their uncertainty comes from it.',
    );
  return edit(db, null, `meter ${row.name} deleted`, (e) => e.remove('meters', id)).change;
}

/** The expanded uncertainty (k = 2) of readings by their meters, in base units; undefined without one. */
export function expandedUncertaintyOf(db: Database): (reading: Reading) => number | undefined {
  const known = new Map(listMeters(db).map((meter) => [meter.id, meter.ranges]));
  return ({ meterId, valueText, unit }) => {
    const ranges = meterId ? known.get(meterId) : undefined;
    return ranges && valueText !== null
      ? (expandedUncertainty({ text: valueText, unit }, ranges) ?? undefined)
      : undefined;
  };
}

/** What a typed line of this job is read against. */
export function quickContext(db: Database, jobId: JobId): QuickContext {
  const job = db
    .select({ type: instruments.type })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(eq(jobs.id, jobId))
    .get();
  const conductors = db
    .select({ names: traces.conductors })
    .from(traces)
    .where(eq(traces.jobId, jobId))
    .all();
  return { instrumentType: job?.type ?? 'other', conductors: conductors.flatMap(({ names }) => names) };
}

/** Holds what was sent against the rules of its kind, and brings it into the form it is kept in. */
function checked(db: Database, jobId: JobId, wanted: NewReading) {
  const { kind: kindId, takeId = null, ms = null, meterId = null } = wanted;
  const kind = kindOf(kindId);
  const unit = wanted.unit ?? kind.units[0] ?? kind.baseUnit;
  if (unitOf(unit).quantity !== unitOf(kind.baseUnit).quantity) {
    throw new DomainError(
      'invalid',
      `${kind.label} is not measured in ${unit}.`,
      `Use ${kind.units.join(', ')}.`,
      { unit },
    );
  }
  if (takeId !== null && ms !== null) momentInJob(db, jobId, takeId, ms);
  if (meterId !== null) meterRow(db, meterId);
  return {
    ...shownValue(wanted, unit),
    kind: kindId,
    unit,
    takeId,
    ms,
    meterId,
    subject: wanted.subject ?? '',
    between: wanted.between ?? null,
    basis: wanted.basis ?? 'measured',
    details: wanted.details ?? {},
    note: wanted.note ?? null,
  };
}

function shownValue(
  { kind, open, value, details }: NewReading,
  unit: Reading['unit'],
): Pick<ReadingRow, 'open' | 'valueText' | 'baseValue'> {
  if (kind === 'polarity-kick') {
    const { leads, steel, row, sign } = details ?? {};
    if (leads && steel && row && sign && leads.red !== leads.black)
      return { open: false, valueText: null, baseValue: sign };
    throw new DomainError(
      'invalid',
      'A kick needs both leads, the steel, the row and the sign.',
      'For example “slug + red/white touch”: red lead on red, black lead on white.',
    );
  }
  if (open) return { open: true, valueText: null, baseValue: null };
  if (value === undefined)
    throw new DomainError(
      'invalid',
      'There is no value.',
      'Give the digits that the meter showed, or open.',
      { kind },
    );
  const valueText = String(value).replace('−', '-').replace(',', '.');
  return { open: false, valueText, baseValue: toBase(valueText, unit) };
}

function readingRow(db: Database, id: ReadingId): ReadingRow {
  const row = db.select().from(readings).where(eq(readings.id, id)).get();
  if (!row) throw new GoneError('reading');
  return row;
}

function meterRow(db: Database, id: MeterId) {
  const row = db.select().from(meters).where(eq(meters.id, id)).get();
  if (!row) throw new GoneError('meter');
  return row;
}

function asReading({ createdAt: _, ...reading }: ReadingRow): Reading {
  return reading;
}

function asMeter({ createdAt: _, ...meter }: typeof meters.$inferSelect): Meter {
  return meter;
}
