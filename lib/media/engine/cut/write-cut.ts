import { existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { CutChapter, CutFacts, CutLoudness, CutProgress, CutResult, CutSpec } from '@/shared/cut-engine';
import { type CutPlan, chaptersInCut, cutPlan } from '../../cut';
import type { Watch } from '../pace';
import { assemble } from './assemble';
import { chapterWriters } from './chapters';
import { containerOf } from './container';
import { CutExistsError, freeBytes, isFull, NoRoomError } from './errors';
import { cutFacts } from './facts';
import { LoudnessMeter } from './loudness';
import { encodedMs, finishPictures } from './pieces';
import { ProgressTeller } from './progress';
import { checkRoom, expectedBytes } from './room';
import { SampleFrames } from './sample-frames';
import { soundLine } from './sound-line';
import { samplesSource } from './sound-mixer';

/** Steps of the meter, by EBU Tech 3341. */
const metersPerSecond = 10;

/**
 * Writes a public cut: kept pieces of takes in order, muted and covered where it is asked for, without any tag of the
 * sources. The file appears under its name when it is whole and on disk; recordings are only read. Throws a DomainError
 * for what a person can mend, and leaves nothing but finished pieces in the work folder.
 */
export async function writeCut(spec: CutSpec, watch: Watch<CutProgress>): Promise<CutResult> {
  if (existsSync(spec.output)) throw new CutExistsError(spec.output);
  const looking: Watch = { signal: watch.signal, report: () => watch.report(0) };
  const facts = await cutFacts(spec, looking);
  const plan = cutPlan(spec, facts);
  const needed = expectedBytes(plan, facts, sizesOf(spec));
  mkdirSync(dirname(spec.output), { recursive: true });
  checkRoom(spec.output, needed);
  const unfinished = `${spec.output}.part`;
  try {
    const made = await make(spec, plan, facts, unfinished, watch);
    renameSync(unfinished, spec.output);
    return { ...made, sizeBytes: statSync(spec.output).size };
  } catch (error) {
    throw isFull(error) ? new NoRoomError(needed, leastFree(spec)) : error;
  } finally {
    rmSync(unfinished, { force: true });
  }
}

async function make(
  spec: CutSpec,
  plan: CutPlan,
  facts: CutFacts,
  to: string,
  watch: Watch<CutProgress>,
): Promise<Omit<CutResult, 'sizeBytes'>> {
  const tell = new ProgressTeller(watch, {
    encoding: encodedMs(plan),
    measuring: spec.loudness && plan.sound === 'encoded' ? plan.durationMs : 0,
    writing: plan.durationMs,
  });
  const chapters = chaptersInCut(spec, plan);
  await tell.begin('encoding');
  const { stretches, reused } = await finishPictures(spec, plan, facts, tell);
  const measured = spec.loudness && plan.sound === 'encoded' ? await measure(spec, plan, tell) : null;
  await tell.begin('writing');
  await assemble({ spec, plan, facts, stretches, chapters, measured, to }, tell);
  await tell.begin('closing');
  finishFile(to, spec, chapters, plan.durationMs);
  await sync(to, watch);
  return {
    durationMs: plan.durationMs,
    pieces: plan.pieces.map(({ path, fromMs, toMs, outMs }) => ({ path, fromMs, toMs, outMs })),
    chapters,
    picture: plan.picture,
    sound: plan.sound,
    measured,
    reusedPieces: reused,
  };
}

/** The first of two passes: over the sound as it will be published. */
async function measure(spec: CutSpec, plan: CutPlan, tell: ProgressTeller): Promise<CutLoudness> {
  await tell.begin('measuring');
  const { soundFormat } = plan;
  const meter = new LoudnessMeter(samplesSource(soundFormat));
  const frames = new SampleFrames(soundFormat, soundFormat.sampleRateHz / metersPerSecond, (frame) =>
    meter.push(frame),
  );
  try {
    for (const _ of soundLine(plan, spec, frames)) {
      if (tell.due) await tell.rest((frames.count * 1000) / soundFormat.sampleRateHz);
    }
    frames.finish();
    return meter.result();
  } finally {
    frames.free();
    meter.free();
  }
}

function finishFile(
  path: string,
  { output }: CutSpec,
  chapters: readonly CutChapter[],
  durationMs: number,
): void {
  if (chapters.length > 0) chapterWriters[containerOf(output)].add(path, chapters, durationMs);
}

/** A slow disk may take its time: somebody who watches must hear that the work goes on. */
async function sync(path: string, watch: Watch<CutProgress>): Promise<void> {
  const file = await open(path, 'r+');
  const beat = setInterval(() => watch.report(1, { stage: 'closing', doneMs: 0, totalMs: 0 }), 1000);
  try {
    await file.sync();
  } finally {
    clearInterval(beat);
    await file.close();
  }
  watch.signal.throwIfAborted();
}

/** Pieces and cut may lie on different disks. */
function leastFree({ output, workFolder }: CutSpec): number {
  return Math.min(...[dirname(output), workFolder].map(freeBytes));
}

function sizesOf({ pieces }: CutSpec): Record<string, number> {
  return Object.fromEntries(pieces.map(({ path }) => [path, statSync(path).size]));
}
