import { writeFileSync } from 'node:fs';

/** Numbers of a tiny English model, in the order of the ggml header; its layers are narrow, for it has no weights. */
const header = {
  vocabulary: 51_864,
  audioContext: 1500,
  audioState: 64,
  audioHeads: 1,
  audioLayers: 4,
  textContext: 448,
  textState: 64,
  textHeads: 1,
  textLayers: 4,
  mels: 80,
  weightType: 1,
};
const fftBins = 201;

/**
 * Writes a speech model without weights: it loads, runs and hears nothing. Layout of a Whisper model in ggml form: magic
 * 0x67676d6c, eleven header numbers, mel filters (rows, columns, 32-bit floats), vocabulary (count, then length and
 * bytes of each word), tensors; all little-endian.
 */
export function writeWeightlessModel(path: string): void {
  const numbers = (...values: number[]) => Buffer.from(new Int32Array(values).buffer);
  const words = Array.from({ length: 256 }, (_, code) => Buffer.from([code]));
  writeFileSync(
    path,
    Buffer.concat([
      numbers(0x67676d6c, ...Object.values(header)),
      numbers(header.mels, fftBins),
      Buffer.alloc(4 * header.mels * fftBins),
      numbers(words.length),
      ...words.flatMap((word) => [numbers(word.length), word]),
    ]),
  );
}
