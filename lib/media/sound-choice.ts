/** `AV_DISPOSITION_DEFAULT` of FFmpeg: the file itself says that a player starts with this stream. */
const defaultStream = 1;

/**
 * Which of several sound streams is read: the one that a browser plays, so that the strip shows what is heard.
 * That is the stream marked as default, or else the first.
 * @param dispositions FFmpeg's flags of each sound stream
 * @returns its place among them; 0 also when there is none
 */
export function chooseSound(dispositions: readonly number[]): number {
  return Math.max(
    0,
    dispositions.findIndex((flags) => (flags & defaultStream) !== 0),
  );
}
