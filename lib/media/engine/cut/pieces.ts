import { createHash } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { CutFacts, CutSpec } from '@/shared/cut-engine';
import type { CutPart, CutPlan } from '../../cut';
import { freeId } from './avc-settings';
import { encodeBlack, encodePart } from './encode-part';
import { ReaderPool, StreamReader } from './film-reader';
import { type EncoderSettings, encoderVersion } from './picture-encoder';
import type { PictureStretch } from './picture-line';
import type { ProgressTeller } from './progress';

const usualFrameRate = 25;

export interface FinishedPictures {
  stretches: PictureStretch[];
  reused: number;
}

/** Encodes what the plan says must be encoded, one file a part; those that are there already are used again. */
export async function finishPictures(
  spec: CutSpec,
  plan: CutPlan,
  facts: CutFacts,
  tell: ProgressTeller,
): Promise<FinishedPictures> {
  mkdirSync(spec.workFolder, { recursive: true });
  const settings = encoderSettings(plan, facts);
  const pool = new ReaderPool('video');
  const stretches: PictureStretch[] = [];
  let reused = 0;
  try {
    for (const [place, piece] of plan.pieces.entries()) {
      for (const part of piece.parts) {
        const outMs = piece.outMs + part.fromMs - piece.fromMs;
        if (part.how === 'copy' || !settings) {
          stretches.push({ part, outMs, path: piece.path });
          continue;
        }
        const path = join(spec.workFolder, `${pieceName(spec, place, part, settings)}.mp4`);
        stretches.push({ part, outMs, path });
        if (existsSync(path)) reused += 1;
        else await encode({ spec, facts, place, part, settings, pool, path }, tell);
        tell.passed(part.toMs - part.fromMs);
      }
    }
    return { stretches, reused };
  } finally {
    pool.close();
  }
}

/** Milliseconds of picture that a plan encodes. */
export function encodedMs({ pieces }: CutPlan): number {
  return pieces
    .flatMap(({ parts }) => parts)
    .reduce((sum, { how, fromMs, toMs }) => sum + (how === 'encode' ? toMs - fromMs : 0), 0);
}

function encoderSettings(plan: CutPlan, facts: CutFacts): EncoderSettings | null {
  if (!plan.format) return null;
  const { like } = plan.format;
  const picture = facts.sources[like]?.picture;
  return {
    format: plan.format,
    frameRate: picture?.frameRate ?? usualFrameRate,
    ...besides(like, plan.picture === 'mixed'),
  };
}

/** What encoded pictures take over from the source that they are like. */
function besides(like: string, mixed: boolean): Pick<EncoderSettings, 'parameterSet' | 'colour'> {
  const reader = StreamReader.open(like, 'video');
  if (!reader) return { parameterSet: 0, colour: null };
  try {
    const { extradata, colorPrimaries, colorTrc, colorSpace } = reader.stream.codecpar;
    const parameterSet = (mixed && extradata && freeId(extradata)) || 0;
    return { parameterSet, colour: { colorPrimaries, colorTrc, colorSpace } };
  } finally {
    reader.close();
  }
}

/** The same name only for the same pictures, made in the same way. */
function pieceName({ pieces }: CutSpec, place: number, part: CutPart, settings: EncoderSettings): string {
  const { path, covers } = pieces[place] ?? { path: '', covers: [] };
  const { size, mtimeMs } = statSync(path);
  const told = [encoderVersion, path, size, mtimeMs, part, covers, settings];
  return `piece-${createHash('sha256').update(JSON.stringify(told)).digest('hex').slice(0, 32)}`;
}

interface PieceWork {
  spec: CutSpec;
  facts: CutFacts;
  place: number;
  part: CutPart;
  settings: EncoderSettings;
  pool: ReaderPool;
  path: string;
}

async function encode(work: PieceWork, tell: ProgressTeller): Promise<void> {
  const unfinished = `${work.path}.part`;
  try {
    for (const ms of encoding(work, unfinished)) if (tell.due) await tell.rest(ms);
    toDisk(unfinished);
    renameSync(unfinished, work.path);
  } finally {
    rmSync(unfinished, { force: true });
  }
}

/** So that after a power cut no empty file stands under the name of a finished piece. */
function toDisk(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function encoding({ spec, facts, place, part, settings, pool }: PieceWork, to: string): Generator<number> {
  const { path, covers } = spec.pieces[place] ?? { path: '', covers: [] };
  const picture = facts.sources[path]?.picture;
  const reader = picture ? pool.get(path) : null;
  return picture && reader
    ? encodePart(reader, picture, part, covers, settings, to)
    : encodeBlack(part, settings, to);
}
