import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { settings } from '@/db/schema';
import { type Synonym, synonymsSchema } from '@/shared/archive';
import { markAllStale } from './index-tables-store';

const key = 'synonyms';

/** The list that was read last, by the words it was read from: who prepares words keeps what it makes of a list. */
const lastRead = new WeakMap<Database, { written: string; synonyms: Synonym[] }>();

/** Words of the repairer's own, and what they mean: the same list each time while it is not changed. */
export function synonymsOf(db: Database): Synonym[] {
  const row = db.select().from(settings).where(eq(settings.key, key)).get();
  const written = JSON.stringify(row?.value ?? { synonyms: [] });
  const known = lastRead.get(db);
  if (known?.written === written) return known.synonyms;
  const { synonyms } = synonymsSchema.parse(JSON.parse(written));
  lastRead.set(db, { written, synonyms });
  return synonyms;
}

/** What was taken in under other synonyms is prepared anew by and by. */
export function setSynonyms(db: Database, synonyms: Synonym[]): void {
  const value = { synonyms };
  db.transaction((tx) => {
    tx.insert(settings)
      .values({ key, value })
      .onConflictDoUpdate({ target: settings.key, set: { value } })
      .run();
    markAllStale(db);
  });
}
