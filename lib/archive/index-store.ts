import { and, asc, eq, sql } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { archiveStale, archiveTakes, narrationLines } from '@/db/schema';
import type { Synonym } from '@/shared/archive';
import type { JobId, TakeId } from '@/shared/ids';
import { matchOf } from './match';
import { memoryByWords } from './memory';
import { betweenWhole, passageNumber, passagesOfTake } from './numbers';
import { readyOnce } from './ready-store';
import { synonymsOf } from './synonyms-store';
import { tagsOf, typeTag } from './tags';
import { numberedThings, type ToldJob } from './things';
import { toldJobs, toldTake } from './told-store';
import { prepareWords } from './words';

/** How long a search may spend on taking in what has changed; the rest follows at leisure. */
const searchBudgetMs = 150;
/** Pieces that are looked up at once. */
const atOnce = 50;

/** The record of a job, or the spoken lines of one of its takes where one is named. */
type Piece = Pick<typeof archiveStale.$inferSelect, 'jobId' | 'takeId'>;

/**
 * Takes in what has changed since the last time, the last change first.
 * @param budgetMs no other piece is begun after that
 * @returns how many jobs are still waiting
 */
export function takeInStale(db: Database, budgetMs = searchBudgetMs): number {
  const end = performance.now() + budgetMs;
  for (;;) {
    const pieces = stalePieces(db, false, atOnce);
    if (pieces.length === 0) return 0;
    for (const piece of pieces) {
      takeIn(db, piece);
      if (performance.now() > end) return waitingJobs(db);
    }
  }
}

/** Takes everything in, however long it lasts. */
export function takeInAll(db: Database): void {
  for (;;) {
    const pieces = [...stalePieces(db, false, atOnce), ...stalePieces(db, true, atOnce)];
    if (pieces.length === 0) return;
    for (const piece of pieces) takeIn(db, piece);
  }
}

/** Takes one piece in, what has changed before what may wait. @returns false where there is none */
export function takeInNext(db: Database): boolean {
  const [piece] = [...stalePieces(db, false, 1), ...stalePieces(db, true, 1)];
  if (piece) takeIn(db, piece);
  return piece !== undefined;
}

function stalePieces(db: Database, atLeisure: boolean, limit: number): Piece[] {
  return db
    .select({ jobId: archiveStale.jobId, takeId: archiveStale.takeId })
    .from(archiveStale)
    .where(eq(archiveStale.atLeisure, atLeisure))
    .orderBy(sql`rowid desc`)
    .limit(limit)
    .all();
}

function waitingJobs(db: Database): number {
  return Number(statements(db).waiting.get());
}

function takeIn(db: Database, { jobId, takeId }: Piece): void {
  db.transaction((tx) => {
    if (takeId === '') takeInRecord(db, jobId);
    else takeInLines(db, jobId, takeId);
    tx.delete(archiveStale)
      .where(and(eq(archiveStale.jobId, jobId), eq(archiveStale.takeId, takeId)))
      .run();
  });
}

function takeInRecord(db: Database, jobId: JobId): void {
  const ask = statements(db);
  ask.forgetWords.run(jobId);
  ask.forgetThings.run(jobId);
  ask.forgetSilent.run(jobId);
  const told = toldJobs(db, [jobId]).get(jobId);
  if (!told) return;
  for (const { id, day } of told.takes) ask.addTake.run(id, jobId, told.job.number, day);
  addThings(db, told, synonymsOf(db));
}

function addThings(db: Database, told: ToldJob, own: readonly Synonym[]): void {
  const { addThing, addWords } = statements(db);
  const { instrument } = told;
  const words = new Set<string>();
  for (const [id, thing] of numberedThings(told)) {
    const { recordId, moment, markerKind, readingKind, baseValue } = thing;
    const prepared = prepareWords(thing.texts.join('\n'), own, instrument.type);
    collect(words, prepared);
    addThing.run(
      ...[id, told.job.id, recordId, moment?.takeId ?? null, moment?.ms ?? null],
      ...[markerKind, readingKind, baseValue],
    );
    addWords.run(id, `${prepared} ${tagsOf(instrument.type, thing)}`);
  }
  keepWords(db, words);
}

function takeInLines(db: Database, jobId: JobId, takeId: TakeId): void {
  const { forgetSaid, addSaid } = statements(db);
  const before = db.select().from(archiveTakes).where(eq(archiveTakes.takeId, takeId)).get();
  if (before) forgetSaid.run(...passagesOfTake(before.id));
  const lines = linesOf(db, takeId);
  const told = toldTake(db, jobId, takeId);
  if (!told) {
    db.delete(archiveTakes).where(eq(archiveTakes.takeId, takeId)).run();
    return;
  }
  const take = numberOfTake(db, { takeId, jobId, job: told.number, day: told.day, passages: 0 });
  const said = passagesOf(take, lines);
  db.update(archiveTakes).set({ passages: said.size }).where(eq(archiveTakes.id, take)).run();
  const own = synonymsOf(db);
  const words = new Set<string>();
  for (const [passage, text] of said) {
    const prepared = preparedPassage(text, own, told.type);
    collect(words, prepared);
    addSaid.run(passage, `${prepared} ${typeTag(told.type)}`);
  }
  keepWords(db, words);
}

