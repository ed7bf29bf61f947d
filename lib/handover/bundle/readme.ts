import type { BundleRecord } from '@/shared/bundle';

/** What stands in a bundle besides the record, for whoever opens it without Benchtake. */
export interface BundleContents {
  record: BundleRecord;
  stills: number;
  documents: readonly string[];
  /** Sentences on what could not be put in. */
  leftOut: readonly string[];
}

/** `README.txt`: what is what in the bundle. */
export function readmeOf({ record, stills, documents, leftOut }: BundleContents): string {
  const recordings = record.takes.filter(({ recording }) => recording.file !== null).length;
  const parts = [
    [`Job ${record.job.number}, saved as a bundle at ${record.madeAt}.`],
    [
      'PRIVATE. This file is for the repairer: it holds the name of the client and how to reach them, every spoken',
      'line, serial numbers and prices. Do not publish it and do not pass it on.',
    ],
    [
      'To bring it in on another machine, open Benchtake there and choose “Bring in a bundle” at the foot of the',
      'Bench. It becomes a new job; nothing that is there already is changed.',
    ],
    [
      'record.json    the whole record of the job (JSON, version 1); times are milliseconds. Nothing else is read back.',
      'tables/        markers, readings, work, parts and narration for a spreadsheet: CSV by RFC 4180, UTF-8 with a',
      '               byte order mark, decimal points. Text that a spreadsheet would take for a formula begins with',
      '               an apostrophe.',
      `documents/     ${documents.length === 0 ? 'none' : 'as they stood when the bundle was made; check them before you publish any'}`,
      `stills/        ${stills} of the film at its markers, by number and title`,
      `recordings/    ${recordings} of ${record.takes.length}; the record knows each by its size and a hash of it`,
    ],
    leftOut,
    ['Not in it: public cuts that were made (files of their own) and the undo history.'],
  ];
  return parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.map((line) => `${line}\r\n`).join(''))
    .join('\r\n');
}
