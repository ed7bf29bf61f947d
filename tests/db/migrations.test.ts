import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { closeDatabase, openDatabase } from '@/db/open';

const journal = JSON.parse(readFileSync('db/migrations/meta/_journal.json', 'utf8')) as {
  entries: { idx: number; when: number; tag: string }[];
};
const homes: string[] = [];
const newHome = () => {
  const home = mkdtempSync(join(tmpdir(), 'benchtake-migrations-'));
  homes.push(home);
  return home;
};
afterEach(() => {
  closeDatabase();
  for (const home of homes.splice(0)) rmSync(home, { recursive: true, force: true });
});

describe('the journal of migrations', () => {
  // A migration older than the newest one applied would be skipped in silence (drizzle-orm #5769).
  it('only grows', () => {
    journal.entries.forEach((entry, index) => {
      expect(entry.idx).toBe(index);
      expect(entry.when).toBeGreaterThan(journal.entries[index - 1]?.when ?? 0);
    });
  });
});

describe('opening the database', () => {
  it('sets what keeps the record safe', () => {
    const { $client } = openDatabase(newHome(), 'db/migrations');
    expect($client.pragma('journal_mode', { simple: true })).toBe('wal');
    expect($client.pragma('synchronous', { simple: true })).toBe(2);
    expect($client.pragma('foreign_keys', { simple: true })).toBe(1);
    expect($client.pragma('busy_timeout', { simple: true })).toBe(5000);
  });

  it('makes no backup where there is nothing to bring up to date', () => {
    const home = newHome();
    openDatabase(home, 'db/migrations');
    closeDatabase();
    openDatabase(home, 'db/migrations');
    expect(readdirSync(home)).not.toContain('backups');
  });

  it('makes a whole backup before it brings an older database up to date', () => {
    const home = newHome();
    openDatabase(home, 'db/migrations').$client.exec("insert into settings values ('shop', '\"Bench 4\"')");
    closeDatabase();
    const older = new BetterSqlite(join(home, 'benchtake.sqlite'));
    older.pragma('foreign_keys = OFF');
    const tables = older
      .prepare(
        "select name from sqlite_master where type = 'table' and name not in ('settings', '__drizzle_migrations')",
      )
      .pluck()
      .all();
    for (const table of tables) older.exec(`drop table "${table}"`);
    older.exec('delete from __drizzle_migrations; alter table settings rename to old_settings');
    older.close();
    openDatabase(home, 'db/migrations');
    const [backup] = readdirSync(join(home, 'backups'));
    const copy = new BetterSqlite(join(home, 'backups', backup ?? ''), { readonly: true });
    expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(copy.prepare('select value from old_settings').pluck().get()).toBe('"Bench 4"');
    copy.close();
  });
});
