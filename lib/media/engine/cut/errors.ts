import { statfsSync } from 'node:fs';
import { AVERROR_ENOSPC } from 'node-av/constants';
import { FFmpegError } from 'node-av/lib';
import { DomainError } from '@/shared/problem';

/** There is no room for the cut; says how much it needs. */
export class NoRoomError extends DomainError {
  constructor(neededBytes: number, freeBytes: number) {
    super(
      'unavailable',
      'There is not enough room on the disk for this cut.',
      `It needs about ${inWords(neededBytes)}, and ${inWords(freeBytes)} are free. Make room, or choose another place, then try again.`,
      { neededBytes, freeBytes },
    );
  }
}

/** The cut is there already: nothing is written over. */
export class CutExistsError extends DomainError {
  constructor(path: string) {
    super(
      'conflict',
      'There is already a file of this name.',
      'Give the cut another name, or move the other file away.',
      {
        path,
      },
    );
  }
}

export class CutNotWrittenError extends DomainError {
  constructor(why: string) {
    super(
      'unavailable',
      `The cut could not be written: ${why}.`,
      'Try again. If it stays so, choose another folder.',
    );
  }
}

/** Throws for a failed call that writes the cut. */
export function written(code: number): void {
  if (code === AVERROR_ENOSPC) throw new FullError();
  if (code < 0) throw new CutNotWrittenError(FFmpegError.strerror(code));
}

/** The disk ran full while writing; whoever knows the size of the cut turns it into a {@link NoRoomError}. */
export class FullError extends Error {}

export function isFull(error: unknown): boolean {
  return error instanceof FullError || (error instanceof Error && 'code' in error && error.code === 'ENOSPC');
}

export function freeBytes(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}

function inWords(bytes: number): string {
  const megabytes = Math.max(1, Math.ceil(bytes / 1e6));
  return megabytes < 1000 ? `${megabytes} MB` : `${(megabytes / 1000).toFixed(1)} GB`;
}
