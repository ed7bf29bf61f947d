import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { redoNewest, undoChange, undoNewest } from '@/db/changes';
import type { Database } from '@/db/open';
import { sayReading } from '@/lib/readings';
import { addMeter, addReading, removeReading } from '@/lib/readings/store';
import { addTrace, getJackView, patchTrace, putHarness, removeHarness } from '@/lib/wiring/store';
import { addJob } from '@/lib/work/store';
import type { JobId, MeterId } from '@/shared/ids';
import { type JackSetting, jackSettingSchema } from '@/shared/jack';
import { jackViewSchema } from '@/shared/jack-check';
import { openTestDatabase } from '../open-test-database';
import { doubleCoil, fourPots, onePickup, threeSingles, threeWay, tone, volume } from './jack-harnesses';

let db: Database;
let close: () => void;
let job: JobId;

beforeEach(() => {
  ({ db, close } = openTestDatabase());
  job = addJob(db, { title: 'Rewire', instrument: { type: 'electric guitar' } }).id;
});
afterEach(() => close());

const twoShared = {
  pickups: [doubleCoil('neck', 4080, 3971), doubleCoil('bridge', 4420, 4370)],
  volumes: [volume('all')],
  tones: [tone('all')],
  positions: threeWay,
};
const view = () => getJackView(db, job);
const read = (
  kilohms: string | null,
  setting: Partial<JackSetting> & { position: string },
  meterId?: MeterId,
) =>
  addReading(db, job, {
    kind: 'resistance',
    ...(kilohms === null ? { open: true } : { value: kilohms, unit: 'kΩ' }),
    subject: 'output jack',
    between: ['tip', 'sleeve'],
    details: { jack: jackSettingSchema.parse(setting) },
    ...(meterId ? { meterId } : {}),
  }).reading;

describe('before a harness is described', () => {
  it('suggests what the job has measured: coils by their rows, another pickup by its total', () => {
    const { trace } = addTrace(db, job, {
      subject: 'neck pickup',
      conductors: ['red', 'white', 'green', 'black'],
      shield: true,
      frame: false,
      rows: ['slug', 'screw'],
    });
    const pair = (between: [string, string], value: string) =>
      addReading(db, job, { kind: 'resistance', value, unit: 'kΩ', subject: 'neck', between });
    const kick = (red: string, black: string, row: string) =>
      addReading(db, job, {
        kind: 'polarity-kick',
        subject: 'neck',
        details: { leads: { red, black }, steel: 'laid on', row, sign: 1, size: 'large' },
      });
    pair(['red', 'white'], '4.08');
    pair(['green', 'black'], '3.971');
    kick('red', 'white', 'slug');
    kick('green', 'black', 'screw');
    patchTrace(db, trace.worksheet.id, { planId: 'series' });
    addReading(db, job, { kind: 'resistance', value: '8.8', unit: 'kΩ', subject: 'bridge pickup' });
    addReading(db, job, { kind: 'resistance', value: '470', unit: 'kΩ', subject: 'volume pot' });
    const { harness, judgement, known, suggestion } = view();
    expect({ harness, judgement }).toEqual({ harness: null, judgement: null });
    expect(known).toEqual([
      {
        id: 'neck',
        subject: 'neck pickup',
        joined: 'series',
        coils: [
          { name: 'slug', ohms: 4080, tolerancePercent: 2 },
          { name: 'screw', ohms: 3971, tolerancePercent: 2 },
        ],
      },
      {
        id: 'bridge',
        subject: 'bridge pickup',
        joined: 'series',
        coils: [{ name: 'whole', ohms: 8800, tolerancePercent: 2 }],
      },
    ]);
    expect(suggestion.pickups).toEqual(known);
    expect(suggestion.positions.map(({ name }) => name)).toEqual(['neck', 'both', 'bridge']);
  });

  it('leaves open what nobody has measured, and takes nothing that is only assumed', () => {
    addReading(db, job, {
      kind: 'resistance',
      value: '8.8',
      unit: 'kΩ',
      subject: 'bridge pickup',
      basis: 'assumed',
    });
    const { known, suggestion } = view();
    expect(known).toEqual([]);
    expect(suggestion.pickups.map(({ coils }) => coils.map(({ ohms }) => ohms))).toEqual([[null]]);
  });
});

