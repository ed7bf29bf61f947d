import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { home } from '@/db/open';
import { DomainError } from '@/shared/problem';

/** Larger than any letterhead wants. */
const mostBytes = 5_000_000;
const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const jpeg = Buffer.from([0xff, 0xd8, 0xff]);

/** The workshop's logo, JPEG or PNG; null where none was given. */
export function logoOf(): Uint8Array | null {
  return existsSync(place()) ? readFileSync(place()) : null;
}

/** @throws DomainError for what is neither PNG nor JPEG, or is too large */
export function setLogo(bytes: Uint8Array): void {
  const begins = (mark: Buffer) => Buffer.from(bytes.subarray(0, mark.length)).equals(mark);
  if (!begins(png) && !begins(jpeg))
    throw new DomainError(
      'invalid',
      'That is no logo that can be printed.',
      'Choose a PNG or a JPEG picture.',
    );
  if (bytes.length > mostBytes)
    throw new DomainError('too-large', 'That picture is too large for a logo.', 'Choose one under 5 MB.');
  mkdirSync(home(), { recursive: true });
  writeFileSync(`${place()}.part`, bytes, { flush: true });
  renameSync(`${place()}.part`, place());
}

export function removeLogo(): void {
  rmSync(place(), { force: true });
}

function place(): string {
  return join(home(), 'logo');
}
