import { DomainError } from '@/shared/problem';

/** A recording that cannot be read; says why, and what to do. */
export class RecordingUnreadableError extends DomainError {
  constructor(title: string, detail: string) {
    super('invalid', title, detail);
  }
}

export const problems = {
  missing: () =>
    new DomainError(
      'gone',
      'The recording is not there.',
      'It may have been moved or renamed, or its drive is not plugged in.',
    ),
  forbidden: () =>
    new RecordingUnreadableError(
      'The recording may not be read.',
      'Give the account that runs this program the right to read the file, then look again.',
    ),
  folder: () => new RecordingUnreadableError('This is a folder, not a recording.', 'Pick a file inside it.'),
  empty: () =>
    new RecordingUnreadableError(
      'The recording is empty: 0 bytes.',
      'The copy from the camera probably broke off. Copy it again from the card.',
    ),
  notMedia: () =>
    new RecordingUnreadableError(
      'This is not a film or sound recording, or it is damaged from the first byte on.',
      'Check that the right file was picked. If it should be a recording, copy it again from the card.',
    ),
  noIndex: () =>
    new RecordingUnreadableError(
      'The recording breaks off: its index, written when the camera stops, is missing.',
      'Copy it again from the card. If the camera lost power while filming, its own repair function may close the file.',
    ),
  noStreams: () =>
    new RecordingUnreadableError(
      'There is neither picture nor sound in this file.',
      'Check that the right file was picked, or copy it again from the card.',
    ),
  nothingDecodes: () =>
    new RecordingUnreadableError(
      'The recording is damaged: neither a picture nor a sound could be read from it.',
      'Copy it again from the card.',
    ),
  noSound: () =>
    new DomainError('not-found', 'This recording has no sound.', 'There is nothing to listen to.'),
  noModel: () =>
    new DomainError(
      'invalid',
      'That file is no speech model that can be used.',
      'Use a Whisper model in ggml layout, whole, with its name ending in .bin.',
    ),
  noPicture: () =>
    new DomainError('not-found', 'This recording has no picture.', 'Only its sound can be shown.'),
  noStill: () =>
    new DomainError(
      'not-found',
      'No picture could be read at that moment.',
      'The recording may be damaged there. Try a moment before or after.',
    ),
  notWritten: (why: string) =>
    new DomainError(
      'unavailable',
      `The viewing copy could not be written: ${why}.`,
      'Is there room on the disk of the data folder? Then try again.',
    ),
  broken: (what: string) =>
    new DomainError(
      'unavailable',
      `The recording could not be read: ${what}.`,
      'Try again; if it stays so, copy the file again from the card.',
    ),
};
