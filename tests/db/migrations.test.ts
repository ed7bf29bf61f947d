import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { closeDatabase, openDatabase } from '@/db/open';
import { getJobRecord, rackOf } from '@/lib/work/store';
import { fill, rowsOf } from './fill';

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

describe('a filled database of every earlier schema', () => {
  const earlier = journal.entries.slice(0, -1).map(({ tag }) => tag);
  it.each(earlier)('%s: every row is there after it is brought up to date, and hangs together', (tag) => {
    const home = newHome();
    const { $client: old } = openDatabase(home, upTo(tag));
    fill(old);
    const before = rowsOf(old);
    closeDatabase();

    const db = openDatabase(home, 'db/migrations');
    const after = rowsOf(db.$client);
    for (const [table, rows] of before) {
      expect(after.get(table), table).toHaveLength(rows.length);
      for (const [index, row] of rows.entries())
        expect(after.get(table)?.[index], table).toMatchObject(filled(row));
    }
    expect(db.$client.pragma('foreign_key_check')).toEqual([]);
    expect(db.$client.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(readdirSync(join(home, 'backups'))).toHaveLength(1);
    const { jobs, total } = rackOf(db, { find: '', limit: 10 });
    expect(total).toBe(2);
    for (const { id, receivedOn } of jobs) {
      expect(receivedOn).not.toBe('');
      expect(getJobRecord(db, id).markers).toHaveLength(1);
    }
  });

  it('keeps what a client brought in as that client’s', () => {
    const home = newHome();
    const first = journal.entries[0]?.tag ?? '';
    fill(openDatabase(home, upTo(first)).$client);
    closeDatabase();
    const { $client } = openDatabase(home, 'db/migrations');
    expect($client.prepare('select client_id from instruments order by id').pluck().all()).toEqual(
      $client.prepare('select client_id from jobs order by instrument_id').pluck().all(),
    );
  });
});

/** Values that were there: what was empty may have been filled from elsewhere. */
function filled(row: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(row).filter(([, value]) => value !== null));
}

/** The migrations as they stood when the newest one was `tag`. */
function upTo(tag: string): string {
  const folder = newHome();
  const entries = journal.entries.slice(0, journal.entries.findIndex((entry) => entry.tag === tag) + 1);
  mkdirSync(join(folder, 'meta'));
  writeFileSync(join(folder, 'meta', '_journal.json'), JSON.stringify({ ...journal, entries }));
  for (const entry of entries)
    copyFileSync(`db/migrations/${entry.tag}.sql`, join(folder, `${entry.tag}.sql`));
  return folder;
}

describe('what is kept of a ticket', () => {
  // A table that is rebuilt loses its triggers without a word.
  it('goes when anything that it tells changes, in every table that it tells of', () => {
    const db = openDatabase(newHome(), 'db/migrations');
    const watched = db.$client
      .prepare("select distinct tbl_name from sqlite_master where type = 'trigger' and name like '%_kept'")
      .pluck()
      .all();
    expect(new Set(watched)).toEqual(
      new Set([
        ...[
          'jobs',
          'clients',
          'instruments',
          'claims',
          'folders',
          'recordings',
          'takes',
          'markers',
          'meters',
        ],
        ...['readings', 'traces', 'outcomes', 'harnesses', 'proposals', 'work_items', 'parts'],
      ]),
    );
  });
});

describe('what is to be taken into the archive anew', () => {
  it('is noted when anything changes that can be found, in every table that it stands in', () => {
    const db = openDatabase(newHome(), 'db/migrations');
    const watched = db.$client
      .prepare("select distinct tbl_name from sqlite_master where type = 'trigger' and name like '%_stale'")
      .pluck()
      .all();
    expect(new Set(watched)).toEqual(
      new Set([
        ...['jobs', 'clients', 'instruments', 'claims', 'folders', 'recordings', 'takes', 'markers'],
        ...['readings', 'traces', 'outcomes', 'work_items', 'parts', 'narration_lines'],
      ]),
    );
  });

  it('is all that an older database holds', () => {
    const home = newHome();
    fill(openDatabase(home, upTo('0003_hand_over')).$client);
    closeDatabase();
    const { $client } = openDatabase(home, 'db/migrations');
    const all = $client.prepare(
      "select id as job_id, '' as take_id from jobs union all select job_id, id from takes order by 1, 2",
    );
    const noted = $client.prepare('select job_id, take_id from archive_stale order by 1, 2');
    expect(noted.all()).toEqual(all.all());
    expect(noted.all()).not.toEqual([]);
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
        "select name from pragma_table_list where schema = 'main' and type in ('table', 'virtual') and name not like 'sqlite_%' and name not in ('settings', '__drizzle_migrations')",
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
