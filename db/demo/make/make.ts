/**
 * Makes the recordings of the demonstration job anew: `npx tsx db/demo/make/make.ts [take-1 …]`.
 * Needs Debian's ffmpeg, chromium, espeak-ng and sox. Nothing of it runs in the app.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { demoJob } from '../demo-job';
import { toWebVtt } from './captions';
import { problemsOf } from './check';
import { encodeTake, writeSound } from './encode';
import { drawMoment, framesPerSecond, openStage } from './picture';
import { mixTake, voiceLines } from './sound/mix';
import { takes } from './takes';
import type { TakeScript } from './takes/script';
import { speak } from './voice';

const media = fileURLToPath(new URL('../media/', import.meta.url));

async function* picturesOf(page: Page, take: TakeScript): AsyncGenerator<Buffer> {
  const index = takes.indexOf(take);
  const count = Math.round((take.lengthMs / 1000) * framesPerSecond);
  for (let i = 0; i < count; i += 1) {
    yield await drawMoment(page, index, (i * 1000) / framesPerSecond, 'image/jpeg');
  }
}

async function makeTake(page: Page, take: TakeScript, scratch: string): Promise<void> {
  const voiced = voiceLines(take, (text) => speak(text, scratch));
  writeFileSync(join(media, `${take.name}.vtt`), toWebVtt(voiced));
  const sound = writeSound(mixTake(take, voiced), join(scratch, `${take.name}.f32`));
  await encodeTake(take, picturesOf(page, take), sound, join(media, `${take.name}.mp4`));
  console.log(`${take.name} is made`);
}

async function main(wanted: string[]): Promise<void> {
  const problems = problemsOf(demoJob, takes);
  if (problems.length > 0) throw new Error(problems.join('\n'));
  const scratch = mkdtempSync(join(tmpdir(), 'demo-job-'));
  const stage = await openStage();
  try {
    for (const take of takes) {
      if (wanted.length === 0 || wanted.includes(take.name)) await makeTake(stage.page, take, scratch);
    }
  } finally {
    await stage.close();
    rmSync(scratch, { recursive: true });
  }
}

await main(process.argv.slice(2));
