import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { settings } from '@/db/schema';
import { forgetOldWords, takeInAll, takeInNext } from './index-store';
import { isDamage, isSound, isWhole, makeAnew, markAllStale, wordTables } from './index-tables-store';
import { readAhead } from './reference-store';

/** Between two pieces at leisure, and while there is nothing to do. */
const pauseMs = 20;
const idleMs = 2000;

/** Makes the whole index anew from the record. */
export function rebuildArchive(db: Database): void {
  makeAnew(db);
  takeInAll(db);
}

/**
 * Makes the index anew, to be filled by and by, where it is damaged.
 * @param thoroughly looks through all of it, not only whether everything is there
 * @returns whether it was whole
 */
export function mendArchive(db: Database, thoroughly = false): boolean {
  if (isWhole(db) && (!thoroughly || wordTables.every((table) => isSound(db, table)))) return true;
  makeAnew(db);
  return false;
}

/** Runs what uses the index; where that turns out to be damaged, makes it anew and runs it again. */
export function withWholeIndex<T>(db: Database, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!isDamage(error)) throw error;
    makeAnew(db);
    return work();
  }
}

/**
 * Keeps the archive up to date by and by for as long as the database is open, and reads ahead what its reference is
 * made of, piece by piece, so that other requests get their turn.
 * @param build names this version of the program: what another one prepared is prepared anew
 */
export function keepArchiveAtLeisure(db: Database, build: string): void {
  mendArchive(db);
  prepareAnewFor(db, build);
  const go = () => {
    if (!db.$client.open) return;
    const isBusy = withWholeIndex(db, () => takeInNext(db)) || readAhead(db);
    later(isBusy ? pauseMs : idleMs);
  };
  const later = (ms: number) => setTimeout(go, ms).unref();
  later(pauseMs);
}

/** What was changed for good, such as an erased name, leaves no word behind. */
export function forgetChangedWords(db: Database): void {
  withWholeIndex(db, () => {
    takeInAll(db);
    forgetOldWords(db);
  });
}

function prepareAnewFor(db: Database, build: string): void {
  const row = { key: 'archiveBy', value: build };
  const known = db.select().from(settings).where(eq(settings.key, row.key)).get();
  if (known?.value === build) return;
  db.insert(settings).values(row).onConflictDoUpdate({ target: settings.key, set: row }).run();
  if (known) markAllStale(db);
}
