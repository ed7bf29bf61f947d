import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { z } from 'zod';
import { chapterFormats } from '@/lib/handover';
import { cutViewSchema } from '@/shared/cut';
import { taskSchema } from '@/shared/tasks';
import type { App } from '../app';
import { addTake, ask, makeJob, settled } from '../http/client';
import { cache, halfHour } from './recordings';
import { type Row, time } from './table';

/** Not one that blocks: the connection to the app would be closed meanwhile. */
const command = promisify(execFile);
const runs = 2;
const minuteMs = 60_000;
/** Two words, early and late. */
const muted = [
  { fromMs: 100_000, toMs: 100_600 },
  { fromMs: 1_500_000, toMs: 1_500_500 },
];
const chapters = [0, 5, 12, 20, 27].map((minute, place, minutes) => ({
  startMs: minute * minuteMs,
  endMs: (minutes[place + 1] ?? 30) * minuteMs,
  title: `Part ${place + 1}`,
}));

/** A half-hour film out as a public cut by copy, with chapters and two muted words. */
export async function cut(app: App): Promise<Row[]> {
  const jobId = await readyToCut(app);
  const folder = mkdtempSync(join(cache, 'cut-'));
  const best = {
    ours: Number.POSITIVE_INFINITY,
    written: Number.POSITIVE_INFINITY,
    ffmpeg: Number.POSITIVE_INFINITY,
    cp: Number.POSITIVE_INFINITY,
  };
  const measure = async (name: keyof typeof best, work: () => unknown) => {
    best[name] = Math.min(best[name], await time(work));
  };
  try {
    for (let run = 0; run < runs; run++) {
      const [copied, written] = [join(folder, 'copied.mp4'), join(folder, 'written.mp4')];
      await measure('cp', () => command('cp', [halfHour(), copied]));
      rmSync(copied);
      await measure('ffmpeg', () => byCommandLine(folder, written));
      rmSync(written);
      const wishedAt = Date.now();
      await measure('ours', () => cutOnce(app, jobId));
      const ours = await newestCut(app, jobId);
      // Its last change was getting its name, whole and on disk.
      best.written = Math.min(best.written, statSync(ours).ctimeMs - wishedAt);
      rmSync(ours);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  const name = 'public cut by copy, 30 minutes, 1.4 GB';
  const commandLine = {
    reference: best.ffmpeg,
    referenceName: 'ffmpeg -c:v copy -af volume … -c:a aac -b:a 192k',
    unit: 'ms',
  };
  const row = { name, ours: best.written, unit: 'ms' };
  return [
    { ...commandLine, ...row, target: 'at most 1.2 ×' },
    {
      ...commandLine,
      name: `${name}, and looked at afresh`,
      ours: best.ours,
      target: 'the command line does not look',
    },
    { ...row, reference: best.cp, referenceName: 'cp of the same file', target: 'less is better' },
  ];
}

async function readyToCut(app: App): Promise<string> {
  const jobId = (await makeJob(app, 'Half an hour at the bench')).job.id;
  const { id: takeId } = await addTake(app, jobId, halfHour());
  await settled(app, jobId);
  for (const { startMs, title } of chapters)
    await ask(app, 'POST', `/api/jobs/${jobId}/markers`, { kind: 'work', title, takeId, ms: startMs });
  await ask(app, 'PATCH', `/api/jobs/${jobId}/cut`, { muted: muted.map((span) => ({ takeId, ...span })) });
  return jobId;
}

/** From the wish to the task that is done: the app also looks at the written file and measures its loudness. */
async function cutOnce(app: App, jobId: string): Promise<void> {
  const { body } = await ask(app, 'POST', `/api/jobs/${jobId}/exports/cut`);
  const { task } = z.object({ task: taskSchema }).parse(body);
  // The stream of a task ends with the task.
  await (await fetch(`${app.url}/api/tasks/${task.id}/events`)).text();
  const { state, message } = taskSchema.parse((await ask(app, 'GET', `/api/tasks/${task.id}`)).body);
  if (state !== 'done') throw new Error(`The cut ended as ${state}: ${message}`);
}

async function newestCut(app: App, jobId: string): Promise<string> {
  const { made } = cutViewSchema.parse((await ask(app, 'GET', `/api/jobs/${jobId}/cut`)).body);
  const [newest] = made;
  if (newest?.result.picture !== 'copied') throw new Error('The picture was not copied');
  return newest.path;
}

async function byCommandLine(folder: string, to: string): Promise<void> {
  const list = join(folder, 'chapters.ffmetadata');
  writeFileSync(list, chapterFormats.ffmetadata.write(chapters));
  const spans = muted.map(({ fromMs, toMs }) => `between(t,${fromMs / 1000},${toMs / 1000})`);
  await command('ffmpeg', [
    ...['-v', 'error', '-nostdin', '-y', '-i', halfHour(), '-f', 'ffmetadata', '-i', list],
    ...['-map', '0:v', '-map', '0:a', '-c:v', 'copy', '-c:a', 'aac', '-b:a', '192k'],
    ...['-af', `volume=enable='${spans.join('+')}':volume=0`],
    ...['-map_metadata', '-1', '-map_chapters', '1', to],
  ]);
}
