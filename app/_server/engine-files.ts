import { createReadStream, statSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';

const find = createRequire(import.meta.url);

/** Folders of ffmpeg.wasm as it was installed, by their name in the address. */
const folders = {
  ffmpeg: () => dirname(find.resolve('@ffmpeg/ffmpeg/worker')),
  core: () => dirname(find.resolve('@ffmpeg/core/wasm')).replace(/umd$/, 'esm'),
} as const;
const address = /^\/engine\/[\d.-]+\/(ffmpeg|core)\/([a-z-]+)\.(js|wasm)$/;
const types = { js: 'text/javascript; charset=utf-8', wasm: 'application/wasm' } as const;

/** A worker has the policy of its own file: ours alone, and the core may be compiled. */
const workerPolicy = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; object-src 'none'";

/** The file of ffmpeg.wasm that an address names; null where it names none. */
export function engineFileAt(path: string): { file: string; type: string } | null {
  const [, folder, name, ending] = address.exec(path) ?? [];
  if ((folder !== 'ffmpeg' && folder !== 'core') || (ending !== 'js' && ending !== 'wasm')) return null;
  const file = join(folders[folder](), `${name}.${ending}`);
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? { file, type: types[ending] } : null;
}

/** Serves a file of ffmpeg.wasm, to be kept for ever: its version stands in the address. */
export async function serveEngineFile(
  request: IncomingMessage,
  response: ServerResponse,
  { file, type }: { file: string; type: string },
): Promise<void> {
  response.setHeader('content-type', type);
  response.setHeader('content-length', statSync(file).size);
  response.setHeader('cache-control', 'public, max-age=31536000, immutable');
  response.setHeader('content-security-policy', workerPolicy);
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  try {
    await pipeline(createReadStream(file, { highWaterMark: 1 << 20 }), response);
  } catch (error) {
    // The page was left while the core was on its way: nobody is there to be told.
    if (!(error instanceof Error && 'code' in error && error.code === 'ERR_STREAM_PREMATURE_CLOSE'))
      throw error;
  }
}
