import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AVSEEK_FLAG_BACKWARD } from 'node-av/constants';
import { type CodecContext, Frame, type Stream } from 'node-av/lib';
import type { PicturesResult } from '../results';
import { stillFileName, stillTimes } from '../stills';
import { findViewChanges, glanceAt, type TimedGlance } from '../view-changes';
import { endSeconds } from './duration';
import { problems } from './errors';
import { clockOf, type Input, withInput } from './input';
import { JpegMaker, type Picture } from './jpeg';
import { decode, openDecoder } from './native';
import { Pace, type Watch } from './pace';

const stripHeight = 160;
const stillHeight = 720;
/** How far before the first picture a seek to the start aims. */
const startLeadMs = 1000;
/** Packets read for one still of the strip before that place is given up. */
const mostPackets = 2000;
/** Pictures decoded to reach one moment: past that, the nearest so far is good enough. */
const mostPictures = 900;

/**
 * Writes stills for the strip into `folder`, from key frames only, and finds where the view changes.
 * Without a picture (or none that can be decoded) the answer is empty.
 */
export function stripStills(
  path: string,
  folder: string,
  watch: Watch<PicturesResult>,
): Promise<PicturesResult> {
  return withInput(path, async (input) => {
    const film = openFilm(input, stripHeight);
    if (!film) return { stills: [], viewChanges: [] };
    rmSync(join(folder, 'stills'), { recursive: true, force: true });
    mkdirSync(join(folder, 'stills'), { recursive: true });
    try {
      return await film.strip(path, folder, new Pace(watch));
    } finally {
      film.free();
    }
  });
}

/** The very picture that is shown at a take time, as JPEG at most 720 lines high. */
export function stillAt(path: string, ms: number, watch: Watch): Promise<Buffer> {
  return withInput(path, async (input) => {
    const film = openFilm(input, stillHeight);
    if (!film) throw problems.noPicture();
    try {
      return await film.shownAt(ms, new Pace(watch));
    } finally {
      film.free();
    }
  });
}

function openFilm(input: Input, height: number): Film | null {
  const decoder = input.video && openDecoder(input.video, 1);
  return input.video && decoder ? new Film(input, input.video, decoder, height) : null;
}

class Film {
  readonly #input: Input;
  readonly #stream: Stream;
  readonly #decoder: CodecContext;
  readonly #maker: JpegMaker;
  readonly #frame = new Frame();
  readonly #secondsAt: (stamp: bigint) => number | null;

  constructor(input: Input, stream: Stream, decoder: CodecContext, height: number) {
    this.#input = input;
    this.#stream = stream;
    this.#decoder = decoder;
    this.#maker = new JpegMaker(stream, height);
    this.#secondsAt = clockOf(stream);
    this.#frame.alloc();
    input.keepOnly(stream);
  }

  async strip(path: string, folder: string, pace: Pace<PicturesResult>): Promise<PicturesResult> {
    const durationMs = Math.round(
      ((await endSeconds(this.#input, path, pace)) - this.#input.zeroSeconds) * 1000,
    );
    const glances: TimedGlance[] = [];
    for (const wanted of stillTimes(durationMs)) {
      const found = this.#keyPictureAt(wanted);
      if (found && found.ms > (glances.at(-1)?.ms ?? -1)) {
        writeFileSync(join(folder, stillFileName(found.ms)), found.picture.jpeg);
        const { luma, stride, width, height } = found.picture;
        glances.push({ ms: found.ms, glance: glanceAt(luma, stride, width, height) });
      }
      if (pace.due)
        await pace.rest(wanted / durationMs, { stills: glances.map(({ ms }) => ms), viewChanges: [] });
    }
    return { stills: glances.map(({ ms }) => ms), viewChanges: findViewChanges(glances) };
  }

  /** The key frame at or before a take time, or the next that can be read. */
  #keyPictureAt(wantedMs: number): { ms: number; picture: Picture } | null {
    this.#seek(wantedMs);
    let found: { ms: number; picture: Picture } | null = null;
    for (let packets = 0; packets < mostPackets && this.#input.read(); packets++) {
      const { packet } = this.#input;
      if (!packet.isKeyframe) continue;
      const use = (frame: Frame) => {
        found ??= { ms: this.#takeMs(frame), picture: this.#maker.make(frame) };
      };
      decode(this.#decoder, packet, this.#frame, use);
      // A lone key frame only comes out when the decoder is told that nothing follows.
      if (!found) decode(this.#decoder, null, this.#frame, use);
      this.#decoder.flushBuffers();
      if (found) return found;
    }
    return null;
  }

  async shownAt(wantedMs: number, pace: Pace): Promise<Buffer> {
    const shown = new Frame();
    shown.alloc();
    try {
      // Some indexes lead past the wanted moment; then a run-up is needed.
      for (const runUpMs of [0, 5000, 60_000, wantedMs]) {
        this.#seek(Math.max(0, wantedMs - runUpMs));
        const ms = await this.#decodeUpTo(wantedMs, shown, pace);
        if (ms !== null && (ms <= wantedMs || wantedMs - runUpMs <= 0)) return this.#maker.make(shown).jpeg;
      }
      throw problems.noStill();
    } finally {
      shown.free();
    }
  }

  /** Leaves in `shown` the last picture that begins at or before a take time, or the first there is. */
  async #decodeUpTo(wantedMs: number, shown: Frame, pace: Pace): Promise<number | null> {
    let shownMs: number | null = null;
    let pictures = 0;
    let passed = false;
    let keySeen = false;
    const use = (frame: Frame) => {
      const ms = this.#takeMs(frame);
      pictures += 1;
      if (ms > wantedMs) passed = true;
      if (ms > wantedMs && shownMs !== null) return;
      shown.unref();
      shown.ref(frame);
      shownMs = ms;
    };
    while (!passed && pictures < mostPictures && this.#input.read()) {
      // Pictures that build on one from before the seek would come out torn.
      keySeen ||= this.#input.packet.isKeyframe;
      if (keySeen) decode(this.#decoder, this.#input.packet, this.#frame, use);
      if (pace.due) await pace.rest(0);
    }
    if (!passed) decode(this.#decoder, null, this.#frame, use);
    this.#decoder.flushBuffers();
    return shownMs;
  }

  free(): void {
    this.#maker.free();
    this.#frame.free();
    this.#decoder.freeContext();
  }

  #seek(takeMs: number): void {
    // Transport streams are sought by guessing: aimed at the first picture itself, they start behind it.
    const aimMs = takeMs <= 0 ? -startLeadMs : takeMs;
    const stamp = Math.round((aimMs / 1000 + this.#input.zeroSeconds) / this.#stream.timeBase.toDouble());
    // Where a file cannot be sought, reading goes on from where it is.
    this.#input.format.seekFrameSync(this.#stream.index, BigInt(stamp), AVSEEK_FLAG_BACKWARD);
  }

  #takeMs(frame: Frame): number {
    const seconds = this.#secondsAt(frame.bestEffortTimestamp) ?? this.#input.zeroSeconds;
    return Math.max(0, Math.round((seconds - this.#input.zeroSeconds) * 1000));
  }
}
