import { readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { and, eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { changes, jobs, recordings, takes } from '@/db/schema';
import { addTake } from '@/lib/film/store';
import { liesIn, placeOf, recordingAt } from '@/lib/media/store';
import { readCaptions } from '@/lib/narration';
import { replaceLines } from '@/lib/narration/store';
import { noteAtLeisure } from '@/lib/tasks/store';
import { dayOf } from '@/lib/work';
import { addJob, patchJob } from '@/lib/work/store';
import type { BacklogProblem, Choice, PlannedTake, ProposedJob } from '@/shared/backlog';
import type { ChangeId, JobId, TakeId } from '@/shared/ids';
import type { NarrationLine } from '@/shared/narration';
import { DomainError } from '@/shared/problem';
import type { BacklogFileRow, BacklogRow } from './backlog-facts-store';

/** Longest captions file: a day of talk. */
const mostCaptionsBytes = 20_000_000;
/** Longest words on a ticket for where a thing stands. */
const mostPlaceLetters = 200;

/** A take to be made, with what is known of its recording. */
export interface Ready {
  planned: PlannedTake;
  file: BacklogFileRow;
  path: string;
}

/** A job of then: received on its first day and collected on its last, so that it does not hang among what is open. */
export function bookIn(
  db: Database,
  proposal: ProposedJob,
  choice: Choice | undefined,
  place: string,
): JobId {
  const day = proposal.day ?? dayOf(Date.now());
  const { id } = addJob(db, {
    title: choice?.title ?? proposal.title,
    instrument: { type: choice?.instrumentType ?? proposal.instrumentType },
    receivedOn: day,
    place,
  });
  patchJob(db, id, { state: 'collected', collectedOn: proposal.lastDay ?? day });
  return id;
}

/** The words by which a ticket tells that nobody booked the job in. */
export function folderWords({ under }: BacklogRow, top: string, { home }: ProposedJob): string {
  const begin = 'from older recordings, folder “';
  const folder = home || under || basename(top);
  const most = mostPlaceLetters - begin.length - 1;
  const letters = Array.from(folder);
  return `${begin}${letters.length > most ? `…${letters.slice(1 - most).join('')}` : folder}”`;
}

interface Filled {
  takes: number;
  lines: number;
  changes: ChangeId[];
}

/** Puts takes and what was said in them into a job. */
export function fill(
  db: Database,
  jobId: JobId,
  top: string,
  ready: readonly Ready[],
  problems: BacklogProblem[],
): Filled {
  const filled: Filled = { takes: 0, lines: 0, changes: [] };
  const spoken: { takeId: TakeId; planned: PlannedTake; path: string }[] = [];
  for (const { planned, file, path } of ready) {
    if (planned.captionsOnly) {
      spoken.push(...takesAt(db, jobId, file).map((takeId) => ({ takeId, planned, path })));
      continue;
    }
    know(db, file, path);
    const { change, take } = addTake(db, jobId, path);
    filled.takes += 1;
    filled.changes.push(change);
    spoken.push({ takeId: take.id, planned, path });
  }
  const heard = new Map(
    spoken.flatMap(({ takeId, planned, path }) => {
      const lines = linesBeside(top, path, planned, problems);
      return lines ? [[takeId, lines] as const] : [];
    }),
  );
  if (heard.size === 0) return filled;
  // All takes at once: what is proposed is worked out over the whole film each time.
  const { change, lines } = replaceLines(db, jobId, heard);
  filled.lines = lines;
  filled.changes.push(change);
  return filled;
}

/** What was made of another file that lay there before does not belong to it. */
const nothingReadYet = {
  ...{ peaks: null, soundRead: false, hints: null },
  ...{ stills: null, picturesRead: false, viewingCopy: false },
};

/** The recording at its place, with what was found out when it was looked at; its sound and stills may wait. */
function know(
  db: Database,
  { probe, fingerprint, sizeBytes, modifiedAt }: BacklogFileRow,
  path: string,
): void {
  const recording = recordingAt(db, placeOf(db, path));
  const same = recording.state === 'ready' && recording.fingerprint?.sha256 === fingerprint?.sha256;
  if (!same)
    db.update(recordings)
      .set({ probe, fingerprint, sizeBytes, modifiedAt, state: 'ready', problem: null, ...nothingReadYet })
      .where(eq(recordings.id, recording.id))
      .run();
  if (probe && probe.audio.length > 0 && !(same && recording.soundRead))
    noteAtLeisure(db, 'sound', recording.id);
  if (probe?.video && !(same && recording.picturesRead)) noteAtLeisure(db, 'pictures', recording.id);
}

function takesAt(db: Database, jobId: JobId, { placeFolderId, placePath }: BacklogFileRow): TakeId[] {
  return db
    .select({ id: takes.id })
    .from(takes)
    .innerJoin(recordings, eq(recordings.id, takes.recordingId))
    .where(
      and(eq(takes.jobId, jobId), eq(recordings.folderId, placeFolderId), eq(recordings.path, placePath)),
    )
    .all()
    .map(({ id }) => id);
}

/** What the first of the captions says that can be read; null, with a problem told, where none can. */
function linesBeside(
  top: string,
  recording: string,
  { captions, path }: PlannedTake,
  problems: BacklogProblem[],
): readonly NarrationLine[] | null {
  const failed: BacklogProblem[] = [];
  for (const name of captions) {
    try {
      const bytes = captionsAt(join(dirname(recording), name), top);
      return readCaptions(bytes, name).lines;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      const file = join(dirname(path), name);
      const detail = `${error.detail} Then import again: its words are put in, the take is there already.`;
      failed.push({ file, title: error.message, detail });
    }
  }
  problems.push(...failed);
  return null;
}

function captionsAt(path: string, top: string): Uint8Array {
  try {
    const real = realpathSync(path);
    if (!liesIn(top, real))
      throw new DomainError(
        'forbidden',
        'The captions lead out of the folder.',
        'Put the file itself there.',
      );
    if (statSync(real).size > mostCaptionsBytes)
      throw new DomainError(
        'too-large',
        'The file is too large for captions.',
        'Leave what is not said out of it.',
      );
    return readFileSync(real);
  } catch (error) {
    if (error instanceof DomainError) throw error;
    throw new DomainError(
      'unavailable',
      'The captions cannot be read.',
      'Do they still lie beside the recording?',
    );
  }
}

/**
 * The making of the job is no history: it goes into the bin as a whole. It hangs in the rack where it would if it had
 * been collected then.
 */
export function settle(db: Database, jobId: JobId, { day, lastDay }: ProposedJob): void {
  db.delete(changes).where(eq(changes.jobId, jobId)).run();
  const then = lastDay ?? day;
  if (then)
    db.update(jobs)
      .set({ updatedAt: Date.parse(`${then}T12:00`) })
      .where(eq(jobs.id, jobId))
      .run();
}
