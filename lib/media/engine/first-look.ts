import { type CodecContext, Frame, type Packet, type Stream } from 'node-av/lib';
import { problems } from './errors';
import { clockOf, type Input } from './input';
import { decode, openDecoder } from './native';

/** Pictures looked at: some seconds of film. */
const mostPictures = 240;
const mostPackets = 3000;
/** Pictures may come this many places before their turn: the last stamps read are not all there yet. */
const mostReordered = 16;

/**
 * Reads the first seconds: when the pictures come, and whether anything in the file can be decoded at all.
 * Throws where a decoder exists but nothing comes out of it.
 * @returns presentation times in seconds of the first pictures
 */
export function look(input: Input): number[] {
  const clock = input.video && clockOf(input.video);
  const tests = [input.video, input.sound]
    .filter((stream) => stream !== null)
    .map((stream) => new DecodeTest(stream));
  const times: number[] = [];
  let ended = false;
  try {
    for (
      let packets = 0;
      packets < mostPackets && (times.length < mostPictures || !tests.some((test) => test.good));
      packets++
    ) {
      if (!input.read()) {
        ended = true;
        break;
      }
      if (!input.video && tests.some((test) => test.good)) break;
      const { packet } = input;
      const at = packet.streamIndex === input.video?.index ? clock?.(packet.pts) : null;
      if (at !== null && at !== undefined) times.push(at);
      for (const test of tests) test.take(packet);
    }
    for (const test of tests) if (ended) test.take(null);
    if (!tests.some((test) => test.good)) throw problems.nothingDecodes();
  } finally {
    for (const test of tests) test.free();
  }
  return ended ? times : times.sort((a, b) => a - b).slice(0, -mostReordered);
}

/** Decodes one stream until something comes out. Without a decoder it cannot tell, and counts as good. */
class DecodeTest {
  readonly #stream: Stream;
  readonly #decoder: CodecContext | null;
  readonly #frame = new Frame();
  good: boolean;

  constructor(stream: Stream) {
    this.#stream = stream;
    this.#decoder = openDecoder(stream, 1);
    this.#frame.alloc();
    this.good = !this.#decoder;
  }

  take(packet: Packet | null): void {
    if (this.good || !this.#decoder || (packet && packet.streamIndex !== this.#stream.index)) return;
    decode(this.#decoder, packet, this.#frame, () => {
      this.good = true;
    });
  }

  free(): void {
    this.#frame.free();
    this.#decoder?.freeContext();
  }
}