/** A whole take is taken in anew when one line of it changes: what was said in its other passages is remembered. */
const memoryOf = memoryByWords<string>(5000);

function preparedPassage(text: string, own: readonly Synonym[], type: string): string {
  return memoryOf(own).of(`${type}\n${text}`, () => prepareWords(text, own, type));
}

function numberOfTake(db: Database, row: Omit<typeof archiveTakes.$inferInsert, 'id'>): number {
  return db
    .insert(archiveTakes)
    .values(row)
    .onConflictDoUpdate({ target: archiveTakes.takeId, set: row })
    .returning({ id: archiveTakes.id })
    .get().id;
}

function linesOf(db: Database, takeId: TakeId): { ms: number; text: string }[] {
  return db
    .select({ ms: narrationLines.startMs, text: narrationLines.text })
    .from(narrationLines)
    .where(eq(narrationLines.takeId, takeId))
    .orderBy(asc(narrationLines.startMs), asc(narrationLines.id))
    .all();
}

/** What is said in each passage of a take, by the number of the passage. */
function passagesOf(take: number, lines: readonly { ms: number; text: string }[]): Map<number, string> {
  const said = new Map<number, string>();
  for (const { ms, text } of lines) {
    const passage = passageNumber(take, ms);
    const before = said.get(passage);
    said.set(passage, before === undefined ? text : `${before}\n${text}`);
  }
  return said;
}

/** Shorter words are too near to everything, longer ones are nobody's slip. */
function collect(words: Set<string>, prepared: string): void {
  for (const word of prepared.split(/\s+/)) if (word.length > 2 && word.length < 30) words.add(word);
}

function keepWords(db: Database, words: ReadonlySet<string>): void {
  const { addWord } = statements(db);
  for (const word of words) addWord.run(word);
}

/** Takes words out of the vocabulary that stand nowhere any more. */
export function forgetOldWords(db: Database): void {
  const { words, forgetWord } = statements(db);
  for (const word of words.all().map(String)) if (!stands(db, word)) forgetWord.run(word);
}

/** Whether a prepared word stands anywhere, in any of its forms. */
export function stands(db: Database, word: string): boolean {
  const { inWords, inSaid } = statements(db);
  const match = matchOf(word);
  return match !== null && (inWords.get(match) !== undefined || inSaid.get(match) !== undefined);
}

/** Run for every line that is taken in: made ready once for each database. */
const statements = readyOnce(prepare);

function prepare({ $client }: Database) {
  return {
    forgetWords: $client.prepare(
      'DELETE FROM archive_words WHERE rowid IN (SELECT id FROM archive_things WHERE job_id = ?)',
    ),
    forgetThings: $client.prepare('DELETE FROM archive_things WHERE job_id = ?'),
    forgetSaid: $client.prepare(`DELETE FROM archive_said WHERE rowid ${betweenWhole}`),
    forgetSilent: $client.prepare('DELETE FROM archive_takes WHERE job_id = ? AND passages = 0'),
    addTake: $client.prepare(
      `INSERT INTO archive_takes(take_id, job_id, job, day, passages) VALUES (?, ?, ?, ?, 0)
        ON CONFLICT (take_id) DO UPDATE SET day = excluded.day`,
    ),
    addThing: $client.prepare('INSERT INTO archive_things VALUES (?, ?, ?, ?, ?, ?, ?, ?)'),
    addWords: $client.prepare('INSERT INTO archive_words(rowid, words) VALUES (?, ?)'),
    addSaid: $client.prepare('INSERT INTO archive_said(rowid, words) VALUES (?, ?)'),
    addWord: $client.prepare('INSERT INTO archive_vocabulary VALUES (?) ON CONFLICT DO NOTHING'),
    forgetWord: $client.prepare('DELETE FROM archive_vocabulary WHERE word = ?'),
    words: $client.prepare('SELECT word FROM archive_vocabulary').pluck(),
    inWords: $client.prepare('SELECT 1 FROM archive_words WHERE archive_words MATCH ? LIMIT 1').pluck(),
    inSaid: $client.prepare('SELECT 1 FROM archive_said WHERE archive_said MATCH ? LIMIT 1').pluck(),
    waiting: $client.prepare('SELECT count(DISTINCT job_id) FROM archive_stale WHERE at_leisure = 0').pluck(),
  };
}
