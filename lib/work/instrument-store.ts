import { and, asc, desc, eq, isNull } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { claims, clients, instruments, jobs, readings, settings } from '@/db/schema';
import { momentInJob } from '@/lib/film/store';
import {
  type Claim,
  type ClaimPatch,
  type NewClaim,
  newClaimSchema,
  type SerialPattern,
  serialPatternsSchema,
} from '@/shared/claims';
import {
  type ChangeId,
  type ClaimId,
  type ClientId,
  claimIdSchema,
  type InstrumentId,
  type JobId,
  type ReadingId,
} from '@/shared/ids';
import type { Instrument, InstrumentPatch, InstrumentView } from '@/shared/jobs';
import { DomainError } from '@/shared/problem';
import { folded, wordsOf } from './findable';
import { refuseIfChanged } from './meanwhile';
import { asClient, asInstrument, asJob, jobRow } from './row-store';
import { parsePattern } from './serial-words';
import { readByPatterns } from './serials';

interface Wanted {
  /** Words that must all stand in what is known of it, its client's name included. */
  find?: string | undefined;
  /** Whose it is. */
  clientId?: ClientId | undefined;
}

/** The instruments that are asked for, the newest entry first. */
export function listInstruments(db: Database, { find = '', clientId }: Wanted = {}): Instrument[] {
  const words = wordsOf(find);
  return db
    .select({ instrument: instruments, owner: clients.name })
    .from(instruments)
    .leftJoin(clients, eq(clients.id, instruments.clientId))
    .where(clientId ? eq(instruments.clientId, clientId) : undefined)
    .orderBy(desc(instruments.createdAt), desc(instruments.id))
    .all()
    .filter(({ instrument: { type, maker, model, serial, features }, owner }) => {
      const text = folded([type, maker, model, serial, features, owner].filter(Boolean).join(' '));
      return words.every((word) => text.includes(word));
    })
    .map(({ instrument }) => asInstrument(instrument));
}

/** An instrument with its claims, what its serial tells, and the jobs it came in for, newest first; none in the bin. */
export function getInstrumentView(db: Database, id: InstrumentId): InstrumentView {
  const row = instrumentRow(db, id);
  const client = row.clientId && db.select().from(clients).where(eq(clients.id, row.clientId)).get();
  return {
    instrument: asInstrument(row),
    client: client ? asClient(client) : null,
    claims: claimsOf(db, id),
    serialReadings: readByPatterns(serialPatternsOf(db), row.serial, new Date().getFullYear()),
    jobs: db
      .select()
      .from(jobs)
      .where(and(eq(jobs.instrumentId, id), isNull(jobs.deletedAt)))
      .orderBy(desc(jobs.number))
      .all()
      .map(asJob),
  };
}

/**
 * Changes what is known of an instrument.
 * @param jobId the job on whose ticket it is changed, so that it is undone with that job; null outside of one
 */
export function patchInstrument(
  db: Database,
  id: InstrumentId,
  { was, ...patch }: InstrumentPatch,
  jobId: JobId | null,
): { change: ChangeId; instrument: Instrument } {
  const row = instrumentRow(db, id);
  if (jobId) checkJob(db, jobId, id);
  refuseIfChanged(row, patch, was);
  if (patch.clientId && !db.select().from(clients).where(eq(clients.id, patch.clientId)).get())
    throw new GoneError('client');
  const { change } = edit(db, jobId, labelFor(patch), (e) => e.update('instruments', id, patch));
  return { change, instrument: asInstrument(instrumentRow(db, id)) };
}

/** What is claimed about an instrument, in the order in which it was written down. */
export function claimsOf(db: Database, id: InstrumentId): Claim[] {
  return db
    .select()
    .from(claims)
    .where(eq(claims.instrumentId, id))
    .orderBy(asc(claims.createdAt), asc(claims.id))
    .all()
    .map(asClaim);
}

export function addClaim(
  db: Database,
  instrumentId: InstrumentId,
  wanted: NewClaim,
): { change: ChangeId; claim: Claim } {
  instrumentRow(db, instrumentId);
  const claim = newClaimSchema.parse(wanted);
  if (claim.jobId) checkJob(db, claim.jobId, instrumentId);
  checkEvidence(db, claim.jobId, claim);
  const row = { id: newId(claimIdSchema), instrumentId, ...claim, createdAt: Date.now() };
  const { change } = edit(db, row.jobId, `claim “${row.value}” added`, (e) => e.insert('claims', row));
  return { change, claim: asClaim(row) };
}

