import { closeSync, fstatSync, openSync, readSync, statSync } from 'node:fs';
import { isSpeechModel, speechModelHeadBytes } from './speech-model';

/** Whether a file is a speech model, by its head. Looked at before FFmpeg does: a wrong file would take it down. */
export function isSpeechModelFile(path: string): boolean {
  if (!statSync(path, { throwIfNoEntry: false })?.isFile()) return false;
  const head = Buffer.alloc(speechModelHeadBytes);
  const file = openSync(path, 'r');
  try {
    return (
      readSync(file, head, 0, head.length, 0) === head.length && isSpeechModel(head, fstatSync(file).size)
    );
  } finally {
    closeSync(file);
  }
}
