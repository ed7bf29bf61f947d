import type { Database } from '@/db/open';

/** The two indexes of words: of the record, and of what was said. */
export const wordTables = ['archive_words', 'archive_said'] as const;
export type WordTable = (typeof wordTables)[number];

/** As the migration makes them: no text of their own, no places of words, rows can go by their number. */
const using =
  "USING fts5(`words`, content='', contentless_delete=1, detail=none, tokenize='porter unicode61 remove_diacritics 2')";

/**
 * Everything is to be taken in again, the newest job first.
 * @param atLeisure what is in the index does until there is time; else it counts as changed
 */
export function markAllStale(db: Database, atLeisure = true): void {
  const when = atLeisure ? 1 : 0;
  db.$client.exec(`
    INSERT INTO archive_stale SELECT job_id, id, ${when} FROM takes WHERE true ON CONFLICT DO NOTHING;
    INSERT INTO archive_stale SELECT id, '', ${when} FROM jobs WHERE true ON CONFLICT DO NOTHING;
  `);
}

/** Makes the index anew, empty, and marks everything to be taken in. */
export function makeAnew(db: Database): void {
  db.transaction(() => {
    for (const table of wordTables) dropWords(db, table);
    db.$client.exec(`
      DELETE FROM archive_things; DELETE FROM archive_takes; DELETE FROM archive_vocabulary; DELETE FROM archive_stale;
    `);
    for (const table of wordTables) db.$client.exec(`CREATE VIRTUAL TABLE \`${table}\` ${using}`);
    markAllStale(db, false);
  });
}

/** A damaged index may refuse to be dropped as a whole; then its pieces go one by one. */
function dropWords(db: Database, table: WordTable): void {
  try {
    db.$client.exec(`DROP TABLE IF EXISTS \`${table}\``);
  } catch (error) {
    if (!isDamage(error)) throw error;
    dropPieces(db, table);
  }
  // Pieces that are left without their table stand in the way of a new one.
  for (const piece of ['data', 'idx', 'docsize', 'config', 'content'])
    db.$client.exec(`DROP TABLE IF EXISTS \`${table}_${piece}\``);
}

function dropPieces(db: Database, table: WordTable): void {
  db.$client.unsafeMode(true);
  try {
    db.$client.pragma('writable_schema = on');
    db.$client.prepare("DELETE FROM sqlite_master WHERE name = ? AND type = 'table'").run(table);
  } finally {
    db.$client.pragma('writable_schema = reset');
    db.$client.unsafeMode(false);
  }
}

/** What SQLite says of an index that is torn or gone. */
export function isDamage(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const code = 'code' in error ? String(error.code) : '';
  return (
    code.startsWith('SQLITE_CORRUPT') ||
    /no such table: .*archive_(words|said)|vtable constructor failed: archive_|invalid fts5 file format/.test(
      error.message,
    )
  );
}

/** Whether the index holds what it is said to hold. Counts only: a few milliseconds even for a million lines. */
export function isWhole(db: Database): boolean {
  try {
    const count = (sql: string) => Number(db.$client.prepare(sql).pluck().get());
    for (const table of wordTables) db.$client.prepare(`SELECT 1 FROM ${table}('"a"') LIMIT 1`).get();
    return (
      count('SELECT count(*) FROM archive_words_docsize') === count('SELECT count(*) FROM archive_things') &&
      count('SELECT count(*) FROM archive_said_docsize') ===
        count('SELECT coalesce(sum(passages), 0) FROM archive_takes')
    );
  } catch (error) {
    if (isDamage(error)) return false;
    throw error;
  }
}

/**
 * Looks through the whole index, which SQLite does in one go.
 * @see https://www.sqlite.org/fts5.html#the_integrity_check_command
 */
export function isSound(db: Database, table: WordTable): boolean {
  try {
    db.$client.prepare(`INSERT INTO ${table}(${table}) VALUES ('integrity-check')`).run();
    return true;
  } catch (error) {
    if (isDamage(error)) return false;
    throw error;
  }
}
