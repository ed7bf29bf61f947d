import { edit } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders, recordings } from '@/db/schema';
import { searchArchive } from '@/lib/archive/store';
import { addMarker } from '@/lib/film/store';
import { addJob } from '@/lib/work/store';
import { archiveQuerySchema } from '@/shared/archive';
import {
  folderIdSchema,
  type JobId,
  narrationLineIdSchema,
  recordingIdSchema,
  type TakeId,
  takeIdSchema,
} from '@/shared/ids';

/** A job with one take, for what is to be found in it. */
export function jobWithTake(db: Database, title: string, type = 'bass guitar', on = '2026-03-17') {
  const { id: jobId } = addJob(db, {
    title,
    instrument: { type },
    client: { name: 'Ottoline Fernsby' },
    receivedOn: on,
  });
  return { jobId, takeId: addFilm(db, jobId, on) };
}

export function addFilm(db: Database, jobId: JobId, on = '2026-03-17'): TakeId {
  const folderId = newId(folderIdSchema);
  const recordingId = newId(recordingIdSchema);
  const id = newId(takeIdSchema);
  const modifiedAt = Date.parse(`${on}T12:00:00Z`);
  db.insert(folders)
    .values({ id: folderId, path: `/invented/${folderId}`, createdAt: 1 })
    .run();
  db.insert(recordings)
    .values({
      ...{ id: recordingId, folderId, path: 'a.mp4', sizeBytes: 1, modifiedAt },
      ...{ state: 'ready', stills: [0], createdAt: 1 },
    })
    .run();
  const row = { id, jobId, recordingId, position: null, trimStartMs: 0, trimEndMs: null, createdAt: 1 };
  edit(db, jobId, 'take added', (e) => e.insert('takes', row));
  return id;
}

/** Says a line, as a change that can be undone. */
export function say(db: Database, jobId: JobId, takeId: TakeId, startMs: number, text: string) {
  const id = newId(narrationLineIdSchema);
  const line = { id, jobId, takeId, startMs, endMs: startMs + 3000, text, voice: null, heardText: null };
  return { id, ...edit(db, jobId, 'line said', (e) => e.insert('narrationLines', line)) };
}

export function mark(db: Database, jobId: JobId, takeId: TakeId, ms: number, title: string) {
  return addMarker(db, jobId, { kind: 'work', title, takeId, ms, public: true });
}

export function ask(db: Database, q: string, more: Record<string, string> = {}) {
  return searchArchive(db, archiveQuerySchema.parse({ q, today: '2026-11-25', ...more }));
}

/** Numbers of the jobs that answer. */
export function found(db: Database, q: string, more: Record<string, string> = {}): number[] {
  return ask(db, q, more).answers.map(({ job }) => job.number);
}

/** What the index says, in words that do not depend on when a thing was taken in. */
export function contents(db: Database): unknown {
  const things = db.$client.prepare('select * from archive_things order by id').all();
  const films = db.$client
    .prepare('select take_id, job_id, job, day, passages from archive_takes order by take_id')
    .all();
  return { things, films, words: wordsOf(db, 'archive_words'), said: saidWords(db) };
}

/** Every word of an index with the numbers that it stands under. */
function wordsOf(db: Database, table: string): [string, number][] {
  db.$client.exec(
    `create virtual table if not exists temp.${table}_seen using fts5vocab(main, ${table}, 'instance')`,
  );
  const rows = db.$client
    .prepare(`select distinct term, doc from temp.${table}_seen order by 1, 2`)
    .raw()
    .all();
  return rows as [string, number][];
}

/** As `wordsOf`, by takes themselves: the number of a take says only when it was taken in. */
function saidWords(db: Database): string[] {
  const numbers = db.$client.prepare('select take_id from archive_takes where id = ?').pluck();
  return wordsOf(db, 'archive_said')
    .map(([word, passage]) => `${word} ${numbers.get(Math.floor(passage / 65_536))} ${passage % 65_536}`)
    .sort();
}
