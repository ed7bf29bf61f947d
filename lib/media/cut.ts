import type { CutFacts, CutPicture, CutPiece, CutPlanSpec, CutPoints, CutSource } from '@/shared/cut-engine';
import { DomainError } from '@/shared/problem';
import { isSideways } from './rotation';
import type { Size } from './stills';

/** A cut that moves further than this is made exactly instead. */
const mostMovedMs = 15_000;
/** Copying less than this between two freshly encoded ends is not worth the seam. */
const leastCopiedMs = 1000;
const usualRateHz = 48_000;

/** A stretch of a piece whose picture is made in one way. Take time in milliseconds. */
export interface CutPart {
  how: 'copy' | 'encode';
  fromMs: number;
  toMs: number;
}

export interface PlannedPiece {
  path: string;
  /** As it will be cut: take time in milliseconds. */
  fromMs: number;
  toMs: number;
  /** When it begins in the cut. */
  outMs: number;
  /** How much earlier than asked for the start and the end fall. */
  startMovedMs: number;
  endMovedMs: number;
  /** Its picture, without a gap from `fromMs` to `toMs`; empty in a cut without picture. */
  parts: CutPart[];
}

/** The picture that the cut will have. Sizes in coded pixels, before rotation. */
export interface CutFormat extends Size {
  rotation: CutPicture['rotation'];
  pixelAspect: CutPicture['pixelAspect'];
  /** Path of the source whose packets are copied or whose shape is taken. */
  like: string;
}

export interface CutPlan {
  pieces: PlannedPiece[];
  durationMs: number;
  picture: 'none' | 'copied' | 'mixed' | 'encoded';
  /** Null without a picture. */
  format: CutFormat | null;
  sound: 'none' | 'copied' | 'encoded';
  soundFormat: { sampleRateHz: number; channels: 1 | 2 };
}

export class CutPieceError extends DomainError {
  constructor(place: number, piece: CutPiece, durationMs: number) {
    super(
      'invalid',
      `Piece ${place + 1} of the cut holds nothing.`,
      'It must end behind its start, and begin before the recording ends.',
      { path: piece.path, fromMs: piece.fromMs, toMs: piece.toMs, durationMs },
    );
  }
}

/** One piece with what is known of it. */
interface Known {
  piece: CutPiece;
  source: CutSource;
  points: CutPoints;
}

/**
 * Says how a cut will be made, before anything is made: what is copied, what is encoded, and how far cuts move.
 * Throws a {@link CutPieceError} for a piece without length.
 */
export function cutPlan(spec: CutPlanSpec, facts: CutFacts): CutPlan {
  const known = spec.pieces.map((piece, place) => knownPiece(piece, place, facts));
  const picture = pictureOf(spec, known);
  const pieces = placed(known, picture.parts);
  return {
    pieces,
    durationMs: pieces.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0),
    picture: picture.how,
    format: picture.format,
    sound: soundOf(spec, known),
    soundFormat: soundFormatOf(spec, known),
  };
}

/** Chapters of the asked-for cut, moved along with the cuts; one at the start of a piece stays at its start. */
export function chaptersInCut(
  spec: Pick<CutPlanSpec, 'pieces' | 'chapters'>,
  plan: Pick<CutPlan, 'pieces' | 'durationMs'>,
): CutPlanSpec['chapters'] {
  const rising = spec.chapters
    .map(({ startMs, title }) => ({ startMs: outMsOf(startMs, plan), title }))
    .filter(({ startMs }) => startMs < plan.durationMs)
    .sort((a, b) => a.startMs - b.startMs);
  return rising.filter(({ startMs }, i) => rising[i + 1]?.startMs !== startMs);
}

/** A moment of the asked-for cut on the clock of the planned one. */
function outMsOf(askedMs: number, { pieces, durationMs }: Pick<CutPlan, 'pieces' | 'durationMs'>): number {
  let start = 0;
  for (const piece of pieces) {
    const asked = askedLength(piece);
    const into = askedMs - start;
    if (into === 0) return piece.outMs;
    if (into < asked) return piece.outMs + Math.min(into + piece.startMovedMs, piece.toMs - piece.fromMs - 1);
    start += asked;
  }
  return durationMs;
}

