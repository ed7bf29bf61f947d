/**
 * Builds the server, its worker and the pages. `--if-stale`: only when a source is newer than the last build.
 * `--dev`: the server and the worker only; the pages are built as they are asked for.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const stampFile = 'dist/built-from';
const sources = [
  'app',
  'lib',
  'db',
  'shared',
  'server.ts',
  'next.config.mjs',
  'package-lock.json',
  'build.mjs',
  'tsconfig.json',
];

function filesUnder(path) {
  if (!existsSync(path)) return [];
  const entries = /\.\w+$/.test(path) ? null : readdirSync(path, { withFileTypes: true });
  if (!entries) return [path];
  return entries.flatMap((entry) =>
    entry.isDirectory() ? filesUnder(join(path, entry.name)) : [join(path, entry.name)],
  );
}

/** One hash over all sources: dates do not survive a checkout. */
function stamp() {
  const hash = createHash('sha256').update(process.version);
  for (const file of sources.flatMap(filesUnder).sort()) hash.update(file).update(readFileSync(file));
  return hash.digest('hex');
}

const now = stamp();
const upToDate =
  existsSync(stampFile) && readFileSync(stampFile, 'utf8') === now && existsSync('.next/BUILD_ID');
if (process.argv.includes('--if-stale') && upToDate) process.exit(0);

await build({
  entryPoints: { server: 'server.ts', worker: 'lib/tasks/worker.ts' },
  outdir: 'dist',
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  packages: 'external',
  sourcemap: 'linked',
  logLevel: 'warning',
});
/** Our modules do nothing by being imported: what a page does not use, such as contracts, stays out of its script. */
const onlyWhatIsUsed = {
  name: 'only-what-is-used',
  setup(on) {
    on.onResolve({ filter: /^(@\/|\.)/ }, async ({ path, importer, kind, resolveDir, pluginData }) => {
      if (pluginData === 'asked') return undefined;
      const found = await on.resolve(path, { importer, kind, resolveDir, pluginData: 'asked' });
      return { ...found, sideEffects: false };
    });
  },
};
// Goes out with the pages of the archive, and runs in whatever browser opens them.
await build({
  entryPoints: { 'archive-search': 'lib/archive/pages/search-script.ts' },
  outdir: 'dist',
  bundle: true,
  platform: 'browser',
  target: 'es2022',
  format: 'iife',
  minify: true,
  charset: 'ascii',
  logLevel: 'warning',
  plugins: [onlyWhatIsUsed],
});
if (!process.argv.includes('--dev')) {
  const next = join('node_modules', 'next', 'dist', 'bin', 'next');
  const { status } = spawnSync(process.execPath, [next, 'build'], {
    stdio: 'inherit',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  });
  if (status !== 0) process.exit(status ?? 1);
  writeFileSync(stampFile, now);
}
