import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { jobs, takes } from '@/db/schema';
import { getTake } from '@/lib/film/store';
import { listenResultSchema } from '@/lib/media';
import { getRecording, isSpeechModelFile, pathOfRecording } from '@/lib/media/store';
import { enqueueTask, type TaskHandlers } from '@/lib/tasks/store';
import type { RecordingId, TakeId } from '@/shared/ids';
import type { NarrationLine } from '@/shared/narration';
import type { SpeechModel } from '@/shared/narration-record';
import { DomainError } from '@/shared/problem';
import type { Task } from '@/shared/tasks';
import { readCaptions, shiftLines } from './captions';
import { replaceLines } from './record-store';

/** Where the repairer puts speech models. */
export function modelsFolder(home: string): string {
  return join(home, 'models');
}

/** Speech models at hand: files ending in .bin that begin as ggml files do. */
export function speechModels(home: string): SpeechModel[] {
  const folder = modelsFolder(home);
  mkdirSync(folder, { recursive: true });
  return readdirSync(folder)
    .filter((name) => name.endsWith('.bin') && isSpeechModelFile(join(folder, name)))
    .map((name) => ({ name, sizeBytes: statSync(join(folder, name)).size }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Starts listening to a take. @throws DomainError where there is no such model */
export function listenTo(db: Database, home: string, takeId: TakeId, model?: string): Task {
  const models = speechModels(home);
  const chosen = model === undefined ? models[0] : models.find(({ name }) => name === model);
  if (!chosen) {
    throw new DomainError(
      'not-found',
      model === undefined
        ? 'There is no speech model on this machine.'
        : `There is no speech model ${model}.`,
      `Put a Whisper model in ggml layout (a .bin file) into ${modelsFolder(home)}, then try again. Nothing is downloaded by itself.`,
    );
  }
  return enqueueTask('listen', getTake(db, takeId).recordingId, { model: chosen.name });
}

/** What becomes of what was heard: lines and proposals, in every take of that recording, as one change each. */
export function listenResults(db: Database, home: string): Pick<TaskHandlers, 'listen'> {
  return {
    listen: {
      prepare: (id, { model = '' }) => ({
        path: pathOfRecording(db, getRecording(db, id)),
        model: join(modelsFolder(home), model),
      }),
      onProgress: (_id, partial) => linesHeard(partial).at(-1)?.text,
      onResult: (id, result) => {
        const lines = linesHeard(result);
        for (const take of takesOfRecording(db, id))
          replaceLines(db, take.jobId, new Map([[take.id, lines]]));
      },
    },
  };
}

/** A model that hears nothing writes nothing: that is no error. */
function linesHeard(result: unknown): NarrationLine[] {
  const { captions, offsetMs } = listenResultSchema.parse(result);
  if (captions.trim() === '') return [];
  return shiftLines(readCaptions(Buffer.from(captions), 'What was heard').lines, offsetMs);
}

function takesOfRecording(db: Database, id: RecordingId) {
  return db
    .select({ id: takes.id, jobId: takes.jobId, deletedAt: jobs.deletedAt })
    .from(takes)
    .innerJoin(jobs, eq(jobs.id, takes.jobId))
    .where(eq(takes.recordingId, id))
    .all()
    .filter(({ deletedAt }) => deletedAt === null);
}
