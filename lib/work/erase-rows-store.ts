import { eq, inArray } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { changes, clients, instruments, jobs, keptTickets } from '@/db/schema';
import { clientIdSchema } from '@/shared/ids';
import { imagesWithout, labelWhose } from './erase/history';
import type { Scrubber } from './erase/scrub';
import { withColumnTexts } from './erase/values';
import { fieldWhose, type Whose } from './erase/whose';

interface Erasing {
  clientIds: ReadonlySet<string>;
  scrubber: Scrubber;
  whose: Whose;
}

/** Rows that are read at once. */
const atOnce = 500;
/**
 * The history is rewritten by its own rules; kept tickets and the archive's words are worked out anew; migrations hold
 * no words.
 */
const apart: ReadonlySet<string> = new Set([
  'changes',
  'kept_tickets',
  'archive_vocabulary',
  '__drizzle_migrations',
]);

const tablesSchema = z.array(z.object({ name: z.string(), type: z.string(), schema: z.string() }));
const rowsSchema = z.array(z.looseObject({ rowid: z.int() }));

/**
 * Takes a person out of every row: of all tables that there are, so that one that comes later is not forgotten.
 * @returns how many texts told of the person
 */
export function scrubEverything(db: Database, erasing: Erasing): number {
  const ids = [...erasing.clientIds].map((id) => clientIdSchema.parse(id));
  let texts = scrubHistory(db, erasing);
  const tables = tablesOf(db, 'table').filter((table) => !apart.has(table));
  const indexes = wordIndexesOf(db).filter(({ content }) => content === 'own');
  for (const table of [...tables, ...indexes.map(({ name }) => name)])
    texts += scrubTable(db, table, erasing);
  db.update(jobs).set({ clientId: null }).where(inArray(jobs.clientId, ids)).run();
  db.update(instruments).set({ clientId: null }).where(inArray(instruments.clientId, ids)).run();
  db.delete(clients).where(inArray(clients.id, ids)).run();
  db.delete(keptTickets).run();
  return texts;
}

function scrubTable(db: Database, table: string, erasing: Erasing): number {
  const read = db.$client.prepare(
    `select rowid as rowid, * from ${quoted(table)} where rowid > ? order by rowid limit ${atOnce}`,
  );
  let texts = 0;
  for (let last = Number.MIN_SAFE_INTEGER; ; ) {
    const rows = rowsSchema.parse(read.all(last));
    for (const { rowid, ...row } of rows) {
      const changed = changedColumns(table, row, erasing);
      texts += changed.length;
      for (const [column, text] of changed)
        db.$client
          .prepare(`update ${quoted(table)} set ${quoted(column)} = ? where rowid = ?`)
          .run(text, rowid);
      last = rowid;
    }
    if (rows.length < atOnce) return texts;
  }
}

/** Columns of a row that tell of the person, with their new texts. */
function changedColumns(
  table: string,
  row: Readonly<Record<string, unknown>>,
  { clientIds, scrubber, whose }: Erasing,
): [string, string][] {
  const rowWhose = whose(asInCode(table), inCode(row));
  const isTheirEntry = table === 'clients' && typeof row.id === 'string' && clientIds.has(row.id);
  if (isTheirEntry) return [];
  return Object.entries(row).flatMap(([column, value]) => {
    const where = fieldWhose(rowWhose, table, column);
    if (typeof value !== 'string' || where === 'leave') return [];
    const text = withColumnTexts(column, value, (words) => scrubber.scrub(words, where));
    return text === value ? [] : [[column, text]];
  });
}

/** Changes that are about nothing but the person go. */
function scrubHistory(db: Database, erasing: Erasing): number {
  const ids = db.select({ id: changes.id }).from(changes).all();
  let texts = 0;
  for (const { id } of ids) {
    const change = db.select().from(changes).where(eq(changes.id, id)).get();
    if (!change) continue;
    const entries = imagesWithout(change.entries, erasing);
    const where = labelWhose(change.jobId, change.entries, erasing.whose);
    const label = where === 'leave' ? change.label : erasing.scrubber.scrub(change.label, where);
    const isSame = JSON.stringify(entries) === JSON.stringify(change.entries);
    if (isSame && label === change.label) continue;
    texts += 1;
    if (entries.length === 0) db.delete(changes).where(eq(changes.id, id)).run();
    else {
      const touched = [...new Set(entries.map(({ table }) => table))];
      db.update(changes).set({ entries, label, touched }).where(eq(changes.id, id)).run();
    }
  }
  return texts;
}

/**
 * Builds the indexes of words anew: they keep deleted words in their older parts (SQLite FTS5, section 6), and VACUUM
 * may have given the rows that they point at other numbers.
 */
export function indexWordsAnew(db: Database): void {
  for (const { name, content } of wordIndexesOf(db)) {
    const command = content === 'none' ? 'optimize' : 'rebuild';
    db.$client.prepare(`insert into ${quoted(name)}(${quoted(name)}) values (?)`).run(command);
  }
}

interface WordIndex {
  name: string;
  /** Where the words lie that it indexes. */
  content: 'own' | 'another table' | 'none';
}

function wordIndexesOf(db: Database): WordIndex[] {
  const made = db.$client.prepare('select sql from sqlite_master where name = ?').pluck();
  return tablesOf(db, 'virtual')
    .map((name) => ({ name, sql: String(made.get(name)) }))
    .filter(({ sql }) => /using\s+fts5/i.test(sql))
    .map(({ name, sql }) => ({ name, content: contentOf(sql) }));
}

function contentOf(sql: string): WordIndex['content'] {
  const content = /\bcontent\s*=\s*(?:'([^']*)'|"([^"]*)"|([^\s,)]+))/i.exec(sql);
  if (!content) return 'own';
  return (content[1] ?? content[2] ?? content[3]) === '' ? 'none' : 'another table';
}

function tablesOf(db: Database, type: 'table' | 'virtual'): string[] {
  return tablesSchema
    .parse(db.$client.pragma('table_list'))
    .filter((table) => table.schema === 'main' && table.type === type && !table.name.startsWith('sqlite_'))
    .map(({ name }) => name);
}

function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

/** Columns and tables as the schema names them in code: `job_id` is jobId. */
function asInCode(name: string): string {
  return name.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

function inCode(row: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(row).map(([column, value]) => [asInCode(column), value]));
}
