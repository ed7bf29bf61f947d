import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { and, eq, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { jobs, takes } from '@/db/schema';
import { getTake } from '@/lib/film/store';
import { listenResultSchema } from '@/lib/media';
import { folderOfRecording, getRecording, isSpeechModelFile, pathOfRecording } from '@/lib/media/store';
import { enqueueTask, type TaskHandlers } from '@/lib/tasks/store';
import { type RecordingId, type TakeId, takeIdSchema } from '@/shared/ids';
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
  const { recordingId } = getTake(db, takeId);
  return enqueueTask('listen', recordingId, { take: takeId, model: chosenModel(home, model) });
}

/** What becomes of what was heard: lines and proposals of the take that was listened to, as one change. */
export function listenResults(db: Database, home: string): Pick<TaskHandlers, 'listen'> {
  const heardFile = (id: RecordingId) => join(folderOfRecording(home, id), 'heard.srt');
  return {
    listen: {
      prepare: (id, { model }) => ({
        path: pathOfRecording(db, getRecording(db, id)),
        model: join(modelsFolder(home), chosenModel(home, model)),
        heard: heardFile(id),
      }),
      sayProgress: (partial) => linesHeard(partial).at(-1)?.text ?? '',
      onResult: (_id, result, { take }) => putIn(db, takeIdSchema.parse(take), linesHeard(result)),
      sayResult: (result) => {
        const { length } = linesHeard(result);
        return length === 0 ? 'No words were heard.' : `${length} ${length === 1 ? 'line' : 'lines'} heard.`;
      },
      // A worker that was ended in the middle of its work leaves it behind.
      onEnd: (id) => rmSync(heardFile(id), { force: true }),
      whenDown: () =>
        new DomainError(
          'unavailable',
          'The speech model did not get through this take.',
          'It may need more memory than there is, or its file may be damaged: copy it again, or use a smaller one.',
        ),
    },
  };
}

function chosenModel(home: string, name?: string): string {
  const models = speechModels(home);
  const chosen = name === undefined ? models[0] : models.find((model) => model.name === name);
  if (chosen) return chosen.name;
  throw new DomainError(
    'not-found',
    name === undefined ? 'There is no speech model on this machine.' : `There is no speech model ${name}.`,
    `Put a Whisper model in ggml layout (a .bin file) into ${modelsFolder(home)}, then try again. Nothing is downloaded by itself.`,
  );
}

/** Where no words were heard, what is there stays. The take may have gone from the bench meanwhile. */
function putIn(db: Database, takeId: TakeId, lines: readonly NarrationLine[]): void {
  if (lines.length === 0) return;
  const take = db
    .select({ jobId: takes.jobId })
    .from(takes)
    .innerJoin(jobs, eq(jobs.id, takes.jobId))
    .where(and(eq(takes.id, takeId), isNull(jobs.deletedAt)))
    .get();
  if (take) replaceLines(db, take.jobId, new Map([[takeId, lines]]));
}

/** Number and times of a SubRip cue. */
const cueHead = /^\d+\n.* --> .*$/gm;
/** How models write down what is no speech: "[BLANK_AUDIO]", "(drilling)". From memory. */
const soundNote = /^(?:\[[^\]]*\]|\([^)]*\)|\*[^*]*\*|[♪\s.])+$/u;

/** The words in what was heard. A model that hears none writes nothing, or cues without words: that is no error. */
function linesHeard(result: unknown): NarrationLine[] {
  const { captions, offsetMs } = listenResultSchema.parse(result);
  if (captions.replace(cueHead, '').trim() === '') return [];
  const { lines } = readCaptions(Buffer.from(captions), 'What was heard');
  return shiftLines(lines, offsetMs).filter(({ text }) => !soundNote.test(text));
}
