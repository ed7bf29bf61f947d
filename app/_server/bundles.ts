import { Readable } from 'node:stream';

/** A ZIP as the answer to a request, written while it is read. */
export function zipAnswer(fileName: string, stream: Readable): Response {
  return new Response(webStream(stream), {
    headers: {
      'content-type': 'application/zip',
      'content-disposition': `attachment; filename="${fileName}"`,
      'cache-control': 'no-store',
    },
  });
}

/** The body of a request as it comes, and how long it says it is. */
export function sentBody(request: Request): { source: Readable; announcedBytes: number | null } {
  const length = request.headers.get('content-length');
  return {
    source: Readable.from(request.body ? piecesOf(request.body) : [], { objectMode: false }),
    announcedBytes: length !== null && /^\d+$/.test(length) ? Number(length) : null,
  };
}

function webStream(source: Readable): ReadableStream<Uint8Array> {
  const pieces = source[Symbol.asyncIterator]();
  return new ReadableStream({
    pull: async (to) => {
      const { done, value } = await pieces.next();
      if (done) to.close();
      else to.enqueue(value);
    },
    // Whoever reads has gone away: the recording that is being read is closed with the stream.
    cancel: () => {
      source.destroy();
    },
  });
}

async function* piecesOf(body: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = body.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    // Refused in the middle: what is still on its way is not wanted.
    await reader.cancel();
  }
}
