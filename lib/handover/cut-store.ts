import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { desc, eq } from 'drizzle-orm';
import { z } from 'zod';
import { edit, GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import { type Database, home } from '@/db/open';
import { madeCuts } from '@/db/schema';
import { cutPlan } from '@/lib/media';
import { getRecording, pathOfRecording } from '@/lib/media/store';
import { proposalsOf } from '@/lib/narration/store';
import { activeTasksOf, enqueueJobTask, supervisor, type TaskHandlers } from '@/lib/tasks/store';
import { refuseIfChanged } from '@/lib/work';
import type { CutForecast, CutPatch, CutView, MadeCut } from '@/shared/cut';
import {
  type CutPlanSpec,
  cutFactsSchema,
  cutInspectionSchema,
  cutProgressSchema,
  cutResultSchema,
} from '@/shared/cut-engine';
import { type ChangeId, type JobId, type MadeCutId, madeCutIdSchema, type TakeId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Task } from '@/shared/tasks';
import { cutSpecOf } from './cut-spec';
import type { HandoverFacts } from './facts';
import { handoverFactsOf } from './facts-store';
import { findingsOf, refuseFindings } from './findings-store';
import { keep, keptOf } from './kept-store';
import { publicWords } from './public-words';
import { roughCutOf } from './rough-cut';

const cutDoneSchema = z.object({
  path: z.string(),
  result: cutResultSchema,
  inspection: cutInspectionSchema,
});

/** How the public cut is to be made, what stands in the way, and what was made. */
export function getCutView(db: Database, jobId: JobId, facts = handoverFactsOf(db, jobId)): CutView {
  const task = activeTasksOf(db, jobId).find(({ kind }) => kind === 'cut');
  return {
    settings: keptOf(db, jobId).cut,
    durationMs: facts.published.durationMs,
    roughCut: roughCutOf(facts.record.takes, proposalsOf(db, jobId)),
    findings: findingsOf(db, jobId, facts),
    made: madeCutsOf(db, jobId),
    task: task ?? null,
  };
}

export function patchCut(db: Database, jobId: JobId, { was, ...patch }: CutPatch): ChangeId {
  const { cut } = keptOf(db, jobId);
  refuseIfChanged(cut, patch, was);
  return edit(db, jobId, 'public cut changed', (e) => keep(db, e, jobId, { cut: { ...cut, ...patch } }))
    .change;
}

/**
 * Says how the cut would be made, before anything is made.
 * @throws DomainError where a recording is missing or nothing is kept
 */
export async function forecastCut(db: Database, jobId: JobId): Promise<CutForecast> {
  const facts = handoverFactsOf(db, jobId);
  const spec = specOf(db, facts);
  const found = cutFactsSchema.parse(await supervisor().ask('cut-facts', spec));
  const { pieces, ...plan } = cutPlan(spec, found);
  return {
    durationMs: plan.durationMs,
    picture: plan.picture,
    sound: plan.sound,
    pieces: pieces.map(({ parts, path: _, ...piece }, place) => ({
      ...piece,
      takeId: takeAt(facts, place),
      how: howOf(parts.map(({ how }) => how)),
    })),
  };
}

/**
 * Starts making the public cut. It goes on after a restart.
 * @throws FindingsError where something private is not decided on
 */
export function startCut(db: Database, jobId: JobId): Task {
  const facts = handoverFactsOf(db, jobId);
  refuseFindings(findingsOf(db, jobId, facts), 'cut');
  // Whatever stands in the way is told now, not when its turn comes.
  specOf(db, facts);
  return enqueueJobTask('cut', jobId);
}

/** What becomes of a cut that was written: it is kept with what a fresh look at the file found. */
export function cutResults(db: Database): Pick<TaskHandlers, 'cut'> {
  /** Files that are not kept yet. */
  const outputs = new Map<JobId, string>();
  return {
    cut: {
      prepare: (jobId) => {
        const facts = handoverFactsOf(db, jobId);
        refuseFindings(findingsOf(db, jobId, facts), 'cut');
        const spec = specOf(db, facts);
        const output = freeName(facts, keptOf(db, jobId).cut.format);
        outputs.set(jobId, output);
        return { ...spec, output, workFolder: workFolder(jobId) };
      },
      sayProgress: (partial) => stages[cutProgressSchema.parse(partial).stage],
      onResult: (jobId, result) => {
        const row = {
          id: newId(madeCutIdSchema),
          jobId,
          ...cutDoneSchema.parse(result),
          createdAt: Date.now(),
        };
        db.insert(madeCuts).values(row).run();
        outputs.delete(jobId);
        rmSync(workFolder(jobId), { recursive: true, force: true });
      },
      // Called off while the written file was looked at: it stands under its name, and on no list.
      onEnd: (jobId) => {
        const output = outputs.get(jobId);
        outputs.delete(jobId);
        if (output !== undefined) rmSync(output, { force: true });
      },
      sayResult: () => 'The public cut is written.',
      whenDown: () =>
        new DomainError(
          'unavailable',
          'The public cut could not be written: its worker went down.',
          'Try once more: pieces that were finished are used again. If it goes down again, cut by key frames, or leave out the take under way.',
        ),
    },
  };
}

/** The file of a made cut. @throws DomainError where it was moved or deleted */
export function pathOfCut(db: Database, id: MadeCutId): string {
  const { path } = cutRow(db, id);
  if (existsSync(path)) return path;
  throw new DomainError(
    'gone',
    'The public cut is not where it was written.',
    'Put it back, or make it again; the recordings are untouched.',
    { path },
  );
}

/** Takes a made cut off the list; its file stays where it is. */
export function removeCut(db: Database, id: MadeCutId): ChangeId {
  const { jobId } = cutRow(db, id);
  return edit(db, jobId, 'public cut taken off the list', (e) => e.remove('madeCuts', id)).change;
}

const stages: Record<z.infer<typeof cutProgressSchema>['stage'], string> = {
  looking: 'Looking where it can be cut',
  encoding: 'Encoding pictures',
  measuring: 'Measuring loudness',
  writing: 'Writing the film',
  closing: 'Closing the file',
};

function madeCutsOf(db: Database, jobId: JobId): MadeCut[] {
  return db
    .select()
    .from(madeCuts)
    .where(eq(madeCuts.jobId, jobId))
    .orderBy(desc(madeCuts.createdAt))
    .all()
    .map((row) => ({ ...row, present: existsSync(row.path) }));
}

function cutRow(db: Database, id: MadeCutId) {
  const row = db.select().from(madeCuts).where(eq(madeCuts.id, id)).get();
  if (!row) throw new GoneError('public cut');
  return row;
}

function specOf(db: Database, { record, published, chapters }: HandoverFacts): CutPlanSpec {
  refuseUnread(record.takes);
  if (published.durationMs === 0) {
    throw new DomainError(
      'invalid',
      'There is nothing to cut.',
      record.takes.length === 0 ? 'Add a take first.' : 'All of it is left out: keep a part of the film.',
    );
  }
  const recordings = new Map(record.takes.map(({ id, recordingId }) => [id, recordingId]));
  const pathOf = (takeId: TakeId) => {
    const id = recordings.get(takeId);
    if (!id) throw new GoneError('take');
    return pathOfRecording(db, getRecording(db, id));
  };
  const title = publicWords(record.job.title, record);
  const { cut } = keptOf(db, record.job.id);
  return cutSpecOf(cut, published, proposalsOf(db, record.job.id), pathOf, { title, chapters });
}

/** The length of such a take is not known: it would be left out without a word. */
function refuseUnread(takes: HandoverFacts['record']['takes']): void {
  const unread = takes.find(({ durationMs }) => durationMs === 0);
  if (!unread) return;
  const isNew = unread.state === 'new';
  throw new DomainError(
    isNew ? 'unavailable' : 'conflict',
    isNew ? `“${unread.name}” has not been looked at yet.` : `“${unread.name}” cannot be read.`,
    isNew
      ? 'Wait until it shows how long it is, then try again.'
      : 'Copy it from the camera again and let it be looked at, or take it out of the job.',
    { takeId: unread.id },
  );
}

function takeAt({ published }: HandoverFacts, place: number): TakeId {
  const piece = published.pieces[place];
  if (!piece) throw new Error(`The cut has no piece ${place}`);
  return piece.takeId;
}

function howOf(hows: readonly ('copy' | 'encode')[]): CutForecast['pieces'][number]['how'] {
  if (hows.length === 0) return 'no picture';
  if (hows.every((how) => how === 'copy')) return 'copied';
  return hows.includes('copy') ? 'partly copied' : 'encoded';
}

/** Finished pieces wait here, until the whole is written. */
function workFolder(jobId: JobId): string {
  return join(home(), 'cutting', jobId);
}

/** A name that no earlier cut has: nothing is written over. */
function freeName({ record }: HandoverFacts, format: string): string {
  const folder = join(home(), 'handed-over', `job-${String(record.job.number).padStart(4, '0')}`);
  mkdirSync(folder, { recursive: true });
  for (let nth = 1; ; nth++) {
    const path = join(folder, `public-cut${nth === 1 ? '' : `-${nth}`}.${format}`);
    if (!existsSync(path)) return path;
  }
}
