import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { closeDatabase, type Database, openDatabase } from '@/db/open';

/** A real database in a folder of its own, brought up to date by the real migrations. */
export function openTestDatabase(): { db: Database; home: string; close: () => void } {
  const home = mkdtempSync(join(tmpdir(), 'benchtake-test-'));
  const db = openDatabase(home, 'db/migrations');
  return {
    db,
    home,
    close: () => {
      closeDatabase();
      rmSync(home, { recursive: true, force: true });
    },
  };
}
