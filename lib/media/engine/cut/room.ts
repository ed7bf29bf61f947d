import { dirname } from 'node:path';
import type { CutFacts } from '@/shared/cut-engine';
import type { CutPlan } from '../../cut';
import { freeBytes, NoRoomError } from './errors';

const soundBytesPerSecond = 24_000;
/** Bits for each pixel and picture of H.264 at the quality that is used; by trial on films of a bench. */
const bitsPerPixel = 0.12;
const usualFrameRate = 30;

/** About how many bytes a cut will take: copied parts by their share of the recording, the rest by size and time. */
export function expectedBytes(
  plan: CutPlan,
  facts: CutFacts,
  sizes: Readonly<Record<string, number>>,
): number {
  const copied = plan.pieces.flatMap(({ path, parts }) =>
    parts
      .filter(({ how }) => how === 'copy')
      .map(
        ({ fromMs, toMs }) =>
          ((sizes[path] ?? 0) * (toMs - fromMs)) / Math.max(1, facts.sources[path]?.durationMs ?? 1),
      ),
  );
  const sound = (plan.durationMs / 1000) * soundBytesPerSecond;
  return Math.ceil(copied.reduce((sum, bytes) => sum + bytes, sound + encodedBytes(plan)));
}

function encodedBytes({ pieces, format }: CutPlan): number {
  const ms = pieces
    .flatMap(({ parts }) => parts)
    .reduce((sum, { how, fromMs, toMs }) => sum + (how === 'encode' ? toMs - fromMs : 0), 0);
  const pixels = (format?.width ?? 0) * (format?.height ?? 0);
  return (pixels * usualFrameRate * bitsPerPixel * ms) / 8000;
}

/** Throws a {@link NoRoomError} before anything is written where what is copied will not fit. */
export function checkRoom(output: string, neededBytes: number): void {
  const free = freeBytes(dirname(output));
  if (free < neededBytes) throw new NoRoomError(neededBytes, free);
}

const bytesPerPicture = 48;
const bytesPerSoundPacket = 32;
/** Variable rates go far above their average for a while. */
const leastFrameRate = 60;
const unevenness = 1.2;
const spareBytes = 16_384;

/** Room for an index at the most: ISO/IEC 14496-12 keeps size, time, order and place of each packet. */
export function indexBytes(plan: CutPlan, facts: CutFacts): number {
  const pictures = plan.pieces.reduce((sum, { path, fromMs, toMs }) => {
    const rate = (facts.sources[path]?.picture?.frameRate ?? 0) * unevenness;
    return sum + ((toMs - fromMs) / 1000) * Math.max(leastFrameRate, rate);
  }, 0);
  const soundPackets = (plan.durationMs / 1000) * 50;
  return Math.ceil(pictures * bytesPerPicture + soundPackets * bytesPerSoundPacket) + spareBytes;
}
