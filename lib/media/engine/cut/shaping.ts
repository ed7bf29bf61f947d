import type { Frame } from 'node-av/lib';
import type { CutCover, CutPicture } from '@/shared/cut-engine';
import { type CutFormat, shownSize } from '../../cut';
import type { Rotation } from '../../rotation';
import type { Size } from '../../stills';
import { FilterChain } from '../filter-chain';
import { turns } from '../jpeg';
import { pictureTicks } from './picture-line';

/** Turns, covers and fits frames of one source into the picture of the cut. */
export class Shaper {
  readonly #picture: Pick<CutPicture, 'rotation' | 'pixelAspect'>;
  readonly #format: CutFormat;
  #chain: { key: string; filters: FilterChain } | null = null;

  constructor(picture: Pick<CutPicture, 'rotation' | 'pixelAspect'>, format: CutFormat) {
    this.#picture = picture;
    this.#format = format;
  }

  shape(frame: Frame, covers: readonly CutCover[], use: (shaped: Frame) => void): void {
    this.#chainFor(frame, covers).push(frame, use);
  }

  free(): void {
    this.#chain?.filters.free();
  }

  /** One frame in, one frame out: no filter here holds anything back, so that a chain can be left at any time. */
  #chainFor(frame: Frame, covers: readonly CutCover[]): FilterChain {
    const key = JSON.stringify([frame.width, frame.height, frame.format, covers]);
    if (this.#chain?.key === key) return this.#chain.filters;
    this.#chain?.filters.free();
    const { width, height } = frame;
    const filters = new FilterChain(
      'buffer',
      `video_size=${width}x${height}:pix_fmt=${frame.format}:time_base=1/${pictureTicks}`,
      filtersFor({ width, height, ...this.#picture }, this.#format, covers),
    );
    this.#chain = { key, filters };
    return filters;
  }
}

/** In libavfilter's notation: upright, covered, fitted with black beside it, turned as the cut's picture is kept. */
export function filtersFor(
  source: Omit<CutFormat, 'like'>,
  format: CutFormat,
  covers: readonly CutCover[],
): string {
  const own = shownSize(source);
  const target = shownSize(format);
  const [w, h] = format.pixelAspect;
  const back = turns[backTurn(format.rotation)];
  return [
    `format=yuv420p${turns[source.rotation]}`,
    ...covers.map(drawn),
    ...fitted(own, target),
    `null${back}`,
    `scale=${format.width}:${format.height}`,
    `setsar=${w}/${h}`,
  ].join(',');
}

function drawn({ x, y, width, height }: CutCover): string {
  // Outward to whole pairs of pixels: colour is kept for four pixels at a time.
  const floor = (share: number, side: string) => `floor(${share}*${side}/2)*2`;
  const length = (from: number, share: number, side: string) =>
    `ceil((${from}+${share})*${side}/2)*2-${floor(from, side)}`;
  return [
    `drawbox=x=${floor(x, 'iw')}:y=${floor(y, 'ih')}`,
    `w=${length(x, width, 'iw')}:h=${length(y, height, 'ih')}:color=black:t=fill`,
  ].join(':');
}

function fitted(own: Size, target: Size): string[] {
  const scale = Math.min(target.width / own.width, target.height / own.height);
  const width = Math.min(target.width, Math.max(2, Math.round((own.width * scale) / 2) * 2));
  const height = Math.min(target.height, Math.max(2, Math.round((own.height * scale) / 2) * 2));
  const beside = `pad=${target.width}:${target.height}:-1:-1:black`;
  return [
    `scale=${width}:${height}`,
    'setsar=1',
    ...(width === target.width && height === target.height ? [] : [beside]),
  ];
}

function backTurn(rotation: Rotation): Rotation {
  return rotation === 90 ? 270 : rotation === 270 ? 90 : rotation;
}
