import { folded, holdsEveryWord } from '@/app/_parts/words';
import type { FoundRecording } from '@/shared/takes';

export interface FindableRecording {
  recording: FoundRecording;
  text: string;
}

/** Recordings with the text that each is found by: subfolder and name, folded. */
export function findableRecordings(recordings: readonly FoundRecording[]): FindableRecording[] {
  return recordings.map((recording) => ({ recording, text: folded(`${recording.under}/${recording.name}`) }));
}

/** The recordings that hold every word of the question, in the order given. */
export function findRecordings(findable: readonly FindableRecording[], question: string): FoundRecording[] {
  const wanted = folded(question).trim();
  return findable
    .filter(({ text }) => wanted === '' || holdsEveryWord(text, wanted))
    .map(({ recording }) => recording);
}

/** The ticked recordings, oldest first, as they were filmed. */
export function inOrderOfMaking(
  recordings: readonly FoundRecording[],
  ticked: ReadonlySet<string>,
): FoundRecording[] {
  return recordings
    .filter(({ path }) => ticked.has(path))
    .sort((a, b) => a.modifiedAt - b.modifiedAt || a.name.localeCompare(b.name, 'en', { numeric: true }));
}
