import { eq } from 'drizzle-orm';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import { recordings, takes } from '@/db/schema';
import { addFolder } from '@/lib/media/store';
import { claimTask, endLeisure, insertTask } from '@/lib/tasks/queue-store';
import { type RecordingId, recordingIdSchema } from '@/shared/ids';
import { openTestDatabase } from '../open-test-database';
import { jobWithTake } from './index-job';

let db: Database;
let close: () => void;
let old: RecordingId;
let today: RecordingId;

beforeEach(() => {
  const opened = openTestDatabase();
  ({ db, close } = opened);
  const { id: folderId } = addFolder(db, { path: opened.home, clockOffsetMinutes: 0 });
  const recordingCalled = (letter: string): RecordingId => {
    const id = recordingIdSchema.parse(letter.repeat(20));
    const facts = { sizeBytes: 1, modifiedAt: 0, state: 'ready' as const, createdAt: 0 };
    db.insert(recordings)
      .values({ ...facts, id, folderId, path: letter })
      .run();
    return id;
  };
  old = recordingCalled('a');
  today = recordingCalled('b');
});
afterEach(() => close());

const next = () => claimTask(db, ['sound', 'pictures'])?.recordingId;

it('work at leisure comes behind all that somebody waits for', () => {
  insertTask(db, { kind: 'sound', recordingId: old }, {}, true);
  insertTask(db, { kind: 'pictures', recordingId: today });
  expect([next(), next(), next()]).toEqual([today, old, undefined]);
});

it('asked for without leisure it comes to its usual place, and is not done twice', () => {
  insertTask(db, { kind: 'pictures', recordingId: today });
  const { id } = insertTask(db, { kind: 'sound', recordingId: old }, {}, true);
  expect(insertTask(db, { kind: 'sound', recordingId: old }).id).toBe(id);
  expect(insertTask(db, { kind: 'sound', recordingId: old }, {}, true).id).toBe(id);
  expect([next(), next(), next()]).toEqual([old, today, undefined]);
});

it('of a job that is opened comes to its usual place, that of another job does not', () => {
  const { jobId, takeId } = jobWithTake(db, 'Opened');
  const ofJob = db.select({ id: takes.recordingId }).from(takes).where(eq(takes.id, takeId)).get()?.id ?? old;
  insertTask(db, { kind: 'sound', recordingId: old }, {}, true);
  insertTask(db, { kind: 'sound', recordingId: ofJob }, {}, true);
  insertTask(db, { kind: 'pictures', recordingId: today });
  endLeisure(db, jobId);
  expect([next(), next(), next(), next()]).toEqual([ofJob, today, old, undefined]);
});
