import { createReadStream, statSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { pipeline } from 'node:stream/promises';
import { ifRangeHolds, mediaTypeOf, readRange } from '@/lib/media';

/** Large pieces: fewer turns of the event loop a second of film. */
const pieceBytes = 1 << 20;

/** Serves a recording by RFC 9110: whole, in one range, or its headers only. The file closes with the connection. */
export async function serveFilm(
  request: IncomingMessage,
  response: ServerResponse,
  path: string,
): Promise<void> {
  const info = statSync(path);
  const lastModified = info.mtime.toUTCString();
  const entityTag = `"${info.size.toString(36)}-${Math.round(info.mtimeMs).toString(36)}"`;
  response.setHeader('content-type', mediaTypeOf(path));
  response.setHeader('accept-ranges', 'bytes');
  response.setHeader('etag', entityTag);
  response.setHeader('last-modified', lastModified);
  response.setHeader('cache-control', 'no-cache');
  if (request.headers['if-none-match'] === entityTag) return end(response, 304);
  // RFC 9110, section 14.2: Range is defined for GET only; a HEAD tells of the whole.
  const wanted =
    request.method === 'GET' && ifRangeHolds(header(request, 'if-range'), entityTag, lastModified)
      ? request.headers.range
      : undefined;
  const answer = readRange(wanted, info.size);
  if (answer.kind === 'unsatisfiable') {
    response.setHeader('content-range', `bytes */${info.size}`);
    return end(response, 416);
  }
  const { first, last } = answer.kind === 'part' ? answer.range : { first: 0, last: info.size - 1 };
  if (answer.kind === 'part') response.setHeader('content-range', `bytes ${first}-${last}/${info.size}`);
  response.setHeader('content-length', last - first + 1);
  response.statusCode = answer.kind === 'part' ? 206 : 200;
  if (request.method === 'HEAD' || info.size === 0) return end(response, response.statusCode);
  await send(path, first, last, response);
}

async function send(path: string, first: number, last: number, response: ServerResponse): Promise<void> {
  try {
    await pipeline(createReadStream(path, { start: first, end: last, highWaterMark: pieceBytes }), response);
  } catch (error) {
    // The page seeks by hanging up in the middle: pipeline has closed the file, and there is nobody to tell.
    if (!(error instanceof Error && 'code' in error && error.code === 'ERR_STREAM_PREMATURE_CLOSE'))
      throw error;
  }
}

function end(response: ServerResponse, status: number): void {
  response.statusCode = status;
  response.end();
}

function header(request: IncomingMessage, name: string): string | undefined {
  const value = request.headers[name];
  return Array.isArray(value) ? value[0] : value;
}
