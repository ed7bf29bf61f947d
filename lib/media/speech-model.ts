/** Bytes of a model file that tell what it is: magic, eleven numbers, size of the mel filters. */
export const speechModelHeadBytes = 4 * 14;
/** "ggml", as a 32-bit number, low byte first. */
const magic = 0x67676d6c;

/** What each number of the header may be: beyond, the file is no model, or none of this kind. */
const ranges: readonly (readonly [number, number])[] = [
  [1_000, 200_000], // words
  [100, 10_000], // sound context
  [32, 8_192], // sound state
  [1, 128], // sound heads
  [1, 128], // sound layers
  [16, 10_000], // text context
  [32, 8_192], // text state
  [1, 128], // text heads
  [1, 128], // text layers
  [80, 128], // mels
  [0, 10_000], // weight type, with the quantization's version
  [80, 128], // rows of the mel filters
  [100, 1_000], // columns of the mel filters
];

/**
 * Whether a file begins as a Whisper model in ggml layout does. A wrong one would take the decoder down.
 * @param head its first {@link speechModelHeadBytes} bytes
 * @param sizeBytes of the whole file: the mel filters at least must be there
 */
export function isSpeechModel(head: Uint8Array, sizeBytes: number): boolean {
  if (head.length < speechModelHeadBytes) return false;
  const view = new DataView(head.buffer, head.byteOffset, head.length);
  if (view.getUint32(0, true) !== magic) return false;
  const numbers = ranges.map((_, index) => view.getInt32(4 * (index + 1), true));
  const [rows = 0, columns = 0] = numbers.slice(-2);
  const fits = ranges.every(([low, high], index) => {
    const number = numbers[index] ?? -1;
    return number >= low && number <= high;
  });
  return fits && sizeBytes > speechModelHeadBytes + 4 * rows * columns;
}
