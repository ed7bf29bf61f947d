import { createWriteStream } from 'node:fs';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { FileStore } from '@tus/file-store';
import { Server } from '@tus/server';
import { problemSchema } from '@/shared/problem';
import { asProblem, problem, problemType } from './problem';

/** Keeps unfinished uploads as files, and lets a full disk be told from any other trouble. */
export class UploadFiles extends FileStore {
  override async write(readable: Readable, id: string, offset: number): Promise<number> {
    const file = createWriteStream(`${this.directory}/${id}`, { flags: 'r+', start: offset });
    await pipeline(readable, file);
    return offset + file.bytesWritten;
  }
}

/** tus 1.0 whose errors are RFC 9457 problems like everybody else's. */
export class TusServer extends Server {
  override write(...[context, headers, status, body]: Parameters<Server['write']>) {
    if (status < 400) return super.write(context, headers, status, body);
    headers.set('content-type', problemType);
    // Whatever else the sender had on its way is not wanted any more.
    if (status === 413 || status === 507) headers.set('connection', 'close');
    return super.write(context, headers, status, JSON.stringify(told(status, body ?? '')));
  }
}

/** What the library throws is a status with a line; anything else is an error of ours. */
export function mapped(error: unknown): { status_code: number; body: string } | undefined {
  if (!(error instanceof Error)) return undefined;
  const told = asProblem(error);
  return { status_code: told.status, body: JSON.stringify(told) };
}

const words: Readonly<Record<number, [title: string, detail: string]>> = {
  400: ['That is not an upload as tus 1.0 has it.', 'Send the headers that the protocol asks for.'],
  404: ['There is no such upload.', 'It was finished, cancelled or never begun: begin a new one.'],
  409: ['The upload stands elsewhere.', 'Ask with HEAD how far it is, and go on from there.'],
  410: ['The upload was too old and has been cleared.', 'Begin a new one.'],
  412: ['The version of the protocol is missing.', 'Send Tus-Resumable: 1.0.0.'],
  413: ['More was sent than was announced.', 'Begin a new upload with the right length.'],
};

function told(status: number, body: string) {
  const known = parsed(body);
  if (known) return known;
  const [title, detail] = words[status] ?? ['The upload was refused.', 'Begin it again.'];
  return problem(status, title, `${detail} (${body.trim()})`);
}

function parsed(body: string) {
  if (!body.startsWith('{')) return null;
  const read = problemSchema.safeParse(JSON.parse(body));
  return read.success ? read.data : null;
}
