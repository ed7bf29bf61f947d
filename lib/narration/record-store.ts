import { createHash } from 'node:crypto';
import { and, asc, eq } from 'drizzle-orm';
import { changeStamp, type Edit, edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { clients, instruments, jobs, narrationLines, proposals, settings, workItems } from '@/db/schema';
import { type Film, filmTimeOf, layOut, momentAt } from '@/lib/film';
import { filmOf, getTake, insertMarker, markersOf, takesOf } from '@/lib/film/store';
import { insertReading, readingsOf } from '@/lib/readings/store';
import {
  type ChangeId,
  type JobId,
  type NarrationLineId,
  narrationLineIdSchema,
  type ProposalId,
  proposalIdSchema,
  type TakeId,
} from '@/shared/ids';
import {
  type HeardProposal,
  heardProposalSchema,
  type NarrationContext,
  type NarrationLine,
  type ProposalType,
  type Slang,
} from '@/shared/narration';
import {
  type Decide,
  type Imported,
  type KeptLine,
  type Narration,
  type Proposal,
  slangListSchema,
} from '@/shared/narration-record';
import { DomainError } from '@/shared/problem';
import type { Take } from '@/shared/takes';
import { readCaptions, shiftLines, splitOverTakes } from './captions';
import { isOnRecord } from './on-record';
import { propose } from './propose';
import { NeedsChangeError, readingHeard } from './record';

type LineRow = typeof narrationLines.$inferSelect;
type ProposalRow = typeof proposals.$inferSelect;

/** Where and in which job it was heard. */
export type HeardRow = Pick<ProposalRow, 'jobId' | 'takeId' | 'startMs' | 'promisedAt'>;
/** Puts accepted work on the ticket, and tells the id of the item. The ticket is another subject's. */
export type KeepWork = (
  db: Database,
  e: Edit,
  row: HeardRow,
  heard: Extract<HeardProposal, { type: 'work' }>,
) => string;

interface CaptionsFile {
  bytes: Uint8Array;
  name: string;
  offsetMs: number;
}

/** The spoken lines of a job and what they propose, each in take time. */
export function narrationOf(db: Database, jobId: JobId): Narration {
  return { lines: linesOf(db, jobId).map(asLine), proposals: proposalsOf(db, jobId) };
}

export function proposalsOf(db: Database, jobId: JobId): Proposal[] {
  return db
    .select()
    .from(proposals)
    .where(eq(proposals.jobId, jobId))
    .orderBy(asc(proposals.startMs))
    .all()
    .map(asProposal);
}

/** A short word that changes whenever lines or proposals do, so that a page need not load them for nothing. */
export function narrationStamp(db: Database, jobId: JobId): string {
  return changeStamp(db, jobId, ['narrationLines', 'proposals']);
}

/** Puts a captions file into one take, in place of what was there. Decisions made before are kept. */
export function importToTake(db: Database, takeId: TakeId, file: CaptionsFile): Imported {
  const { jobId } = getTake(db, takeId);
  const { format, lines, unread } = readCaptions(file.bytes, file.name);
  const dealt = new Map([[takeId, shiftLines(lines, file.offsetMs)]]);
  return { ...replaceLines(db, jobId, dealt), format, unread, outside: 0 };
}

/** Puts a captions file of the whole film in, split over its takes. */
export function importToFilm(db: Database, jobId: JobId, file: CaptionsFile): Imported {
  const { format, lines, unread } = readCaptions(file.bytes, file.name);
  const { takes, outside } = splitOverTakes(lines, filmOf(db, jobId).takes, file.offsetMs);
  if (takes.size === 0) {
    throw new DomainError(
      'invalid',
      'None of these lines falls on the film.',
      'Check the offset, and whether the takes lie in the order that the captions follow.',
    );
  }
  return { ...replaceLines(db, jobId, takes), format, unread, outside: outside.length };
}

/** Moves all lines of a take, when the captions run early or late. */
export function shiftTake(db: Database, takeId: TakeId, byMs: number): ChangeId {
  const { jobId } = getTake(db, takeId);
  const lines = linesOf(db, jobId).filter((line) => line.takeId === takeId);
  return edit(db, jobId, 'narration moved', (e) => {
    for (const { id, startMs, endMs } of lines) {
      e.update('narrationLines', id, {
        startMs: Math.max(0, startMs + byMs),
        endMs: Math.max(0, endMs + byMs),
      });
    }
    proposeAgain(db, jobId, e);
  }).change;
}

/** Corrects the words of a line; its time stays, and so does what was heard at first. */
export function correctLine(db: Database, id: NarrationLineId, text: string): ChangeId {
  const row = db.select().from(narrationLines).where(eq(narrationLines.id, id)).get();
  if (!row) throw new GoneError('line');
  return edit(db, row.jobId, 'narration corrected', (e) => {
    e.update('narrationLines', id, { text, heardText: row.heardText ?? row.text });
    proposeAgain(db, row.jobId, e);
  }).change;
}

/** Takes the narration of a take off the record, with what it proposed; what was accepted stays. */
export function removeNarration(db: Database, takeId: TakeId): ChangeId {
  const { jobId } = getTake(db, takeId);
  return edit(db, jobId, 'narration deleted', (e) => {
    for (const line of linesOf(db, jobId)) if (line.takeId === takeId) e.remove('narrationLines', line.id);
    proposeAgain(db, jobId, e);
  }).change;
}

/** Accepts or dismisses one proposal. Accepting records what it says, at its moment, in the same change. */
export function decide(
  db: Database,
  id: ProposalId,
  { decision, change: changed }: Decide,
  keepWork: KeepWork,
): { change: ChangeId; proposal: Proposal } {
  const row = proposalRow(db, id);
  if (row.decision === 'accepted') {
    throw new DomainError(
      'conflict',
      'It has been accepted already.',
      'Undo that first, or change what it recorded.',
    );
  }
  const heard = changed
    ? heardProposalSchema.parse({ ...row.heard, payload: { ...row.heard.payload, ...changed } })
    : row.heard;
  const label = decision === 'accept' ? `${row.heard.type} accepted` : `${row.heard.type} dismissed`;
  const { change } = edit(db, row.jobId, label, (e) => settle(db, e, row, heard, decision, keepWork));
  return { change, proposal: asProposal(proposalRow(db, id)) };
}

/** Decides on all open proposals of a type; those that need a change first are left. */
export function decideAll(
  db: Database,
  jobId: JobId,
  type: ProposalType,
  decision: Decide['decision'],
  keepWork: KeepWork,
) {
  const open = db
    .select()
    .from(proposals)
    .where(and(eq(proposals.jobId, jobId), eq(proposals.decision, 'open')))
    .all()
    .filter((row) => row.heard.type === type);
  if (open.length === 0) return { change: null, decided: 0, left: 0 };
  const { change, value } = edit(
    db,
    jobId,
    `all ${type} proposals ${decision}ed`,
    (e) => open.filter((row) => settled(db, e, row, decision, keepWork)).length,
  );
  return { change, decided: value, left: open.length - value };
}

export function slangOf(db: Database): Slang[] {
  const row = db.select().from(settings).where(eq(settings.key, 'slang')).get();
  return row ? slangListSchema.parse(row.value).slang : [];
}

/** The repairer's own words, used from the next narration on. */
export function setSlang(db: Database, slang: Slang[]): void {
  db.insert(settings)
    .values({ key: 'slang', value: { slang } })
    .onConflictDoUpdate({ target: settings.key, set: { value: { slang } } })
    .run();
}

function settled(
  db: Database,
  e: Edit,
  row: ProposalRow,
  decision: Decide['decision'],
  keepWork: KeepWork,
): boolean {
  try {
    settle(db, e, row, row.heard, decision, keepWork);
    return true;
  } catch (error) {
    if (error instanceof NeedsChangeError) return false;
    throw error;
  }
}

function settle(
  db: Database,
  e: Edit,
  row: ProposalRow,
  heard: HeardProposal,
  decision: Decide['decision'],
  keepWork: KeepWork,
): void {
  const recordId = decision === 'accept' ? record(db, e, row, heard, keepWork) : null;
  e.update('proposals', row.id, {
    heard,
    decision: decision === 'accept' ? 'accepted' : 'dismissed',
    recordId,
  });
}

/** Markers, readings and work become such; the rest stands on the record as it was said, in the proposal itself. */
function record(
  db: Database,
  e: Edit,
  row: ProposalRow,
  heard: HeardProposal,
  keepWork: KeepWork,
): string | null {
  const { jobId, takeId, startMs: ms } = row;
  const note = `Heard: “${heard.words}”`;
  if (heard.type === 'marker') {
    const { markerKind: kind, title } = heard.payload;
    return insertMarker(db, e, jobId, { kind, title, takeId, ms, public: true, note }).id;
  }
  if (heard.type === 'reading')
    return insertReading(db, e, jobId, { ...readingHeard(heard), takeId, ms, note }).id;
  if (heard.type === 'work') return keepWork(db, e, row, heard);
  return null;
}

/** Puts lines into takes, in place of what was there, and listens to the whole anew. */
export function replaceLines(
  db: Database,
  jobId: JobId,
  dealt: ReadonlyMap<TakeId, readonly NarrationLine[]>,
) {
  const before = linesOf(db, jobId).filter((line) => dealt.has(line.takeId));
  const rows = [...dealt].flatMap(([takeId, lines]) => lines.map((line) => lineRow(jobId, takeId, line)));
  const { change, value: proposed } = edit(db, jobId, 'narration put in', (e) => {
    for (const line of before) e.remove('narrationLines', line.id);
    for (const row of rows) e.insert('narrationLines', row);
    return proposeAgain(db, jobId, e);
  });
  return { change, lines: rows.length, proposed };
}

/**
 * Listens to the whole film anew: a promise in the first take and its end in the last belong together. Decisions
 * are kept; open proposals that the words no longer bear go.
 * @returns how many are new
 */
function proposeAgain(db: Database, jobId: JobId, e: Edit): number {
  const lines = linesOf(db, jobId);
  const heard = proposalsHeard(listeningFilm(takesOf(db, jobId), lines), lines, contextOf(db, jobId));
  const known = db.select().from(proposals).where(eq(proposals.jobId, jobId)).all();
  const keys = new Set(heard.map(({ key }) => key));
  for (const row of known) if (row.decision === 'open' && !keys.has(row.key)) e.remove('proposals', row.id);
  const knownKeys = new Set(known.map(({ key }) => key));
  const markers = markersOf(db, jobId);
  const readings = readingsOf(db, jobId);
  const work = db.select().from(workItems).where(eq(workItems.jobId, jobId)).all();
  const fresh = heard.filter(
    (each) => !knownKeys.has(each.key) && !isOnRecord(each.heard, each, markers, readings, work),
  );
  for (const row of fresh)
    e.insert('proposals', { ...row, id: newId(proposalIdSchema), jobId, decision: 'open', recordId: null });
  return fresh.length;
}

/**
 * The clock to listen on: whole takes, trimmed off or not, and long enough for what is said in them, for a take's own
 * length is not known before its recording has been looked at.
 */
function listeningFilm(takes: readonly Take[], lines: readonly LineRow[]): Film {
  return layOut(
    takes.map(({ id, durationMs }) => {
      const spoken = lines.reduce(
        (last, line) => (line.takeId === id ? Math.max(last, line.endMs) : last),
        0,
      );
      return { id, durationMs: Math.max(durationMs, spoken + 1), trimStartMs: 0, trimEndMs: null };
    }),
  );
}

/** Listens in film time, and brings what was heard back to the takes. */
function proposalsHeard(film: Film, lines: readonly LineRow[], context: NarrationContext) {
  const onFilm = lines
    .flatMap(({ takeId, startMs, endMs, text, voice }) => {
      const from = filmTimeOf(film, { takeId, ms: startMs });
      const to = filmTimeOf(film, { takeId, ms: endMs });
      return from && to
        ? [{ startMs: from.filmMs, endMs: to.filmMs, text, ...(voice ? { voice } : {}) }]
        : [];
    })
    .sort((a, b) => a.startMs - b.startMs);
  const seen = new Set<string>();
  return propose(onFilm, context).flatMap((heard) => {
    const moment = momentAt(film, heard.startMs);
    if (!moment) return [];
    const endMs = Math.max(moment.ms, moment.ms + heard.endMs - heard.startMs);
    const key = proposalKeyOf(moment.takeId, moment.ms, heard);
    if (seen.has(key)) return [];
    seen.add(key);
    const promised = heard.type === 'work' ? heard.payload.promisedAt : null;
    const promisedAt = promised && momentAt(film, promised.startMs);
    return [{ takeId: moment.takeId, startMs: moment.ms, endMs, key, heard, promisedAt }];
  });
}

/** The same words at the same place of a take, wherever that take lies in the film. */
export function proposalKeyOf(takeId: TakeId, ms: number, { type, words, payload }: HeardProposal): string {
  const {
    promisedAt: _,
    unheardUntil: __,
    ...lasting
  } = { promisedAt: null, unheardUntil: null, ...payload };
  return createHash('sha256')
    .update(JSON.stringify([takeId, ms, type, words, lasting]))
    .digest('hex')
    .slice(0, 32);
}

function contextOf(db: Database, jobId: JobId): NarrationContext {
  const row = db
    .select({ instrumentType: instruments.type, clientName: clients.name })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .leftJoin(clients, eq(clients.id, jobs.clientId))
    .where(eq(jobs.id, jobId))
    .get();
  if (!row) throw new GoneError('job');
  return { ...row, slang: slangOf(db) };
}

function linesOf(db: Database, jobId: JobId): LineRow[] {
  return db
    .select()
    .from(narrationLines)
    .where(eq(narrationLines.jobId, jobId))
    .orderBy(asc(narrationLines.startMs))
    .all();
}

function lineRow(jobId: JobId, takeId: TakeId, { startMs, endMs, text, voice }: NarrationLine): LineRow {
  return {
    id: newId(narrationLineIdSchema),
    jobId,
    takeId,
    startMs,
    endMs,
    text,
    voice: voice ?? null,
    heardText: null,
  };
}

function proposalRow(db: Database, id: ProposalId): ProposalRow {
  const row = db.select().from(proposals).where(eq(proposals.id, id)).get();
  if (!row) throw new GoneError('proposal');
  return row;
}

function asLine({ jobId: _, ...line }: LineRow): KeptLine {
  return line;
}

function asProposal({ key: _, ...proposal }: ProposalRow): Proposal {
  return proposal;
}
