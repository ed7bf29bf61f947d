import { fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { reportSchema } from '@/lib/tasks/protocol';
import { ffmpeg, halfHour } from './recordings';
import { best, type Row } from './table';

/** Peaks of a half-hour film's sound, by the worker as the app drives it. */
export async function sound(): Promise<Row[]> {
  const path = halfHour();
  const folder = mkdtempSync(join(tmpdir(), 'benchtake-bench-peaks-'));
  const worker = fork('dist/worker.js', { serialization: 'advanced', execArgv: [] });
  await once(worker, 'message');
  let runs = 0;
  const ours = () =>
    new Promise<void>((resolve, reject) => {
      const id = ++runs;
      const hear = (message: unknown) => {
        const report = reportSchema.parse(message);
        if (report.type === 'ready' || report.type === 'progress') return;
        worker.off('message', hear);
        if (report.type === 'done') resolve();
        else reject(new Error(JSON.stringify(report)));
      };
      worker.on('message', hear);
      worker.send({ type: 'run', id, kind: 'sound', payload: { path, folder } });
    });
  try {
    const { ours: mine, reference } = await best(5, ours, () =>
      ffmpeg('-i', path, '-vn', '-ac', '1', '-ar', '8000', '-f', 's16le', '/dev/null'),
    );
    const gigabytes = (statSync(path).size / 1e9).toFixed(2);
    return [
      {
        name: `sound peaks, 30 minutes, ${gigabytes} GB`,
        ours: mine,
        reference,
        referenceName: 'ffmpeg -vn -ac 1 -ar 8000 to /dev/null',
        unit: 'ms',
        target: 'at most 1.0 ×',
      },
    ];
  } finally {
    worker.disconnect();
    rmSync(folder, { recursive: true });
  }
}
