import { existsSync, readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Database } from '@/db/open';
import { DomainError } from '@/shared/problem';
import { indexWordsAnew } from './erase-rows-store';

/** Copies that this program has made: before migrations, and after erasing. */
const ownBackup = /^(?:before-migration|after-erasing)-.*\.sqlite$/;

/**
 * Writes the database anew without its freed pages, and empties its log.
 * @throws DomainError where the disk has no room for that
 */
export function clearFreedPages(db: Database): void {
  swept(db, () => {
    db.$client.exec('vacuum');
    indexWordsAnew(db);
    db.$client.pragma('wal_checkpoint(TRUNCATE)');
  });
}

/** Puts one fresh copy in the place of those made before, which still tell of the person. */
export function renewBackups(db: Database): void {
  const folder = backupsOf(db);
  if (!existsSync(folder)) return;
  const old = readdirSync(folder).filter((name) => ownBackup.test(name));
  if (old.length === 0) return;
  const stamp = new Date().toISOString().replace(/[:.]/g, '-');
  swept(db, () => {
    db.$client.prepare('vacuum into ?').run(join(folder, `after-erasing-${stamp}.sqlite`));
    for (const name of old) rmSync(join(folder, name));
  });
}

function backupsOf(db: Database): string {
  return join(dirname(db.$client.name), 'backups');
}

function swept(db: Database, work: () => void): void {
  try {
    work();
  } catch (error) {
    throw new DomainError(
      'unavailable',
      'The person is off the record, but an older copy could not be cleared away.',
      `Make room on the drive, delete the files in ${backupsOf(db)} by hand, and start Benchtake again.`,
      { cause: error instanceof Error ? error.message : String(error) },
    );
  }
}