function askedLength({ fromMs, toMs, startMovedMs, endMovedMs }: PlannedPiece): number {
  return toMs + endMovedMs - (fromMs + startMovedMs);
}

function knownPiece(piece: CutPiece, place: number, { sources, points }: CutFacts): Known {
  const source = sources[piece.path];
  const own = points[place];
  if (!source || !own) throw new Error(`Nothing is known of piece ${place}`);
  const toMs = Math.min(piece.toMs, source.durationMs);
  if (toMs <= piece.fromMs) throw new CutPieceError(place, piece, source.durationMs);
  return { piece: { ...piece, toMs }, source, points: own };
}

interface Picture {
  how: CutPlan['picture'];
  format: CutFormat | null;
  parts: CutPart[][];
}

function pictureOf(spec: CutPlanSpec, known: readonly Known[]): Picture {
  if (known.every(({ source }) => !source.picture))
    return { how: 'none', format: null, parts: known.map(() => []) };
  const base = copiedGroup(known);
  const parts = known.map((one, place) =>
    agrees(one, base) ? partsOf(spec.cutting, one, known[place - 1]) : wholly(one),
  );
  const hows = new Set(parts.flat().map(({ how }) => how));
  if (base?.source.picture && !hows.has('encode'))
    return { how: 'copied', format: shapeOf(base.piece.path, base.source.picture), parts };
  if (base?.source.picture?.mixes && hows.has('copy'))
    return { how: 'mixed', format: shapeOf(base.piece.path, base.source.picture), parts };
  return { how: 'encoded', format: uprightFormat(known), parts: known.map(wholly) };
}

/** A piece out of the longest group whose pictures can be joined as they are; no other picture may be larger. */
function copiedGroup(known: readonly Known[]): Known | null {
  const largest = Math.max(...known.map(areaOf));
  const lengths = new Map<string, { first: Known; ms: number }>();
  for (const one of known) {
    if (!one.source.picture?.copies || areaOf(one) < largest) continue;
    const key = joinKey(one.source.picture);
    const group = lengths.get(key) ?? { first: one, ms: 0 };
    lengths.set(key, { ...group, ms: group.ms + one.piece.toMs - one.piece.fromMs });
  }
  return [...lengths.values()].sort((a, b) => b.ms - a.ms)[0]?.first ?? null;
}

function areaOf({ source }: Known): number {
  if (!source.picture) return 0;
  const { width, height } = shownSize(source.picture);
  return width * height;
}

function agrees({ source, piece, points }: Known, base: Known | null): boolean {
  if (!base?.source.picture || !source.picture?.copies) return false;
  // What lies between the key frame and the start may be shown, and must not be uncovered.
  const fromMs = Math.min(points.keyAtMs ?? piece.fromMs, piece.fromMs);
  if (piece.covers.some((cover) => cover.fromMs < piece.toMs && cover.toMs > fromMs)) return false;
  return joinKey(source.picture) === joinKey(base.source.picture);
}

function joinKey({ codec, pixelFormat, width, height, rotation, pixelAspect, settings }: CutPicture): string {
  return JSON.stringify([codec, pixelFormat, width, height, rotation, pixelAspect, settings]);
}

function partsOf(cutting: CutPlanSpec['cutting'], one: Known, before: Known | undefined): CutPart[] {
  const { piece, points } = one;
  if (points.closedAtMs === null) return wholly(one);
  if (cutting === 'exact') return exactParts(piece, points, points.closedAtMs) ?? wholly(one);
  const start = startOnKey(piece, points.keyAtMs, before?.piece);
  if (start === null) return exactParts(piece, points, points.closedAtMs) ?? wholly(one);
  if (points.closedAtMs <= piece.fromMs) return wholly(one);
  return [{ how: 'copy', fromMs: start, toMs: points.closedAtMs }];
}

