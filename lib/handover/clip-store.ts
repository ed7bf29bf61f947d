import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { GoneError } from '@/db/changes';
import { type Database, home } from '@/db/open';
import { type Film, filmTimeOf, shortTime } from '@/lib/film';
import { filmOf, getTake, markersOf } from '@/lib/film/store';
import { getRecording, pathOfRecording } from '@/lib/media/store';
import { proposalsOf } from '@/lib/narration/store';
import { readingsOf } from '@/lib/readings/store';
import { supervisor } from '@/lib/tasks/store';
import { jobRow } from '@/lib/work/store';
import type { JobId, MarkerId, ReadingId, TakeId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { Take } from '@/shared/takes';
import { captionOf, clipSpanOf, clipSpecOf, coversAt, momentOf, type SavedLine } from './clip';
import { type FontName, fontBytes } from './fonts';
import { keptOf } from './kept-store';
import { openType, printable } from './summary/page/type';

type LineId = MarkerId | ReadingId;

/** A folder that a broken-off making has left behind goes after this. */
const keptMs = 24 * 3_600_000;
const pieceBytes = 1 << 18;

/** A clip on its way out. The file on disk goes when the stream has been read, or is given up. */
export interface SavedClip {
  fileName: string;
  bytes: ReadableStream<Uint8Array<ArrayBuffer>>;
}

/**
 * Cuts a marker or a reading out of the film for a message: exact, with the caption as title, without the tags of the
 * recording, and with what is private muted and covered as in the public cut.
 * @param lengthMs null for the usual length
 * @throws DomainError where the line, its moment or its recording is not there
 */
export async function clipOf(
  db: Database,
  jobId: JobId,
  lineId: LineId,
  lengthMs: number | null,
): Promise<SavedClip> {
  const line = lineOf(db, jobId, lineId);
  const film = filmOf(db, jobId);
  const { takeId, ms } = momentOf(film, line);
  const { path } = sourceOf(db, takeId);
  const span = clipSpanOf(film, line, lengthMs);
  const caption = captionOf(line);
  const spec = clipSpecOf(keptOf(db, jobId).cut, proposalsOf(db, jobId), () => path, { film, span, caption });
  const name = fileName(db, jobId, film, { takeId, ms }, 'clip');
  const folder = newFolder();
  try {
    const output = join(folder, 'clip.mp4');
    await supervisor().ask('cut', { ...spec, output, workFolder: folder });
    return { fileName: name, bytes: streamOf(await open(output), () => clear(folder)) };
  } catch (error) {
    clear(folder);
    throw error;
  }
}

/**
 * The very picture of a marker or a reading in the size of the recording, as JPEG with the caption below. Letters that
 * no font of the papers has are marked in the caption.
 * @throws DomainError where the line, its moment, its recording or the picture is not there
 */
export async function captionedStillOf(
  db: Database,
  jobId: JobId,
  lineId: LineId,
): Promise<{ fileName: string; jpeg: Uint8Array<ArrayBuffer> }> {
  const line = lineOf(db, jobId, lineId);
  const film = filmOf(db, jobId);
  const moment = momentOf(film, line);
  const { path, take } = sourceOf(db, moment.takeId);
  if (!take.probe?.video)
    throw new DomainError(
      'invalid',
      'This recording has no picture, so there is no still of it.',
      'Save a clip: it holds the sound.',
    );
  const name = fileName(db, jobId, film, moment, 'still');
  const folder = newFolder();
  try {
    const covers = coversAt(keptOf(db, jobId).cut, moment);
    const caption = runsOf(captionOf(line), folder);
    const jpeg = await supervisor().ask('captioned-still', { path, ms: moment.ms, covers, caption, folder });
    return { fileName: name, jpeg: new Uint8Array(z.instanceof(Uint8Array).parse(jpeg)) };
  } finally {
    clear(folder);
  }
}

function lineOf(db: Database, jobId: JobId, lineId: LineId): SavedLine {
  const marker = markersOf(db, jobId).find(({ id }) => id === lineId);
  if (marker) return { type: 'marker', marker };
  const reading = readingsOf(db, jobId).find(({ id }) => id === lineId);
  if (reading) return { type: 'reading', reading };
  throw new GoneError('line');
}

/** @throws DomainError where the recording is not there, or is not known yet */
function sourceOf(db: Database, takeId: TakeId): { path: string; take: Take } {
  const take = getTake(db, takeId);
  const path = pathOfRecording(db, getRecording(db, take.recordingId));
  if (take.probe) return { path, take };
  throw new DomainError(
    'unavailable',
    take.problem ?? 'The recording is still being looked at.',
    take.problem ? 'Look at the take on the film: it says what can be done.' : 'Try again in a moment.',
  );
}

/** The caption in runs of one font each; the fonts lie in the folder, where the worker finds them. */
function runsOf(caption: string, folder: string): { text: string; font: string }[] {
  const paths = new Map<FontName, string>();
  const pathOf = (name: FontName) => {
    const path = paths.get(name) ?? join(folder, `font-${paths.size}.ttf`);
    if (!paths.has(name)) writeFileSync(path, fontBytes(name));
    paths.set(name, path);
    return path;
  };
  const type = openType(() => 0);
  return type.runs(printable(caption), 'text').map(({ font, text }) => ({ text, font: pathOf(font) }));
}

/** "job-12-clip-at-1-05": letters, figures and hyphens, which any disk and any messenger takes. */
function fileName(
  db: Database,
  jobId: JobId,
  film: Film,
  moment: { takeId: TakeId; ms: number },
  what: 'clip' | 'still',
): string {
  const filmMs = filmTimeOf(film, moment)?.filmMs ?? 0;
  return `job-${jobRow(db, jobId).number}-${what}-at-${shortTime(filmMs).replaceAll(':', '-')}`;
}

/** A folder for one making; those that were left behind go. */
function newFolder(): string {
  const all = join(home(), 'clips');
  mkdirSync(all, { recursive: true });
  for (const name of readdirSync(all)) {
    const old = join(all, name);
    if (Date.now() - (statSync(old, { throwIfNoEntry: false })?.mtimeMs ?? 0) > keptMs) clear(old);
  }
  return mkdtempSync(join(all, 'making-'));
}

function clear(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}

function streamOf(file: FileHandle, onEnd: () => void): SavedClip['bytes'] {
  const end = async () => {
    await file.close();
    onEnd();
  };
  return new ReadableStream({
    async pull(controller) {
      const piece = new Uint8Array(pieceBytes);
      const { bytesRead } = await file.read(piece);
      if (bytesRead > 0) return controller.enqueue(piece.subarray(0, bytesRead));
      await end();
      controller.close();
    },
    cancel: end,
  });
}
