import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

/** Bundles the worker as the build does, at a place from which its packages are found. */
export async function bundleWorker(): Promise<{ worker: string; remove: () => void }> {
  const cache = join(process.cwd(), 'node_modules', '.cache');
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'worker-'));
  const worker = join(folder, 'worker.mjs');
  await build({
    entryPoints: ['lib/tasks/worker.ts'],
    outfile: worker,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  return { worker, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