describe('a described harness', () => {
  it('is kept whole, and what to expect follows from it', () => {
    const { view: kept } = putHarness(db, job, fourPots);
    expect(jackViewSchema.parse(JSON.parse(JSON.stringify(kept)))).toEqual(view());
    // Series sum beside its own pot, by hand: 8051 · 500 000 / 508 051 = 7923.4 Ω.
    const neck = kept.expected.find(({ label }) => label === 'neck, pots up');
    expect(neck?.ohms).toBeCloseTo(7923.4, 1);
    expect(kept.judgement).toMatchObject({ verdict: 'cannot say', checks: [] });
  });

  it('is changed, deleted, undone and done again, each as one change', () => {
    putHarness(db, job, twoShared);
    putHarness(db, job, onePickup);
    expect(view().harness?.pickups).toHaveLength(1);
    undoNewest(db, job);
    expect(view().harness?.pickups).toHaveLength(2);
    redoNewest(db, job);
    expect(view().harness?.pickups).toHaveLength(1);
    removeHarness(db, job);
    expect(view().harness).toBeNull();
    undoNewest(db, job);
    expect(view().harness?.pickups).toHaveLength(1);
  });

  it('is never two: an undone deletion does not come beside a newer description', () => {
    putHarness(db, job, twoShared);
    const deletion = removeHarness(db, job);
    putHarness(db, job, onePickup);
    expect(() => undoChange(db, deletion)).toThrow(/changed since/);
    expect(view().harness?.pickups).toHaveLength(1);
  });

  it('is refused in words where it cannot be, and nothing is kept', () => {
    const twice = { ...twoShared, positions: [{ name: 'both', on: ['neck', 'middle'] }] };
    expect(() => putHarness(db, job, twice)).toThrow('This harness has no pickup "middle".');
    expect(() => removeHarness(db, job)).toThrow(/not there/);
    expect(view().harness).toBeNull();
  });
});

describe('readings at the jack', () => {
  it('pass one by one until all positions are read', () => {
    putHarness(db, job, twoShared);
    const neck = read('7.92', { position: 'neck' });
    expect(view().judgement).toMatchObject({ verdict: 'cannot say' });
    read('4.18', { position: 'both' });
    read('8.63', { position: 'bridge' });
    const { judgement } = view();
    expect(judgement).toMatchObject({ verdict: 'pass', explanations: [] });
    expect(judgement?.checks[0]).toMatchObject({ readingId: neck.id, verdict: 'pass', measuredOhms: 7920 });
  });

  it('are said by how the instrument stood, not by the two leads', () => {
    const reading = read('0.004', { position: 'both', down: ['volume'] });
    expect(sayReading(reading)).toBe('output jack, both, volume down: 0.004 kΩ');
  });

  it('name the fault when they fail: one slug coil shorted leaves the screw coil alone', () => {
    putHarness(db, job, twoShared);
    read('3.93', { position: 'neck' });
    read('8.63', { position: 'bridge' });
    const { judgement } = view();
    expect(judgement?.verdict).toBe('fail');
    // A coil shorted and two leads swapped read the same at the jack: both stand, and the next reading tells them apart.
    const standing = judgement?.explanations.filter(({ explainsAll }) => explainsAll) ?? [];
    expect(
      standing
        .slice(0, 2)
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['leads swapped', 'shorted coil']);
    expect(standing[0]?.next).not.toBeNull();
  });

  it('count by the last one of each setting, so what was mended passes', () => {
    putHarness(db, job, twoShared);
    read(null, { position: 'neck' });
    expect(view().judgement?.verdict).toBe('fail');
    const mended = read('7.92', { position: 'neck' });
    expect(view().judgement?.checks.map(({ verdict }) => verdict)).toEqual(['pass']);
    removeReading(db, mended.id);
    expect(view().judgement?.checks.map(({ verdict }) => verdict)).toEqual(['fail']);
  });

  it('are held against the meter they were taken with', () => {
    putHarness(db, job, twoShared);
    const coarse = addMeter(db, {
      name: 'Old needle',
      ranges: [{ unit: 'kΩ', fullScale: 100, resolution: 1, percent: 10, counts: 10 }],
    });
    // Limits of the neck with its pot: about 7.7 to 8.1 kΩ; 9 kΩ is out for a good meter, in for this one.
    read('9', { position: 'neck' });
    expect(view().judgement?.checks[0]?.verdict).toBe('fail');
    read('9', { position: 'neck' }, coarse.id);
    expect(view().judgement?.checks[0]?.verdict).not.toBe('fail');
  });

  it('that a newer harness has no place for are told, not lost and not judged', () => {
    putHarness(db, job, twoShared);
    const both = read('4.18', { position: 'both' });
    const negative = read('-3', { position: 'neck' });
    putHarness(db, job, threeSingles);
    read('5.76', { position: '5' });
    const { passedOver, judgement } = view();
    expect(passedOver.map(({ reading, why }) => [reading, why])).toEqual([
      [both.id, 'This harness has no position "both".'],
      [negative.id, expect.stringMatching(/negative/)],
    ]);
    expect(judgement?.checks.map(({ label }) => label)).toEqual(['5, pots up']);
  });
});
