import type { Database as Sqlite } from 'better-sqlite3';
import { is } from 'drizzle-orm';
import { getTableConfig, SQLiteTable } from 'drizzle-orm/sqlite-core';
import * as schema from '@/db/schema';
import { fourPots } from '../wiring/jack-harnesses';

interface Column {
  name: string;
  type: string;
  notnull: number;
}
interface Reference {
  from: string;
  table: string;
}

const tables = Object.values(schema).flatMap((value) =>
  is(value, SQLiteTable) ? [getTableConfig(value)] : [],
);
const isJson = (table: string, column: string) =>
  tables
    .find(({ name }) => name === table)
    ?.columns.some((each) => each.name === column && each.dataType === 'json') ?? false;

/** Words that the rules know, for columns that hold one of a few. */
const known: Record<string, string> = {
  'recordings.state': 'ready',
  'markers.kind': 'work',
  'readings.kind': 'resistance',
  'readings.unit': 'kΩ',
  'readings.basis': 'measured',
  'tasks.kind': 'sound',
  'tasks.state': 'done',
  'proposals.decision': 'dismissed',
  'traces.conductors': '["red","white"]',
  'traces.rows': '["slug"]',
  'harnesses.harness': JSON.stringify(fourPots),
  'settings.value': '{"slang":[]}',
};
const lists = new Set(['traces.assumed', 'changes.entries', 'changes.touched', 'meters.ranges']);

/** Columns that would put a row out of sight, or say that it has no value. */
const zero = new Set(['deleted_at', 'undone_at', 'open']);

/** What is kept of a ticket, and the archive's index, is worked out, not written. */
const workedOut = /^(?:kept_tickets$|archive_)/;

/** Two rows in every table of a database of any age, each column filled, every reference kept. */
export function fill(client: Sqlite): void {
  for (const table of inOrder(client)) for (const nth of [1, 2]) insertRow(client, table, nth);
}

/** Every row of every table, by table, as plain values. */
export function rowsOf(client: Sqlite): Map<string, Record<string, unknown>[]> {
  return new Map(
    inOrder(client).map((table) => [
      table,
      client.prepare(`select * from "${table}" order by 1`).all() as Record<string, unknown>[],
    ]),
  );
}

function insertRow(client: Sqlite, table: string, nth: number): void {
  const references = referencesOf(client, table);
  const columns = client.pragma(`table_info("${table}")`) as Column[];
  const values = columns.map((column) => {
    const reference = references.find(({ from }) => from === column.name);
    if (reference) return id(reference.table, nth);
    return sample(table, column, nth);
  });
  const names = columns.map(({ name }) => `"${name}"`).join(', ');
  client
    .prepare(`insert into "${table}" (${names}) values (${columns.map(() => '?').join(', ')})`)
    .run(values);
}

function sample(table: string, { name, type, notnull }: Column, nth: number): string | number | null {
  const place = `${table}.${name}`;
  if (known[place]) return known[place];
  if (name === 'id') return id(table, nth);
  if (isJson(table, name)) return notnull ? (lists.has(place) ? '[]' : '{}') : null;
  if (/^(integer|real)$/i.test(type)) return zero.has(name) ? (notnull ? 0 : null) : nth;
  return `${name} ${nth}`;
}

function id(table: string, nth: number): string {
  return `${table.replace(/[^a-z]/g, '')}${nth}`.padEnd(20, '0').slice(0, 20);
}

function referencesOf(client: Sqlite, table: string): Reference[] {
  return client.pragma(`foreign_key_list("${table}")`) as Reference[];
}

/** Tables, each after those that it refers to. */
function inOrder(client: Sqlite): string[] {
  const all = client
    .prepare(
      "select name from sqlite_master where type = 'table' and name not like 'sqlite_%' and name not like '\\_\\_%' escape '\\'",
    )
    .pluck()
    .all()
    .map(String)
    .filter((table) => !workedOut.test(table));
  const ordered: string[] = [];
  const put = (table: string) => {
    if (ordered.includes(table)) return;
    for (const reference of referencesOf(client, table)) if (reference.table !== table) put(reference.table);
    ordered.push(table);
  };
  all.sort().forEach(put);
  return ordered;
}
