/** Builds what is tested, runs every test and closes with one line that counts them. Arguments go to vitest. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const run = (...words) => spawnSync(process.execPath, words, { stdio: 'inherit' }).status ?? 1;

if (run('build.mjs', '--if-stale') !== 0) {
  console.log('0 passed, 1 failed');
  process.exit(1);
}
const folder = mkdtempSync(join(tmpdir(), 'benchtake-run-'));
const report = join(folder, 'report.json');
const status = run(
  'node_modules/vitest/vitest.mjs',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
);
const { numPassedTests, numFailedTests, numFailedTestSuites, numTotalTests } = JSON.parse(
  readFileSync(report, 'utf8'),
);
rmSync(folder, { recursive: true });
// A file that could not even be loaded fails without a test of its own.
const failed = numFailedTests > 0 ? numFailedTests : status === 0 ? 0 : Math.max(1, numFailedTestSuites);
console.log(`${numPassedTests} passed, ${failed} failed`);
process.exit(status !== 0 || failed > 0 || numTotalTests === 0 ? 1 : 0);
