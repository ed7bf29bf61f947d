import { asc, eq, inArray } from 'drizzle-orm';
import { type Edit, edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import {
  folders,
  markers,
  narrationLines,
  outcomes,
  proposals,
  readings,
  recordings,
  takes,
} from '@/db/schema';
import { getRecording, moveRecording, placeOf, recordingAt } from '@/lib/media/store';
import {
  type ChangeId,
  type JobId,
  type MarkerId,
  markerIdSchema,
  type TakeId,
  takeIdSchema,
} from '@/shared/ids';
import type { Marker, MarkerPatch, NewMarker } from '@/shared/markers';
import { DomainError } from '@/shared/problem';
import type { Take, TakePatch } from '@/shared/takes';
import { type ClockTake, layOut } from './clock';
import { inFilmOrder, moved } from './order';

type TakeRow = typeof takes.$inferSelect;

/** The takes of a job in film order. */
export function takesOf(db: Database, jobId: JobId): Take[] {
  return takesOfJobs(db, [jobId]).get(jobId) ?? [];
}

/** The takes of many jobs, each in film order. */
export function takesOfJobs(db: Database, jobIds: readonly JobId[]): Map<JobId, Take[]> {
  const rows = db
    .select({ take: takes, recording: recordings, folder: folders })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .innerJoin(folders, eq(folders.id, recordings.folderId))
    .where(inArray(takes.jobId, [...jobIds]))
    .all()
    .map((row) => ({ ...describe(row), position: row.take.position }));
  const byJob = new Map<JobId, Take[]>();
  for (const { position: _, ...take } of inFilmOrder(rows))
    byJob.set(take.jobId, [...(byJob.get(take.jobId) ?? []), take]);
  return byJob;
}

export function getTake(db: Database, id: TakeId): Take {
  const found = takesOf(db, takeRow(db, id).jobId).find((take) => take.id === id);
  if (!found) throw new GoneError('take');
  return found;
}

/** What the film clock needs of a take. */
export function onClock(take: Take): ClockTake {
  return {
    id: take.id,
    durationMs: take.durationMs,
    trimStartMs: take.trimStartMs,
    trimEndMs: take.trimEndMs,
  };
}

/** Puts a recording, where it lies, into the film. A film ordered by hand gets it at the end. */
export function addTake(db: Database, jobId: JobId, path: string): { change: ChangeId; take: Take } {
  const recording = recordingAt(db, placeOf(db, path));
  const siblings = rowsOf(db, jobId);
  if (siblings.some((take) => take.recordingId === recording.id)) {
    throw new DomainError(
      'conflict',
      'That recording is already a take of this job.',
      'Pick another one, or look for it on the film.',
      { path },
    );
  }
  const byHand = siblings.flatMap((take) => (take.position === null ? [] : [take.position]));
  const row: TakeRow = {
    id: newId(takeIdSchema),
    jobId,
    recordingId: recording.id,
    position: byHand.length > 0 ? Math.max(...byHand) + 1 : null,
    trimStartMs: 0,
    trimEndMs: null,
    createdAt: Date.now(),
  };
  const { change } = edit(db, jobId, 'take added', (e) => e.insert('takes', row));
  return { change, take: getTake(db, row.id) };
}

export function patchTake(
  db: Database,
  id: TakeId,
  patch: TakePatch,
): { change: ChangeId | null; take: Take } {
  const row = takeRow(db, id);
  const trims = trimsOf(row, patch);
  if (patch.path !== undefined) moveRecording(db, getRecording(db, row.recordingId), placeOf(db, patch.path));
  const order = patch.index === undefined ? null : takesOf(db, row.jobId).map((take) => take.id);
  if (!trims && !order) return { change: null, take: getTake(db, id) };
  const { change } = edit(db, row.jobId, order ? 'takes re-ordered' : 'take trimmed', (e) => {
    if (trims) e.update('takes', id, trims);
    if (order)
      moved(order, order.indexOf(id), patch.index ?? 0).forEach((takeId, position) => {
        e.update('takes', takeId, { position });
      });
  });
  return { change, take: getTake(db, id) };
}

/** Lets the film follow the recorded-at times again. */
export function orderByClock(db: Database, jobId: JobId): ChangeId {
  return edit(db, jobId, 'takes ordered by the camera clock', (e) => {
    for (const take of rowsOf(db, jobId)) e.update('takes', take.id, { position: null });
  }).change;
}

/** Takes a take out of the job with its markers and narration; readings and joints stay, without a moment. The recording is untouched. */
export function removeTake(db: Database, id: TakeId): ChangeId {
  const row = takeRow(db, id);
  return edit(db, row.jobId, 'take deleted', (e) => {
    for (const marker of db.select().from(markers).where(eq(markers.takeId, id)).all())
      e.remove('markers', marker.id);
    for (const reading of db.select().from(readings).where(eq(readings.takeId, id)).all()) {
      e.update('readings', reading.id, { takeId: null, ms: null });
    }
    for (const outcome of db.select().from(outcomes).where(eq(outcomes.takeId, id)).all()) {
      e.update('outcomes', outcome.id, { takeId: null, ms: null });
    }
    for (const line of db.select().from(narrationLines).where(eq(narrationLines.takeId, id)).all())
      e.remove('narrationLines', line.id);
    for (const proposal of db.select().from(proposals).where(eq(proposals.takeId, id)).all())
      e.remove('proposals', proposal.id);
    e.remove('takes', id);
  }).change;
}

export function markersOf(db: Database, jobId: JobId): Marker[] {
  return db
    .select()
    .from(markers)
    .where(eq(markers.jobId, jobId))
    .orderBy(asc(markers.ms))
    .all()
    .map(asMarker);
}

export function addMarker(
  db: Database,
  jobId: JobId,
  wanted: NewMarker,
): { change: ChangeId; marker: Marker } {
  const { change, value } = edit(db, jobId, `${wanted.kind} marker dropped`, (e) =>
    insertMarker(db, e, jobId, wanted),
  );
  return { change, marker: value };
}

/** Drops a marker as part of a larger change. */
export function insertMarker(db: Database, e: Edit, jobId: JobId, wanted: NewMarker): Marker {
  momentInJob(db, jobId, wanted.takeId, wanted.ms, wanted.endMs);
  const row = {
    id: newId(markerIdSchema),
    jobId,
    takeId: wanted.takeId,
    kind: wanted.kind,
    title: wanted.title || titleFor(wanted.kind),
    note: wanted.note ?? null,
    ms: wanted.ms,
    endMs: wanted.endMs ?? null,
    public: wanted.public,
    createdAt: Date.now(),
  };
  e.insert('markers', row);
  return asMarker(row);
}

export function patchMarker(
  db: Database,
  id: MarkerId,
  patch: MarkerPatch,
): { change: ChangeId; marker: Marker } {
  const row = markerRow(db, id);
  const next = { ...row, ...patch };
  momentInJob(db, row.jobId, next.takeId, next.ms, next.endMs);
  const { change } = edit(db, row.jobId, labelFor(patch), (e) => e.update('markers', id, patch));
  return { change, marker: asMarker(next) };
}

export function removeMarker(db: Database, id: MarkerId): ChangeId {
  const row = markerRow(db, id);
  return edit(db, row.jobId, `marker “${row.title}” deleted`, (e) => e.remove('markers', id)).change;
}

/** Checks that a moment lies on a take of this job, inside the recording where its length is known. */
export function momentInJob(
  db: Database,
  jobId: JobId,
  takeId: TakeId,
  ms: number,
  endMs?: number | null,
): void {
  const take = takesOf(db, jobId).find((candidate) => candidate.id === takeId);
  if (!take)
    throw new DomainError(
      'invalid',
      'That take is not part of this job.',
      'Choose a take of the job’s own film.',
      { takeId },
    );
  if (endMs != null && endMs <= ms) {
    throw new DomainError(
      'invalid',
      'The span ends before it starts.',
      'Move its end behind its start, or make it a point.',
      { ms, endMs },
    );
  }
  const latest = endMs ?? ms;
  if (take.probe && latest > take.durationMs) {
    throw new DomainError(
      'invalid',
      'That moment lies behind the end of the take.',
      `The take is ${take.durationMs} ms long.`,
      { ms: latest, durationMs: take.durationMs },
    );
  }
}

function rowsOf(db: Database, jobId: JobId): TakeRow[] {
  return db.select().from(takes).where(eq(takes.jobId, jobId)).all();
}

function takeRow(db: Database, id: TakeId): TakeRow {
  const row = db.select().from(takes).where(eq(takes.id, id)).get();
  if (!row) throw new GoneError('take');
  return row;
}

function markerRow(db: Database, id: MarkerId) {
  const row = db.select().from(markers).where(eq(markers.id, id)).get();
  if (!row) throw new GoneError('marker');
  return row;
}

function asMarker({ createdAt: _, ...marker }: typeof markers.$inferSelect): Marker {
  return marker;
}

function trimsOf(row: TakeRow, patch: TakePatch): { trimStartMs: number; trimEndMs: number | null } | null {
  if (patch.trimStartMs === undefined && patch.trimEndMs === undefined) return null;
  const trimStartMs = patch.trimStartMs ?? row.trimStartMs;
  const trimEndMs = patch.trimEndMs === undefined ? row.trimEndMs : patch.trimEndMs;
  if (trimEndMs !== null && trimEndMs <= trimStartMs) {
    throw new DomainError(
      'invalid',
      'The take would end before it starts.',
      'Leave at least a moment between its start and its end.',
      { trimStartMs, trimEndMs },
    );
  }
  return { trimStartMs, trimEndMs };
}

function titleFor(kind: string): string {
  return kind.charAt(0).toUpperCase() + kind.slice(1);
}

function labelFor(patch: MarkerPatch): string {
  if (patch.ms !== undefined || patch.takeId !== undefined) return 'marker moved';
  return patch.title === undefined ? 'marker changed' : 'marker named';
}

function describe(row: {
  take: TakeRow;
  recording: typeof recordings.$inferSelect;
  folder: typeof folders.$inferSelect;
}): Take {
  const { take, recording, folder } = row;
  return {
    id: take.id,
    jobId: take.jobId,
    recordingId: recording.id,
    trimStartMs: take.trimStartMs,
    trimEndMs: take.trimEndMs,
    name: recording.path.split('/').at(-1) ?? recording.path,
    path: `${folder.path.replace(/[\\/]$/, '')}/${recording.path}`,
    state: recording.state,
    problem: recording.problem,
    durationMs: recording.probe?.durationMs ?? 0,
    recordedAt: recordedAt(recording, folder.clockOffsetMinutes),
    probe: recording.probe ?? null,
    peaks: recording.peaks ?? [],
    stills: recording.stills ?? [],
    hints: recording.hints ?? null,
    viewingCopy: recording.viewingCopy,
  };
}

/** A camera that writes its own time as UTC is set right by the folder's offset; zoned times need none. */
function recordedAt(recording: typeof recordings.$inferSelect, offsetMinutes: number): number {
  const known = recording.probe?.recordedAt;
  if (!known) return recording.modifiedAt;
  return known.source === 'utc' ? known.epochMs + offsetMinutes * 60_000 : known.epochMs;
}

/** The film of a job, laid on its clock. */
export function filmOf(db: Database, jobId: JobId) {
  return layOut(takesOf(db, jobId).map(onClock));
}
