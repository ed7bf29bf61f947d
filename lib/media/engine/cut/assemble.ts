import type { Packet } from 'node-av/lib';
import type { CutChapter, CutFacts, CutLoudness, CutSpec } from '@/shared/cut-engine';
import type { CutPlan } from '../../cut';
import { mergeAvc } from './avc-settings';
import { chapterWriters } from './chapters';
import { type Container, containerOf } from './container';
import { EarlySync } from './early-sync';
import { ReaderPool } from './film-reader';
import { LevelledFrames, levelling } from './levelling';
import { CutOutput } from './output';
import { PictureLine, type PictureStretch, pictureTicks } from './picture-line';
import type { ProgressTeller } from './progress';
import { indexBytes } from './room';
import { SoundCopy } from './sound-copy';
import { SoundEncoder } from './sound-encoder';
import { soundLine } from './sound-line';
import { describePicture } from './track-settings';
import { userDataRemover } from './user-data';

export interface Assembly {
  spec: CutSpec;
  plan: CutPlan;
  facts: CutFacts;
  stretches: readonly PictureStretch[];
  chapters: readonly CutChapter[];
  /** Loudness before levelling; null where it stays as it is. */
  measured: CutLoudness | null;
  to: string;
}

/** One of the two lines of a film, laid down step by step. */
interface Line {
  steps: Generator<void>;
  /** Place in the cut, in milliseconds. */
  at(): number;
  free(): void;
}

/** Writes the file: pictures and sound side by side, whichever is behind goes first. */
export async function assemble(work: Assembly, tell: ProgressTeller): Promise<void> {
  const { spec, plan, facts, chapters } = work;
  const container = containerOf(spec.output);
  const room = indexBytes(plan, facts) + chapterWriters[container].room(chapters);
  const output = new CutOutput(work.to, container, spec.title, room);
  const lines: Line[] = [];
  let early: EarlySync | null = null;
  try {
    if (plan.format) lines.push(pictureLine(work, output));
    if (plan.sound !== 'none')
      lines.push(plan.sound === 'copied' ? copiedSound(work, output, container) : madeSound(work, output));
    output.begin();
    early = await EarlySync.of(work.to);
    for (let open = [...lines]; open.length > 0; ) {
      const next = open.reduce((behind, line) => (line.at() < behind.at() ? line : behind));
      if (next.steps.next().done) open = open.filter((line) => line !== next);
      if (!tell.due) continue;
      early.nudge();
      await tell.rest(Math.min(...lines.map((line) => line.at())));
    }
    output.end();
  } finally {
    for (const line of lines) {
      line.steps.return(undefined);
      line.free();
    }
    output.close();
    await early?.close();
  }
}

function pictureLine({ plan, stretches }: Assembly, output: CutOutput): Line {
  const pool = new ReaderPool('video');
  const { format } = plan;
  // All copied stretches agree, and so do all encoded ones.
  const like = stretches.find(({ part }) => part.how === 'copy') ?? stretches[0];
  const reader = like && pool.get(like.path);
  if (!reader || !format) throw new Error('There is no picture to describe');
  const { codecpar } = reader.stream;
  const settings = settingsOf(codecpar.extradata, stretches, pool);
  const track = output.addTrack(pictureTicks, (parameters) =>
    describePicture(parameters, codecpar, format, settings),
  );
  const clean: (packet: Packet) => void = userDataRemover(codecpar);
  const line = new PictureLine(stretches, pool, track, clean);
  return { steps: line.steps(), at: () => line.ms, free: () => pool.close() };
}

/** Copied and encoded pictures go by parameter sets of their own; the file names both. */
function settingsOf(
  own: Buffer | null,
  stretches: readonly PictureStretch[],
  pool: ReaderPool,
): Buffer | null {
  const encoded = stretches.find(({ part }) => part.how === 'encode');
  if (!encoded || !stretches.some(({ part }) => part.how === 'copy')) return own;
  const other = pool.get(encoded.path)?.stream.codecpar.extradata;
  const both = own && other && mergeAvc(own, other);
  if (!both) throw new Error('Copied and encoded pictures do not go together');
  return both;
}

function copiedSound({ plan }: Assembly, output: CutOutput, container: Container): Line {
  const pool = new ReaderPool('sound');
  const piece = plan.pieces[0];
  if (!piece) throw new Error('A cut without pieces');
  const copy = new SoundCopy(piece, pool, output, container);
  return { steps: copy.steps(), at: () => copy.ms, free: () => pool.close() };
}

function madeSound({ spec, plan, measured }: Assembly, output: CutOutput): Line {
  const { soundFormat } = plan;
  const encoder = new SoundEncoder(soundFormat);
  encoder.addTo(output);
  const level =
    measured && spec.loudness ? levelling(measured, spec.loudness.lufs) : { gainDb: 0, limited: false };
  const frames = new LevelledFrames(soundFormat, encoder.frameSamples, level, (frame) => encoder.add(frame));
  let done = false;
  function* steps(): Generator<void> {
    yield* soundLine(plan, spec, frames);
    frames.finish();
    done = true;
  }
  return {
    steps: steps(),
    at: () => (done ? Number.POSITIVE_INFINITY : (frames.count * 1000) / soundFormat.sampleRateHz),
    free: () => {
      frames.free();
      encoder.free();
    },
  };
}
