/** A text as the answer to a request, written piece by piece while it is read. */
export function textDownload(
  fileName: string,
  contentType: string,
  pieces: AsyncGenerator<string>,
): Response {
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    pull: async (to) => {
      const { done, value } = await pieces.next();
      if (done) to.close();
      else to.enqueue(encoder.encode(value));
    },
    cancel: async () => {
      await pieces.return(undefined);
    },
  });
  return new Response(body, {
    headers: {
      'content-type': contentType,
      'content-disposition': `attachment; filename="${fileName}"`,
      'cache-control': 'no-store',
    },
  });
}

/** "archive-moments", or "archive-everything-private-moments": the name warns whoever finds the file. */
export function downloadName(scope: 'public' | 'everything', what: string): string {
  return ['archive', ...(scope === 'everything' ? ['everything-private'] : []), what].join('-');
}
