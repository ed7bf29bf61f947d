import type { Database } from '@/db/open';
import { readyOnce } from './ready-store';
import { tradeWordsOf } from './reference/trouble-words';
import { synonymsOf } from './synonyms-store';

export { faultsAnswer } from './reference/faults-store';
export { pickupsAnswer } from './reference/pickups-store';
export { readingsPlot } from './reference/plot';
export { readingsAnswer } from './reference/readings-store';
export { faultsTable, pickupsTable, readingsTable } from './reference/tables';

/** Texts that are read in one go: a few milliseconds. */
const atOnce = 200;
/** More than these would push one another out of what is remembered. */
const mostMarkers = 30_000;

/** What is still to be read, by the repairer's own words that it is read with. */
const unread = new WeakMap<ReturnType<typeof synonymsOf>, string[]>();

/**
 * Reads some of the texts that the table of faults is made of, the newest first, so that whoever opens it does not
 * wait for them all to be read.
 * @returns false where all are read
 */
export function readAhead(db: Database): boolean {
  const own = synonymsOf(db);
  const texts = unread.get(own) ?? textsOf(db);
  unread.set(own, texts);
  for (const text of texts.splice(0, atOnce)) tradeWordsOf(text, own);
  return texts.length > 0;
}

function textsOf(db: Database): string[] {
  return statements(db).texts.all().map(String);
}

const statements = readyOnce(({ $client }) => ({
  texts: $client
    .prepare(
      `SELECT * FROM (
        SELECT CASE coalesce(note, '') WHEN '' THEN title ELSE title || '. ' || note END FROM markers
        WHERE kind IN ('intake', 'diagnosis', 'work') ORDER BY rowid DESC LIMIT ${mostMarkers})
      UNION ALL SELECT title FROM jobs UNION ALL SELECT what FROM work_items`,
    )
    .pluck(),
}));
