import { DomainError } from '@/shared/problem';

/** What can be wrong with a bundle, each with what to do next. */
const wrongs = {
  'no archive': 'It may have been cut off on its way: copy or send it once more, whole.',
  'no bundle': 'Choose the ZIP that “Save the job as a bundle” wrote, as it was written.',
  version: 'Bring this Benchtake up to date, then bring the bundle in again.',
  damaged: 'It was damaged or changed on its way: copy or send it once more from where it was made.',
  unsafe:
    'Benchtake never writes such a bundle. Ask whoever sent it where it comes from; nothing of it was kept.',
  record: 'It was changed by hand or by another program. Save the bundle once more from where it was made.',
  'no room':
    'Make room on the drive that holds the data folder, or leave the recordings out of the bundle and bring them over by themselves.',
} as const;
export type BundleWrong = keyof typeof wrongs;

/** A bundle that was not brought in. Nothing of it stays. */
export class BundleError extends DomainError {
  /** @param where the file of the archive, or the place in the record */
  constructor(wrong: BundleWrong, title: string, where?: string) {
    super(wrong === 'no room' ? 'too-large' : 'invalid', title, wrongs[wrong], {
      wrong,
      ...(where === undefined ? {} : { where }),
    });
  }
}