/** Null where it is too far away, or where the film would show something twice. */
function startOnKey(
  { path, fromMs }: CutPiece,
  keyAtMs: number | null,
  before: CutPiece | undefined,
): number | null {
  if (keyAtMs === null || fromMs - keyAtMs > mostMovedMs) return null;
  const goesOn = before?.path === path && before.toMs <= fromMs;
  return goesOn && keyAtMs < before.toMs ? null : keyAtMs;
}

/** Copied from the first key frame on; what lies before it, and behind the last closed place, is encoded. */
function exactParts({ fromMs, toMs }: CutPiece, points: CutPoints, closedMs: number): CutPart[] | null {
  const start = points.keyAtMs === fromMs ? fromMs : points.nextKeyMs;
  const copied: CutPart = { how: 'copy', fromMs: start ?? toMs, toMs: closedMs };
  const whole = copied.fromMs === fromMs && copied.toMs === toMs;
  if (!whole && copied.toMs - copied.fromMs < leastCopiedMs) return null;
  const ends: CutPart[] = [
    { how: 'encode', fromMs, toMs: copied.fromMs },
    copied,
    { how: 'encode', fromMs: closedMs, toMs },
  ];
  return ends.filter((part) => part.toMs > part.fromMs);
}

function wholly({ piece: { fromMs, toMs } }: Known): CutPart[] {
  return [{ how: 'encode', fromMs, toMs }];
}

function shapeOf(like: string, { width, height, rotation, pixelAspect }: CutPicture): CutFormat {
  return { like, width, height, rotation, pixelAspect };
}

/** The size of the largest picture as it is shown, upright, with square pixels; the first of equals. */
function uprightFormat(known: readonly Known[]): CutFormat {
  const shown = known.flatMap(({ piece, source }) =>
    source.picture ? [{ like: piece.path, ...shownSize(source.picture) }] : [],
  );
  const largest = shown.reduce((best, size) =>
    size.width * size.height > best.width * best.height ? size : best,
  );
  return { ...largest, rotation: 0, pixelAspect: [1, 1] };
}

/** Size of a picture on the screen; even, as 4:2:0 wants it. */
export function shownSize({ width, height, rotation, pixelAspect: [w, h] }: Omit<CutFormat, 'like'>): Size {
  const wide = (width * w) / h;
  return isSideways(rotation)
    ? { width: even(height), height: even(wide) }
    : { width: even(wide), height: even(height) };
}

function even(size: number): number {
  return Math.max(2, Math.round(size / 2) * 2);
}

function placed(known: readonly Known[], parts: readonly CutPart[][]): PlannedPiece[] {
  let outMs = 0;
  return known.map(({ piece }, place) => {
    const own = parts[place] ?? [];
    const fromMs = own[0]?.fromMs ?? piece.fromMs;
    const toMs = own.at(-1)?.toMs ?? piece.toMs;
    const moved = { startMovedMs: piece.fromMs - fromMs, endMovedMs: piece.toMs - toMs };
    const planned = { path: piece.path, fromMs, toMs, outMs, ...moved, parts: own };
    outMs += toMs - fromMs;
    return planned;
  });
}

/** Sound is copied out of one piece only: at a joint, copied AAC would click. */
function soundOf(spec: CutPlanSpec, known: readonly Known[]): CutPlan['sound'] {
  if (known.every(({ source }) => !source.sound)) return 'none';
  const untouched = spec.loudness === null && known.every(({ piece }) => piece.mutes.length === 0);
  return untouched && known.length === 1 && known[0]?.source.sound?.copies ? 'copied' : 'encoded';
}

/**
 * The rate of all takes where they agree on a usual one. One channel only where all have one, and not where the loudness
 * counts: the same mono sound measures 3 LU less than from two speakers.
 */
function soundFormatOf(spec: CutPlanSpec, known: readonly Known[]): CutPlan['soundFormat'] {
  const sounds = known.flatMap(({ source }) => source.sound ?? []);
  const rates = new Set(sounds.map(({ sampleRateHz }) => sampleRateHz));
  return {
    sampleRateHz: rates.size === 1 && rates.has(44_100) ? 44_100 : usualRateHz,
    channels: spec.loudness === null && sounds.every(({ channels }) => channels === 1) ? 1 : 2,
  };
}
