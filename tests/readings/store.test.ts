import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import {
  addMeter,
  addQuickReading,
  addReading,
  expandedUncertaintyOf,
  listMeters,
  patchMeter,
  readingsOf,
  removeMeter,
} from '@/lib/readings/store';
import { addJob, getJobRecord } from '@/lib/work/store';
import type { JobId } from '@/shared/ids';
import { jobRecordSchema } from '@/shared/jobs';
import type { NewMeter } from '@/shared/readings';
import { openTestDatabase } from '../open-test-database';

const handHeld: NewMeter = {
  name: 'hand-held',
  ranges: [{ unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0.8, counts: 2 }],
};

let db: Database;
let close: () => void;
let jobId: JobId;

beforeEach(() => {
  ({ db, close } = openTestDatabase());
  jobId = addJob(db, { title: 'Neck pickup, dead', instrument: { type: 'electric guitar' } }).id;
});
afterEach(() => close());

describe('readings on the record', () => {
  it('keep the digits as they were read beside the base value', () => {
    addQuickReading(db, jobId, { text: 'neck red-white 4,08k' });
    addReading(db, jobId, { kind: 'relief', value: '.010', unit: 'in' });
    expect(readingsOf(db, jobId)).toMatchObject([
      { valueText: '4.08', unit: 'kΩ', baseValue: 4080, between: ['red', 'white'], open: false },
      { valueText: '.010', unit: 'in', baseValue: 0.254 },
    ]);
  });

  it('take open for a reading', () => {
    addQuickReading(db, jobId, { text: 'red-green open' });
    expect(readingsOf(db, jobId)).toMatchObject([{ open: true, valueText: null, baseValue: null }]);
  });

  it('refuse a line that leaves something open, and keep nothing of it', () => {
    expect(() => addQuickReading(db, jobId, { text: 'red-white 8 ohm' })).toThrow(
      expect.objectContaining({
        kind: 'invalid',
        extra: expect.objectContaining({ choices: expect.any(Array) }),
      }),
    );
    expect(readingsOf(db, jobId)).toEqual([]);
  });

  it('refuse a unit of another quantity', () => {
    expect(() => addReading(db, jobId, { kind: 'relief', value: '1', unit: 'kΩ' })).toThrow(
      /not measured in kΩ/,
    );
  });
});

describe('meters', () => {
  it('give the readings taken with them an uncertainty', () => {
    const { id } = addMeter(db, handHeld);
    const { reading } = addQuickReading(db, jobId, { text: 'neck 4.08k', meterId: id });
    const bare = addQuickReading(db, jobId, { text: 'neck 4.08k' }).reading;
    // ± (0.8 % of 4080 + 20) Ω and half a digit of 5 Ω, over √3, in quadrature, twice.
    expect(expandedUncertaintyOf(db)(reading)).toBeCloseTo(
      2 * Math.hypot(52.64 / Math.sqrt(3), 5 / Math.sqrt(3)),
      9,
    );
    expect(expandedUncertaintyOf(db)(bare)).toBeUndefined();
  });

  it('go with the record of a job', () => {
    const meter = addMeter(db, handHeld);
    expect(jobRecordSchema.parse(getJobRecord(db, jobId)).meters).toEqual([meter]);
  });

  it('can be changed, and deleted while no reading was taken with them', () => {
    const { id } = addMeter(db, handHeld);
    expect(patchMeter(db, id, { name: 'bench meter' })).toMatchObject({
      id,
      name: 'bench meter',
      ranges: handHeld.ranges,
    });
    const other = addMeter(db, handHeld);
    addQuickReading(db, jobId, { text: 'neck 4.08k', meterId: id });
    removeMeter(db, other.id);
    expect(() => removeMeter(db, id)).toThrow(/taken with this meter/);
    expect(listMeters(db).map((meter) => meter.id)).toEqual([id]);
  });
});