/** @param jobId the job on whose ticket it is changed; without one, the job in which the claim came up */
export function patchClaim(
  db: Database,
  id: ClaimId,
  { was, ...patch }: ClaimPatch,
  jobId: JobId | null,
): { change: ChangeId; claim: Claim } {
  const row = claimRow(db, id);
  if (jobId) checkJob(db, jobId, row.instrumentId);
  refuseIfChanged(row, patch, was);
  checkEvidence(db, row.jobId, patch);
  const { change } = edit(db, jobId ?? row.jobId, `claim “${row.value}” changed`, (e) =>
    e.update('claims', id, patch),
  );
  return { change, claim: asClaim(claimRow(db, id)) };
}

export function removeClaim(db: Database, id: ClaimId, jobId: JobId | null): ChangeId {
  const row = claimRow(db, id);
  if (jobId) checkJob(db, jobId, row.instrumentId);
  return edit(db, jobId ?? row.jobId, `claim “${row.value}” deleted`, (e) => e.remove('claims', id)).change;
}

const patternsKey = 'serialPatterns';

/** The repairer's own serial patterns; a new workshop has none. */
export function serialPatternsOf(db: Database): SerialPattern[] {
  const row = db.select().from(settings).where(eq(settings.key, patternsKey)).get();
  return row ? serialPatternsSchema.parse(row.value).patterns : [];
}

/** Keeps the whole list; each pattern is understood and has a name of its own. */
export function setSerialPatterns(db: Database, patterns: SerialPattern[]): void {
  for (const { words } of patterns) parsePattern(words);
  const names = patterns.map(({ name }) => folded(name));
  const twice = patterns.find(({ name }, index) => names.indexOf(folded(name)) !== index);
  if (twice)
    throw new DomainError(
      'invalid',
      `Two patterns are called “${twice.name}”.`,
      'Give each a name of its own: the readings of a serial are told apart by it.',
      { name: twice.name },
    );
  const value = { patterns };
  db.insert(settings)
    .values({ key: patternsKey, value })
    .onConflictDoUpdate({ target: settings.key, set: { value } })
    .run();
}

/** A moment lies on the film of the job in which the claim came up, and a reading was noted in that job. */
function checkEvidence(
  db: Database,
  jobId: JobId | null,
  { moment, readingId }: Pick<ClaimPatch, 'moment' | 'readingId'>,
): void {
  if (!moment && !readingId) return;
  if (!jobId)
    throw new DomainError(
      'invalid',
      'This claim came up in no job, so it has no film and no readings.',
      'Write the evidence in words, or make the claim on the ticket of a job.',
    );
  if (moment) momentInJob(db, jobId, moment.takeId, moment.ms);
  if (readingId) checkReading(db, jobId, readingId);
}

function checkReading(db: Database, jobId: JobId, id: ReadingId): void {
  const row = db.select({ jobId: readings.jobId }).from(readings).where(eq(readings.id, id)).get();
  if (!row) throw new GoneError('reading');
  if (row.jobId !== jobId)
    throw new DomainError(
      'invalid',
      'That reading is not part of this job.',
      'Choose a reading of the job in which the claim came up.',
      { readingId: id },
    );
}

function checkJob(db: Database, jobId: JobId, instrumentId: InstrumentId): void {
  if (jobRow(db, jobId).instrumentId === instrumentId) return;
  throw new DomainError(
    'invalid',
    'That job is about another instrument.',
    'Load the page again: the ticket may have been given another instrument meanwhile.',
    { jobId },
  );
}

function instrumentRow(db: Database, id: InstrumentId) {
  const row = db.select().from(instruments).where(eq(instruments.id, id)).get();
  if (!row) throw new GoneError('instrument');
  return row;
}

function claimRow(db: Database, id: ClaimId) {
  const row = db.select().from(claims).where(eq(claims.id, id)).get();
  if (!row) throw new GoneError('claim');
  return row;
}

function asClaim({ createdAt: _, ...claim }: typeof claims.$inferSelect): Claim {
  return claim;
}

/** "serial changed" where it is one field, "instrument changed" where it is more. */
function labelFor(patch: Omit<InstrumentPatch, 'was'>): string {
  const [field, ...more] = Object.keys(patch);
  if (field === undefined || more.length > 0) return 'instrument changed';
  return field === 'clientId' ? 'owner of the instrument changed' : `${field} changed`;
}
