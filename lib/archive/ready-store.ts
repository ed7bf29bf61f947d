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
