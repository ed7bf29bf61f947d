import { sql } from 'drizzle-orm';
import { index, integer, primaryKey, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core';
import type { BacklogId, BacklogProblem, ImportOrder } from '@/shared/backlog';
import type { Claim, ClaimKind } from '@/shared/claims';
import type { CutSettings } from '@/shared/cut';
import type { CutInspection, CutResult } from '@/shared/cut-engine';
import type {
  ChangeId,
  ClaimId,
  ClientId,
  FolderId,
  HandOverId,
  HarnessId,
  InstrumentId,
  JobId,
  MadeCutId,
  MarkerId,
  MeterId,
  NarrationLineId,
  OutcomeId,
  PartId,
  ProposalId,
  ReadingId,
  RecordingId,
  SavedQuestionId,
  TakeId,
  TaskId,
  TraceId,
  WorkItemId,
} from '@/shared/ids';
import type { Harness } from '@/shared/jack';
import type { JobState } from '@/shared/jobs';
import type { ReadyLook } from '@/shared/loose-ends';
import type { MarkerKind } from '@/shared/markers';
import type { Fingerprint, Hints, PeaksLevel, Probe } from '@/shared/media';
import type { FilmMoment } from '@/shared/moments';
import type { HeardProposal } from '@/shared/narration';
import type { Basis, MeterRange, ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';
import type { TaskKind, TaskState } from '@/shared/tasks';
import type { AssumedCoil, WiringOutcome } from '@/shared/wiring';
import type { Part, WorkItem } from '@/shared/work';

/** Every `…At` column is milliseconds since 1970-01-01T00:00Z; every `…Ms` column is take time. */
const createdAt = integer('created_at').notNull();
const updatedAt = integer('updated_at').notNull();

export const settings = sqliteTable('settings', {
  key: text('key').primaryKey(),
  value: text('value', { mode: 'json' }).$type<unknown>().notNull(),
});

export const clients = sqliteTable('clients', {
  id: text('id').$type<ClientId>().primaryKey(),
  name: text('name').notNull(),
  /** How the client is called in public texts. */
  alias: text('alias').notNull(),
  /** How to reach the client: lines as they were written. */
  reach: text('reach'),
  notes: text('notes'),
  createdAt,
});

export const instruments = sqliteTable(
  'instruments',
  {
    id: text('id').$type<InstrumentId>().primaryKey(),
    type: text('type').notNull(),
    maker: text('maker'),
    model: text('model'),
    serial: text('serial'),
    features: text('features'),
    /** Whose it is. */
    clientId: text('client_id')
      .$type<ClientId>()
      .references(() => clients.id),
    createdAt,
  },
  (t) => [index('instruments_client').on(t.clientId)],
);

export const jobs = sqliteTable(
  'jobs',
  {
    id: text('id').$type<JobId>().primaryKey(),
    /** Number on the ticket, counted up from 1. */
    number: integer('number').notNull(),
    title: text('title').notNull(),
    clientId: text('client_id')
      .$type<ClientId>()
      .references(() => clients.id),
    instrumentId: text('instrument_id')
      .$type<InstrumentId>()
      .notNull()
      .references(() => instruments.id),
    state: text('state').$type<JobState>().notNull().default('booked in'),
    /** Days, as 2026-11-25. Null for jobs booked in before days were kept: the day of `createdAt` counts. */
    receivedOn: text('received_on'),
    promisedOn: text('promised_on'),
    collectedOn: text('collected_on'),
    /** Where it stands in the workshop. */
    place: text('place'),
    cameWith: text('came_with', { mode: 'json' }).$type<string[]>().notNull().default([]),
    readyLook: text('ready_look', { mode: 'json' }).$type<ReadyLook>(),
    demo: integer('demo', { mode: 'boolean' }).notNull().default(false),
    createdAt,
    updatedAt,
    /** In the bin since; recordings are untouched. */
    deletedAt: integer('deleted_at'),
  },
  (t) => [
    uniqueIndex('jobs_number').on(t.number),
    index('jobs_updated').on(t.updatedAt),
    index('jobs_client').on(t.clientId),
    index('jobs_instrument').on(t.instrumentId),
  ],
);

/** What a job shows in the rack, worked out once. Triggers of the database take a row away when what it tells changes. */
export const keptTickets = sqliteTable('kept_tickets', {
  jobId: text('job_id')
    .$type<JobId>()
    .primaryKey()
    .references(() => jobs.id, { onDelete: 'cascade' }),
  ticket: text('ticket').notNull(),
  /** What the ticket is found by, folded. */
  findable: text('findable').notNull(),
});

export const claims = sqliteTable(
  'claims',
  {
    id: text('id').$type<ClaimId>().primaryKey(),
    instrumentId: text('instrument_id')
      .$type<InstrumentId>()
      .notNull()
      .references(() => instruments.id),
    jobId: text('job_id')
      .$type<JobId>()
      .references(() => jobs.id),
    kind: text('kind').$type<ClaimKind>().notNull(),
    subject: text('subject'),
    value: text('value').notNull(),
    basis: text('basis').$type<Basis>().notNull(),
    evidence: text('evidence'),
    /** The take of the moment goes with its job; the claim stays. */
    moment: text('moment', { mode: 'json' }).$type<FilmMoment>(),
    readingId: text('reading_id').$type<ReadingId>(),
    sure: text('sure').$type<Claim['sure']>().notNull(),
    createdAt,
  },
  (t) => [index('claims_instrument').on(t.instrumentId), index('claims_job').on(t.jobId)],
);

export const workItems = sqliteTable(
  'work_items',
  {
    id: text('id').$type<WorkItemId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    what: text('what').notNull(),
    origin: text('origin').$type<WorkItem['origin']>().notNull(),
    charge: text('charge').$type<NonNullable<WorkItem['charge']>>(),
    /** In the smallest unit of the currency (ISO 4217). */
    priceMinor: integer('price_minor'),
    currency: text('currency'),
    outcome: text('outcome').$type<WorkItem['outcome']>().notNull(),
    why: text('why'),
    begun: text('begun', { mode: 'json' }).$type<FilmMoment>(),
    ended: text('ended', { mode: 'json' }).$type<FilmMoment>(),
    createdAt,
  },
  (t) => [index('work_items_job').on(t.jobId, t.createdAt)],
);

export const parts = sqliteTable(
  'parts',
  {
    id: text('id').$type<PartId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    what: text('what').notNull(),
    deed: text('deed').$type<Part['deed']>().notNull(),
    source: text('source').$type<NonNullable<Part['source']>>(),
    fate: text('fate').$type<NonNullable<Part['fate']>>(),
    doubt: text('doubt'),
    doubtBasis: text('doubt_basis').$type<Basis>(),
    evidence: text('evidence'),
    moment: text('moment', { mode: 'json' }).$type<FilmMoment>(),
    createdAt,
  },
  (t) => [index('parts_job').on(t.jobId, t.createdAt)],
);

export const folders = sqliteTable('folders', {
  id: text('id').$type<FolderId>().primaryKey(),
  /** Real path, links resolved. */
  path: text('path').notNull().unique(),
  /** Minutes to add to recorded-at times that cameras in this folder wrote as UTC. */
  clockOffsetMinutes: integer('clock_offset_minutes').notNull().default(0),
  createdAt,
});

/** One file in a recordings folder, with all that the engine found out about it. */
export const recordings = sqliteTable(
  'recordings',
  {
    id: text('id').$type<RecordingId>().primaryKey(),
    folderId: text('folder_id')
      .$type<FolderId>()
      .notNull()
      .references(() => folders.id),
    /** Path below the folder, with forward slashes. */
    path: text('path').notNull(),
    sizeBytes: integer('size_bytes').notNull(),
    modifiedAt: integer('modified_at').notNull(),
    state: text('state').$type<'new' | 'ready' | 'missing' | 'failed'>().notNull(),
    /** Why it cannot be used, for a person. */
    problem: text('problem'),
    probe: text('probe', { mode: 'json' }).$type<Probe>(),
    fingerprint: text('fingerprint', { mode: 'json' }).$type<Fingerprint>(),
    peaks: text('peaks', { mode: 'json' }).$type<PeaksLevel[]>(),
    /** Peaks are there to the end, silences found. */
    soundRead: integer('sound_read', { mode: 'boolean' }).notNull().default(false),
    /** Take times of the stills on disk. */
    stills: text('stills', { mode: 'json' }).$type<number[]>(),
    picturesRead: integer('pictures_read', { mode: 'boolean' }).notNull().default(false),
    hints: text('hints', { mode: 'json' }).$type<Hints>(),
    viewingCopy: integer('viewing_copy', { mode: 'boolean' }).notNull().default(false),
    /** Times that the engine went down over this file. */
    crashes: integer('crashes').notNull().default(0),
    createdAt,
  },
  (t) => [uniqueIndex('recordings_place').on(t.folderId, t.path)],
);

export const takes = sqliteTable(
  'takes',
  {
    id: text('id').$type<TakeId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    recordingId: text('recording_id')
      .$type<RecordingId>()
      .notNull()
      .references(() => recordings.id),
    /** Order given by hand; null while the film follows the recorded-at times. */
    position: integer('position'),
    /** The part that counts as film; null is the recording's own end. */
    trimStartMs: integer('trim_start_ms').notNull().default(0),
    trimEndMs: integer('trim_end_ms'),
    createdAt,
  },
  (t) => [
    index('takes_job').on(t.jobId, t.position),
    uniqueIndex('takes_recording').on(t.jobId, t.recordingId),
  ],
);

export const markers = sqliteTable(
  'markers',
  {
    id: text('id').$type<MarkerId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    takeId: text('take_id')
      .$type<TakeId>()
      .notNull()
      .references(() => takes.id),
    kind: text('kind').$type<MarkerKind>().notNull(),
    title: text('title').notNull(),
    note: text('note'),
    ms: integer('ms').notNull(),
    endMs: integer('end_ms'),
    public: integer('public', { mode: 'boolean' }).notNull(),
    createdAt,
  },
  (t) => [index('markers_job').on(t.jobId), index('markers_take').on(t.takeId, t.ms)],
);

export const meters = sqliteTable('meters', {
  id: text('id').$type<MeterId>().primaryKey(),
  name: text('name').notNull(),
  ranges: text('ranges', { mode: 'json' }).$type<MeterRange[]>().notNull(),
  createdAt,
});

export const readings = sqliteTable(
  'readings',
  {
    id: text('id').$type<ReadingId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    takeId: text('take_id')
      .$type<TakeId>()
      .references(() => takes.id),
    ms: integer('ms'),
    kind: text('kind').$type<ReadingKindId>().notNull(),
    /** Over-range: the meter showed open. */
    open: integer('open', { mode: 'boolean' }).notNull(),
    /** The digits as the meter showed them, in `unit`; null when open. */
    valueText: text('value_text'),
    unit: text('unit').$type<UnitId>().notNull(),
    /** The value in the kind's base unit; null when open. */
    baseValue: real('base_value'),
    subject: text('subject').notNull(),
    between: text('between', { mode: 'json' }).$type<[string, string]>(),
    basis: text('basis').$type<Basis>().notNull(),
    meterId: text('meter_id')
      .$type<MeterId>()
      .references(() => meters.id),
    details: text('details', { mode: 'json' }).$type<ReadingDetails>().notNull(),
    note: text('note'),
    createdAt,
  },
  (t) => [index('readings_job').on(t.jobId), index('readings_kind').on(t.kind, t.baseValue)],
);

/** Long work: outlives the process that asked for it. */
export const tasks = sqliteTable(
  'tasks',
  {
    id: text('id').$type<TaskId>().primaryKey(),
    kind: text('kind').$type<TaskKind>().notNull(),
    recordingId: text('recording_id')
      .$type<RecordingId>()
      .references(() => recordings.id),
    jobId: text('job_id')
      .$type<JobId>()
      .references(() => jobs.id),
    payload: text('payload', { mode: 'json' }).$type<Record<string, string>>().notNull(),
    /** Nobody waits for it: it comes behind all else. */
    atLeisure: integer('at_leisure', { mode: 'boolean' }).notNull().default(false),
    state: text('state').$type<TaskState>().notNull(),
    /** Part done, 0 to 1. */
    progress: real('progress').notNull().default(0),
    message: text('message'),
    createdAt,
    startedAt: integer('started_at'),
    endedAt: integer('ended_at'),
  },
  (t) => [
    index('tasks_state').on(t.state, t.createdAt),
    index('tasks_recording').on(t.recordingId),
    index('tasks_job').on(t.jobId),
  ],
);

/** Folders of older recordings that were looked through, to be taken in as jobs. */
export const backlogs = sqliteTable('backlogs', {
  id: text('id').$type<BacklogId>().primaryKey(),
  folderId: text('folder_id')
    .$type<FolderId>()
    .notNull()
    .references(() => folders.id, { onDelete: 'cascade' }),
  /** The folder that was chosen inside it, with forward slashes; empty for all of it. */
  under: text('under').notNull(),
  lookedAt: integer('looked_at'),
  /** What is to be imported; null until that was said. */
  wanted: text('wanted', { mode: 'json' }).$type<ImportOrder>(),
  lookTaskId: text('look_task_id').$type<TaskId>(),
  importTaskId: text('import_task_id').$type<TaskId>(),
  undoneAt: integer('undone_at'),
  createdAt,
});

/** What was found in a folder of older recordings. Kept, so that a file that has not changed is read once only. */
export const backlogFiles = sqliteTable(
  'backlog_files',
  {
    folderId: text('folder_id')
      .$type<FolderId>()
      .notNull()
      .references(() => folders.id, { onDelete: 'cascade' }),
    /** Below the folder, with forward slashes. */
    path: text('path').notNull(),
    /** Where it really lies: another named folder inside this one may hold it. */
    placeFolderId: text('place_folder_id').$type<FolderId>().notNull(),
    placePath: text('place_path').notNull(),
    sizeBytes: integer('size_bytes').notNull(),
    modifiedAt: integer('modified_at').notNull(),
    probe: text('probe', { mode: 'json' }).$type<Probe>(),
    fingerprint: text('fingerprint', { mode: 'json' }).$type<Fingerprint>(),
    /** Why it cannot be read, for a person. */
    problem: text('problem'),
    /** Names of the captions beside it, the one to be tried first in front. */
    captions: text('captions', { mode: 'json' }).$type<string[]>().notNull(),
  },
  (t) => [primaryKey({ columns: [t.folderId, t.path] })],
);

/** What an import made, one row a job, and what it could not: a row without a job. */
export const backlogResults = sqliteTable(
  'backlog_results',
  {
    id: integer('id').primaryKey(),
    backlogId: text('backlog_id')
      .$type<BacklogId>()
      .notNull()
      .references(() => backlogs.id, { onDelete: 'cascade' }),
    jobId: text('job_id')
      .$type<JobId>()
      .references(() => jobs.id, { onDelete: 'cascade' }),
    /** Takes came to a job that was there before. */
    joined: integer('joined', { mode: 'boolean' }).notNull().default(false),
    /** The folder that the job is at home in. */
    home: text('home').notNull(),
    /** The day that the job is of; null where it is of the whole folder. */
    day: text('day'),
    takes: integer('takes').notNull().default(0),
    lines: integer('lines').notNull().default(0),
    /** What has to be undone, where takes came to a job. */
    changes: text('changes', { mode: 'json' }).$type<ChangeId[]>().notNull().default([]),
    problem: text('problem', { mode: 'json' }).$type<BacklogProblem>(),
  },
  (t) => [index('backlog_results_backlog').on(t.backlogId), index('backlog_results_job').on(t.jobId)],
);

/** One row as it was before and after; null where it was not there. */
export interface ChangeEntry {
  table: string;
  id: string;
  before: Record<string, unknown> | null;
  after: Record<string, unknown> | null;
}

/** What was changed, when, and how to take it back. */
export const changes = sqliteTable(
  'changes',
  {
    id: text('id').$type<ChangeId>().primaryKey(),
    /** Counts up: the order of changes made within one millisecond. */
    sequence: integer('sequence').notNull(),
    jobId: text('job_id').$type<JobId>(),
    label: text('label').notNull(),
    /** Names of the tables it touched. */
    touched: text('touched', { mode: 'json' }).$type<string[]>().notNull(),
    entries: text('entries', { mode: 'json' }).$type<ChangeEntry[]>().notNull(),
    at: integer('at').notNull(),
    undoneAt: integer('undone_at'),
    /** Undone, and then left behind by a newer change: no longer to be done again. */
    left: integer('left', { mode: 'boolean' }).notNull().default(sql`0`),
  },
  (t) => [uniqueIndex('changes_sequence').on(t.sequence), index('changes_job').on(t.jobId, t.sequence)],
);

/** The worksheet that works out the conductors of one pickup; its readings are the job's own. */
export const traces = sqliteTable(
  'traces',
  {
    id: text('id').$type<TraceId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    subject: text('subject').notNull(),
    conductors: text('conductors', { mode: 'json' }).$type<string[]>().notNull(),
    shield: integer('shield', { mode: 'boolean' }).notNull(),
    frame: integer('frame', { mode: 'boolean' }).notNull(),
    rows: text('rows', { mode: 'json' }).$type<string[]>().notNull(),
    assumed: text('assumed', { mode: 'json' }).$type<AssumedCoil[]>().notNull(),
    planId: text('plan_id'),
    createdAt,
  },
  (t) => [index('traces_job').on(t.jobId)],
);

/** What was really joined, and the moment of the joint. */
export const outcomes = sqliteTable(
  'outcomes',
  {
    id: text('id').$type<OutcomeId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    traceId: text('trace_id')
      .$type<TraceId>()
      .notNull()
      .references(() => traces.id),
    takeId: text('take_id')
      .$type<TakeId>()
      .references(() => takes.id),
    ms: integer('ms'),
    outcome: text('outcome', { mode: 'json' }).$type<WiringOutcome>().notNull(),
    createdAt,
  },
  (t) => [index('outcomes_job').on(t.jobId), index('outcomes_trace').on(t.traceId)],
);

/** What the check at the jack is held against: one harness a job. */
export const harnesses = sqliteTable(
  'harnesses',
  {
    /** The job's own id, so that a job never has two. */
    id: text('id').$type<HarnessId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    harness: text('harness', { mode: 'json' }).$type<Harness>().notNull(),
    createdAt,
  },
  (t) => [uniqueIndex('harnesses_job').on(t.jobId)],
);

/** A spoken line, in take time. */
export const narrationLines = sqliteTable(
  'narration_lines',
  {
    id: text('id').$type<NarrationLineId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    takeId: text('take_id')
      .$type<TakeId>()
      .notNull()
      .references(() => takes.id),
    startMs: integer('start_ms').notNull(),
    endMs: integer('end_ms').notNull(),
    text: text('text').notNull(),
    voice: text('voice'),
    /** As it was heard, where a hand has corrected it. */
    heardText: text('heard_text'),
  },
  (t) => [index('narration_lines_job').on(t.jobId), index('narration_lines_take').on(t.takeId, t.startMs)],
);

/** Something heard that could go on the record, and what the repairer decided. */
export const proposals = sqliteTable(
  'proposals',
  {
    id: text('id').$type<ProposalId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    takeId: text('take_id')
      .$type<TakeId>()
      .notNull()
      .references(() => takes.id),
    /** The same words at the same place have the same key, so nothing is proposed twice. */
    key: text('key').notNull(),
    startMs: integer('start_ms').notNull(),
    endMs: integer('end_ms').notNull(),
    /** Type, words, confidence and payload, as heard or as changed on acceptance. */
    heard: text('heard', { mode: 'json' }).$type<HeardProposal>().notNull(),
    decision: text('decision').$type<'open' | 'accepted' | 'dismissed'>().notNull(),
    /** Where it was promised, when it is about what became of a promise. */
    promisedAt: text('promised_at', { mode: 'json' }).$type<{ takeId: TakeId; ms: number }>(),
    /** The marker or reading that acceptance made. */
    recordId: text('record_id'),
  },
  (t) => [uniqueIndex('proposals_key').on(t.jobId, t.key), index('proposals_take').on(t.takeId, t.startMs)],
);

/** How a job is handed over: what is published, what the documents say by hand, what was allowed. One a job. */
export const handOvers = sqliteTable(
  'hand_overs',
  {
    /** The job's own id, so that a job never has two. */
    id: text('id').$type<HandOverId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    cut: text('cut', { mode: 'json' }).$type<CutSettings>().notNull(),
    /** Sections of the episode notes in their order, with what was written by hand. */
    notes: text('notes', { mode: 'json' }).$type<unknown>().notNull(),
    summary: text('summary', { mode: 'json' }).$type<unknown>().notNull(),
    /** Ids of private findings that may go public all the same. */
    allowed: text('allowed', { mode: 'json' }).$type<string[]>().notNull(),
    createdAt,
  },
  (t) => [uniqueIndex('hand_overs_job').on(t.jobId)],
);

/** Public cuts that were written, and what a fresh look at each found. */
export const madeCuts = sqliteTable(
  'made_cuts',
  {
    id: text('id').$type<MadeCutId>().primaryKey(),
    jobId: text('job_id')
      .$type<JobId>()
      .notNull()
      .references(() => jobs.id),
    path: text('path').notNull(),
    result: text('result', { mode: 'json' }).$type<CutResult>().notNull(),
    inspection: text('inspection', { mode: 'json' }).$type<CutInspection>().notNull(),
    createdAt,
  },
  (t) => [index('made_cuts_job').on(t.jobId, t.createdAt)],
);

/**
 * What can be found in the record, spoken lines apart: its words stand in the index under the same number. All of it
 * is worked out from the record.
 */
export const archiveThings = sqliteTable(
  'archive_things',
  {
    /** Says job and kind too. */
    id: integer('id').primaryKey(),
    jobId: text('job_id').$type<JobId>().notNull(),
    recordId: text('record_id').notNull(),
    takeId: text('take_id').$type<TakeId>(),
    ms: integer('ms'),
    markerKind: text('marker_kind').$type<MarkerKind>(),
    readingKind: text('reading_kind').$type<ReadingKindId>(),
    baseValue: real('base_value'),
  },
  (t) => [
    index('archive_things_job').on(t.jobId),
    index('archive_things_value').on(t.readingKind, t.baseValue),
  ],
);

/** Takes as the index of spoken words knows them: what is said in a passage of it has a number made of the take's. */
export const archiveTakes = sqliteTable(
  'archive_takes',
  {
    id: integer('id').primaryKey(),
    takeId: text('take_id').$type<TakeId>().notNull(),
    jobId: text('job_id').$type<JobId>().notNull(),
    /** Number of the job. */
    job: integer('job').notNull(),
    day: text('day').notNull(),
    /** Passages in the index. */
    passages: integer('passages').notNull(),
  },
  (t) => [uniqueIndex('archive_takes_take').on(t.takeId), index('archive_takes_job').on(t.jobId)],
);

/** What has to be taken into the archive anew: noted by triggers of the database when the record changes. */
export const archiveStale = sqliteTable(
  'archive_stale',
  {
    jobId: text('job_id').$type<JobId>().notNull(),
    /** The take whose spoken lines changed; empty for the record beside them. */
    takeId: text('take_id').$type<TakeId | ''>().notNull(),
    /** Not changed, but prepared by older rules: it may wait. */
    atLeisure: integer('at_leisure', { mode: 'boolean' }).notNull(),
  },
  (t) => [
    uniqueIndex('archive_stale_part').on(t.jobId, t.takeId),
    index('archive_stale_when').on(t.atLeisure),
  ],
);

/** Every word that was taken in, for the nearest one to a slip of typing. */
export const archiveVocabulary = sqliteTable('archive_vocabulary', { word: text('word').primaryKey() });

/** Questions that the repairer keeps: the address of the archive page says them. */
export const savedQuestions = sqliteTable('saved_questions', {
  id: text('id').$type<SavedQuestionId>().primaryKey(),
  title: text('title').notNull(),
  /** What stands behind the question mark of the address. */
  search: text('search').notNull(),
  createdAt,
});
