import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { undoNewest } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders } from '@/db/schema';
import { addTake } from '@/lib/film/store';
import { importToTake, listenResults, narrationOf } from '@/lib/narration/store';
import { addJob } from '@/lib/work/store';
import { folderIdSchema } from '@/shared/ids';
import type { Take } from '@/shared/takes';
import { openTestDatabase } from '../open-test-database';

let db: Database;
let home: string;
let close: () => void;
let take: Take;
let elsewhere: Take;

/** One film that is a take of two jobs. */
beforeEach(() => {
  ({ db, home, close } = openTestDatabase());
  db.insert(folders)
    .values({ id: newId(folderIdSchema), path: home, createdAt: 0 })
    .run();
  const film = join(home, 'film.mp4');
  writeFileSync(film, 'film');
  const takeOf = (title: string) =>
    addTake(db, addJob(db, { title, instrument: { type: 'electric guitar' } }).id, film).take;
  take = takeOf('Neck pickup is silent');
  elsewhere = takeOf('Bridge pickup hums');
});
afterEach(() => close());

/** As the filter writes its lines: SubRip, counted from 0. */
const heard = (captions: string, offsetMs = 0) =>
  listenResults(db, home).listen.onResult(
    take.recordingId,
    { captions, offsetMs },
    { take: take.id, model: 'any.bin' },
  );
const words =
  '0\n00:00:00,000 --> 00:00:03,500\nred to white, four point oh eight k\n\n' +
  '1\n00:00:20,000 --> 00:00:22,000\n[BLANK_AUDIO]\n\n' +
  '2\n00:00:22,000 --> 00:00:23,000\n(drilling)\n\n' +
  '3\n00:00:24,000 --> 00:00:26,000\nright (coughs) that’s the coil\n\n';
const linesOf = ({ jobId }: Take) => narrationOf(db, jobId).lines.map(({ startMs, text }) => [startMs, text]);

test('what was heard becomes lines and proposals of the take, on its clock, in one step', () => {
  heard(words, 1500);
  expect(linesOf(take)).toEqual([
    [1500, 'red to white, four point oh eight k'],
    [25_500, 'right (coughs) that’s the coil'],
  ]);
  expect(narrationOf(db, take.jobId).proposals).toContainEqual(
    expect.objectContaining({
      takeId: take.id,
      heard: expect.objectContaining({ type: 'reading' }),
      decision: 'open',
    }),
  );
  undoNewest(db, take.jobId);
  expect(narrationOf(db, take.jobId)).toEqual({ lines: [], proposals: [] });
});

test('another job with the same film keeps its own narration', () => {
  importToTake(db, elsewhere.id, { bytes: Buffer.from('[0:02] that hums'), name: 'own.txt', offsetMs: 0 });
  heard(words);
  expect(linesOf(elsewhere)).toEqual([[2000, 'that hums']]);
});

test.each([
  ['nothing', ''],
  ['cues without words', '0\n00:00:00,000 --> 00:00:04,000\n\n\n'],
  ['no speech', '0\n00:00:00,000 --> 00:00:20,000\n[BLANK_AUDIO]\n\n'],
])('where a model hears %s, the narration that is there stays', (_what, captions) => {
  importToTake(db, take.id, { bytes: Buffer.from('[0:02] red is hot'), name: 'own.txt', offsetMs: 0 });
  heard(captions);
  expect(linesOf(take)).toEqual([[2000, 'red is hot']]);
  const { sayResult } = listenResults(db, home).listen;
  expect(sayResult?.({ captions, offsetMs: 0 })).toBe('No words were heard.');
});

test('while it listens, the line that was heard last is told', () => {
  const { sayProgress } = listenResults(db, home).listen;
  expect(sayProgress?.({ captions: words, offsetMs: 0 })).toBe('right (coughs) that’s the coil');
  expect(sayProgress?.({ captions: '', offsetMs: 0 })).toBe('');
});
