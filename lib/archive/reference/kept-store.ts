import type { Database } from '@/db/open';

/**
 * Keeps what `make` works out of the record until anything in the database changes: the tables of the reference are looked
 * through page by page, while nothing does.
 */
export function whileUnchanged<K, T>(make: (db: Database, key: K) => T): (db: Database, key: K) => T {
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
