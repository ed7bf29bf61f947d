import { execFileSync } from 'node:child_process';
import { startApp } from '../app';
import { nameFolder } from '../http/client';
import { archive } from './archive';
import { cut } from './cut';
import { film } from './film';
import { narration } from './narration';
import { page, zoom } from './page';
import { rack } from './rack';
import { cache, halfHour, threeHours } from './recordings';
import { sound } from './sound';
import { type Row, table } from './table';
import { wiring } from './wiring';

/** Measures, each figure beside its reference in the same run, and prints one table. Nothing fails by being slow. */
execFileSync(process.execPath, ['build.mjs', '--if-stale'], { stdio: 'inherit' });
console.error(`Recordings for the bench are kept in ${cache}; delete it when you like.`);
halfHour();
threeHours();
const app = await startApp();
const rows: Row[] = [];
const failures: string[] = [];
try {
  await nameFolder(app, cache);
  for (const group of [rack, archive, wiring, narration, sound, film, cut, page, zoom]) {
    try {
      rows.push(...(await group(app)));
    } catch (error) {
      // What the other groups measured still stands.
      failures.push(
        `${group.name} could not be measured: ${error instanceof Error ? error.message : String(error)}`,
      );
    }
  }
} finally {
  await app.clear();
}
console.log([table(rows), ...failures].join('\n'));
