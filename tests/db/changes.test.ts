import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { edit, listChanges, redoNewest, undoChange, undoNewest } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { folders, markers, recordings, takes } from '@/db/schema';
import { addJob } from '@/lib/work/store';
import {
  folderIdSchema,
  type JobId,
  markerIdSchema,
  recordingIdSchema,
  type TakeId,
  takeIdSchema,
} from '@/shared/ids';
import { openTestDatabase } from '../open-test-database';

let db: Database;
let close: () => void;
let jobId: JobId;
let takeId: TakeId;

beforeEach(() => {
  ({ db, close } = openTestDatabase());
  jobId = addJob(db, { title: 'Bass, crackles', instrument: { type: 'bass guitar' } }).id;
  const folderId = newId(folderIdSchema);
  const recordingId = newId(recordingIdSchema);
  takeId = newId(takeIdSchema);
  db.insert(folders).values({ id: folderId, path: '/somewhere', createdAt: 1 }).run();
  db.insert(recordings)
    .values({
      id: recordingId,
      folderId,
      path: 'a.mp4',
      sizeBytes: 1,
      modifiedAt: 1,
      state: 'new',
      createdAt: 1,
    })
    .run();
  db.insert(takes).values({ id: takeId, jobId, recordingId, createdAt: 1 }).run();
});
afterEach(() => close());

const row = (title: string, ms = 0) => ({
  id: newId(markerIdSchema),
  jobId,
  takeId,
  kind: 'work' as const,
  title,
  note: null,
  ms,
  endMs: null,
  public: true,
  createdAt: 5,
});
const all = () => db.select().from(markers).orderBy(markers.id).all();

describe('changes', () => {
  it('are taken back and done again', () => {
    const marker = row('Case open');
    edit(db, jobId, 'marker dropped', (e) => e.insert('markers', marker));
    edit(db, jobId, 'marker moved', (e) => e.update('markers', marker.id, { ms: 900 }));
    expect(undoNewest(db, jobId)?.label).toBe('marker moved');
    expect(all()).toEqual([marker]);
    expect(undoNewest(db, jobId)?.label).toBe('marker dropped');
    expect(all()).toEqual([]);
    expect(undoNewest(db, jobId)).toBeNull();
    redoNewest(db, jobId);
    expect(redoNewest(db, jobId)?.label).toBe('marker moved');
    expect(all()).toEqual([{ ...marker, ms: 900 }]);
    expect(redoNewest(db, jobId)).toBeNull();
  });

  it('leave behind what was undone once something new is done', () => {
    const marker = row('A');
    edit(db, jobId, 'one', (e) => e.insert('markers', marker));
    undoNewest(db, jobId);
    edit(db, jobId, 'two', (e) => e.insert('markers', row('B')));
    expect(redoNewest(db, jobId)).toBeNull();
    expect(listChanges(db, jobId).map((change) => change.label)).toEqual(['two']);
  });

  it('can be taken back out of turn, unless the same thing was changed since', () => {
    const kept = row('Kept');
    const gone = row('Gone');
    edit(db, jobId, 'dropped', (e) => e.insert('markers', kept));
    const { change } = edit(db, jobId, 'dropped', (e) => e.insert('markers', gone));
    const { change: deletion } = edit(db, jobId, 'deleted', (e) => e.remove('markers', gone.id));
    edit(db, jobId, 'renamed', (e) => e.update('markers', kept.id, { title: 'Renamed' }));
    undoChange(db, deletion);
    expect(all()).toHaveLength(2);
    edit(db, jobId, 'renamed', (e) => e.update('markers', gone.id, { title: 'Newer' }));
    expect(() => undoChange(db, change)).toThrow('changed since');
    expect(all()).toHaveLength(2);
  });

  it('are nothing when the work fails half-way', () => {
    const marker = row('A');
    expect(() =>
      edit(db, jobId, 'fails', (e) => {
        e.insert('markers', marker);
        e.update('markers', newId(markerIdSchema), { ms: 1 });
      }),
    ).toThrow('not there');
    expect(all()).toEqual([]);
    expect(listChanges(db, jobId)).toEqual([]);
  });

  it('undone to the last, whatever they were, restore the record exactly', () => {
    const step = fc.oneof(
      fc.record({ does: fc.constant('insert' as const), ms: fc.nat(9999) }),
      fc.record({ does: fc.constant('update' as const), which: fc.nat(), ms: fc.nat(9999) }),
      fc.record({ does: fc.constant('remove' as const), which: fc.nat() }),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 15 }), (steps) => {
        const before = all();
        let made = 0;
        for (const each of steps) {
          const rows = all();
          const target = each.does === 'insert' ? null : rows[each.which % Math.max(1, rows.length)];
          if (each.does !== 'insert' && !target) continue;
          made++;
          edit(db, jobId, each.does, (e) => {
            if (each.does === 'insert') e.insert('markers', row('x', each.ms));
            else if (target && each.does === 'update') e.update('markers', target.id, { ms: each.ms });
            else if (target) e.remove('markers', target.id);
          });
        }
        const after = all();
        for (let index = 0; index < made; index++) undoNewest(db, jobId);
        expect(all()).toEqual(before);
        for (let index = 0; index < made; index++) redoNewest(db, jobId);
        expect(all()).toEqual(after);
        for (let index = 0; index < made; index++) undoNewest(db, jobId);
      }),
      { numRuns: 25 },
    );
  });
});
