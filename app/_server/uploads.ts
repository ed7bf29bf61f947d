import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { join } from 'node:path';
import type { Database } from '@/db/open';
import { addTake } from '@/lib/film/store';
import {
  clearOldUploads,
  lookAtRecording,
  receiveUpload,
  roomForUploads,
  sha256OfFile,
  uploadsFolder,
  uploadsKeptMs,
} from '@/lib/media/store';
import { jobRow } from '@/lib/work/store';
import type { JobId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import {
  type FinishedUpload,
  finishedUploadSchema,
  finishUploadSchema,
  uploadMetadataSchema,
  uploadsPath,
} from '@/shared/uploads';
import { mapped, TusServer, UploadFiles } from './tus';

type Upload = Awaited<ReturnType<UploadFiles['getUpload']>>;

const finishing = new RegExp(`^${uploadsPath}/([0-9a-f]{32})/finish$`);
const one = new RegExp(`^${uploadsPath}(/[0-9a-f]{32})?$`);

/** Longest body of a finishing request: one hash. */
const mostBytes = 1000;

/**
 * Recordings sent from other devices: tus 1.0 with creation, termination and expiration, then
 * `POST …/{upload}/finish {sha256}`, which makes a take of what arrived, or keeps nothing of it.
 * @param home the data folder; unfinished uploads older than a week are cleared from it
 */
export function uploadsIn(db: Database, home: string) {
  clearOldUploads(home, Date.now());
  const files = new UploadFiles({
    directory: uploadsFolder(home),
    expirationPeriodInMilliseconds: uploadsKeptMs,
  });
  const tus = new TusServer({
    path: uploadsPath,
    datastore: files,
    relativeLocation: true,
    allowedOrigins: () => false,
    onUploadCreate: async (_, upload) => {
      checkNew(db, home, upload);
      return {};
    },
    onResponseError: (_, error) => mapped(error),
  });
  const underWay = new Map<string, Promise<FinishedUpload>>();

  /** The same answer to everyone who asks while it is being worked out. */
  function finish(id: string, sha256: string): Promise<FinishedUpload> {
    const known = underWay.get(id);
    if (known) return known;
    const work = finishUpload(db, home, files, id, sha256).finally(() => underWay.delete(id));
    underWay.set(id, work);
    return work;
  }

  return async (request: IncomingMessage, response: ServerResponse, path: string): Promise<void> => {
    const id = finishing.exec(path)?.[1];
    if (id === undefined) {
      if (one.test(path) && request.method !== 'GET') return tus.handle(request, response);
      throw new DomainError('not-found', 'There is no such upload.', 'Begin a new one.');
    }
    if (request.method !== 'POST')
      throw new DomainError('not-found', 'An upload is finished by POST.', 'Send its SHA-256 with POST.');
    const { sha256 } = finishUploadSchema.parse(await jsonOf(request));
    const finished = await finish(id, sha256);
    response.writeHead(202, {
      'content-type': 'application/json',
      location: `/api/takes/${finished.take.id}`,
    });
    response.end(JSON.stringify(finished));
  };
}

function checkNew(db: Database, home: string, { size, metadata }: Upload): void {
  const { job } = uploadMetadataSchema.parse(metadata ?? {});
  openJob(db, job);
  if (size === undefined)
    throw new DomainError('invalid', 'The length is missing.', 'Send Upload-Length: the size of the file.');
  if (size === 0)
    throw new DomainError('invalid', 'The file is empty.', 'Look at it on the device: nothing was recorded.');
  const room = roomForUploads(home);
  if (size > room) throw new NoRoomError(size, room);
}

/** Told as 507 (RFC 4918, section 11.5), like a disk that fills up on the way. */
class NoRoomError extends Error {
  readonly code = 'ENOSPC';
  constructor(size: number, room: number) {
    super(`${size} bytes do not fit into ${room}`);
  }
}

function openJob(db: Database, id: JobId) {
  const job = jobRow(db, id);
  if (job.deletedAt !== null)
    throw new DomainError(
      'conflict',
      'That job lies in the bin.',
      'Bring it back from the bin first, or choose another job.',
    );
  return job;
}

async function finishUpload(
  db: Database,
  home: string,
  files: UploadFiles,
  id: string,
  sha256: string,
): Promise<FinishedUpload> {
  const done = join(uploadsFolder(home), `${id}.done`);
  const before = answerIn(done);
  if (before) return before;
  const upload = await wholeUpload(files, id);
  const path = join(uploadsFolder(home), id);
  if ((await sha256OfFile(path)) !== sha256) {
    await files.remove(id);
    throw new DomainError(
      'invalid',
      'What arrived is not what was sent.',
      'None of it was kept. Send the recording again; if it happens again, look at the network and at the memory card.',
    );
  }
  const finished = becomeTake(db, home, path, upload);
  writeFileSync(done, JSON.stringify(finished));
  await rm(`${path}.json`, { force: true });
  return finished;
}

async function wholeUpload(files: UploadFiles, id: string): Promise<Upload> {
  const upload = await files.getUpload(id).catch(() => null);
  if (!upload) throw new DomainError('not-found', 'There is no such upload.', 'Begin a new one.');
  if (upload.offset !== upload.size)
    throw new DomainError('conflict', 'Not all of it has arrived yet.', 'Send the rest, then finish it.', {
      offset: upload.offset,
      size: upload.size,
    });
  return upload;
}

function becomeTake(db: Database, home: string, path: string, { metadata }: Upload): FinishedUpload {
  const { job: jobId, filename, lastModified } = uploadMetadataSchema.parse(metadata);
  const job = openJob(db, jobId);
  const received = receiveUpload(db, home, { path, name: filename, jobNumber: job.number, lastModified });
  try {
    const { change, take } = addTake(db, jobId, received);
    return { change, take, task: lookAtRecording(db, take.recordingId) };
  } catch (error) {
    // Back where it was, so that finishing can be tried again.
    renameSync(received, path);
    throw error;
  }
}

/** What was answered when it was finished: an answer that got lost on the way can be asked for again. */
function answerIn(file: string): FinishedUpload | null {
  try {
    return finishedUploadSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

async function jsonOf(request: IncomingMessage): Promise<unknown> {
  let text = '';
  for await (const piece of request.setEncoding('utf8')) {
    text += piece;
    if (text.length > mostBytes)
      throw new DomainError('too-large', 'That is too much at once.', 'Send the SHA-256 alone.');
  }
  try {
    return JSON.parse(text);
  } catch {
    throw new DomainError('invalid', 'The body is not JSON.', 'Send {"sha256": "…"}.');
  }
}
