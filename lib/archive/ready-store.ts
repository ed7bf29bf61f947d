import { type SQL, sql } from 'drizzle-orm';
import type { Database } from '@/db/open';

/** Keeps for each database what is made ready for it once, such as statements that are run for every question. */
export function readyOnce<T>(make: (db: Database) => T): (db: Database) => T {
  const ready = new WeakMap<Database, T>();
  return (db) => {
    const known = ready.get(db) ?? make(db);
    ready.set(db, known);
    return known;
  };
}

/** A list that is given by name, as JSON: a statement that is ready cannot have a place for each of its values. */
export function listed(name: string): SQL {
  return sql`(select value from json_each(${sql.placeholder(name)}))`;
}

/**
 * Keeps what `make` works out of the record until anything in the database changes, by its key where it has one: the
 * tables of the reference are looked through page by page, and names are asked for with every question, while nothing does.
 */
export function whileUnchanged<T, K = void>(make: (db: Database, key: K) => T): (db: Database, key: K) => T {
  const kept = new WeakMap<Database, { stamp: string; values: Map<K, T> }>();
  return (db, key) => {
    const stamp = stampOf(db);
    const known = kept.get(db);
    const values = known?.stamp === stamp ? known.values : new Map<K, T>();
    kept.set(db, { stamp, values });
    const value = values.get(key) ?? make(db, key);
    values.set(key, value);
    return value;
  };
}

/** Changes by this connection (total_changes) and by any other (PRAGMA data_version). */
function stampOf({ $client }: Database): string {
  const own = $client.prepare('SELECT total_changes()').pluck().get();
  return `${own} ${$client.pragma('data_version', { simple: true })}`;
}
