import { existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { type BetterSQLite3Database, drizzle } from 'drizzle-orm/better-sqlite3';
import { migrate } from 'drizzle-orm/better-sqlite3/migrator';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import { DomainError } from '@/shared/problem';
import * as schema from './schema';

export type Database = BetterSQLite3Database<typeof schema> & { $client: BetterSqlite.Database };

/** Backups kept of the database before migrations. */
const backupsKept = 5;

/**
 * One handle a process. It hangs on globalThis because the server and the pages are bundled apart and
 * would each hold a module of their own.
 */
const holder = globalThis as typeof globalThis & { benchtakeDatabase?: Database };

/** The database of this process. Throws where nobody has opened it: opening at import is not wanted. */
export function database(): Database {
  const db = holder.benchtakeDatabase;
  if (!db) throw new Error('The database is not open: openDatabase() comes first.');
  return db;
}

/**
 * Opens (and brings up to date) the database in the data folder, once a process.
 * @param home the data folder; made where missing
 * @param migrations folder of the generated migrations
 */
export function openDatabase(home: string, migrations: string): Database {
  if (holder.benchtakeDatabase) return holder.benchtakeDatabase;
  mkdirSync(home, { recursive: true });
  const file = join(home, 'benchtake.sqlite');
  const existed = existsSync(file);
  const client = new BetterSqlite(file);
  // FULL on purpose: a change is on disk before the page says so.
  client.pragma('journal_mode = WAL');
  client.pragma('synchronous = FULL');
  client.pragma('busy_timeout = 5000');
  const db = drizzle(client, { schema });
  try {
    if (existed && pendingMigrations(client, migrations) > 0) backUp(client, join(home, 'backups'));
    bringUpToDate(db, migrations);
  } catch (error) {
    client.close();
    throw error;
  }
  client.pragma('foreign_keys = ON');
  holder.benchtakeDatabase = db;
  return db;
}

/** The data folder of this process: database, backups, what was made from recordings. */
export function home(): string {
  return dirname(database().$client.name);
}

export function closeDatabase(): void {
  holder.benchtakeDatabase?.$client.close();
  delete holder.benchtakeDatabase;
}

/** Foreign keys are off while tables are rebuilt, or the rebuild would cascade into child rows (drizzle-orm #5782). */
function bringUpToDate(db: Database, migrations: string): void {
  db.$client.pragma('foreign_keys = OFF');
  migrate(db, { migrationsFolder: migrations });
  const broken = db.$client.pragma('foreign_key_check');
  if (Array.isArray(broken) && broken.length > 0) {
    throw new DomainError(
      'conflict',
      'The record does not hold together after bringing it up to date.',
      'Nothing was lost: the copy made before lies in the backups folder of the data folder. Put it back and use the version you had.',
      { broken },
    );
  }
}

function pendingMigrations(client: BetterSqlite.Database, migrations: string): number {
  const all = readMigrationFiles({ migrationsFolder: migrations });
  const known = client.prepare("select 1 from sqlite_master where name = '__drizzle_migrations'").get();
  if (!known) return 0;
  const row = client.prepare('select max(created_at) as newest from __drizzle_migrations').get() as {
    newest: number | null;
  };
  return all.filter((migration) => migration.folderMillis > (row.newest ?? 0)).length;
}

/** A copied WAL database may not open; VACUUM INTO writes a whole one. */
function backUp(client: BetterSqlite.Database, folder: string): void {
  mkdirSync(folder, { recursive: true });
  const stamp = new Date().toISOString().replace(/[:.]/g, '-');
  client.prepare('vacuum into ?').run(join(folder, `before-migration-${stamp}.sqlite`));
  const old = readdirSync(folder)
    .filter((name) => name.startsWith('before-migration-'))
    .sort()
    .slice(0, -backupsKept);
  for (const name of old) rmSync(join(folder, name));
}
