import { parse } from 'csv-parse/sync';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  faultsAnswer,
  faultsTable,
  pickupsAnswer,
  pickupsTable,
  readingsAnswer,
  readingsTable,
} from '@/lib/archive/store';
import { addQuickReading, addReading } from '@/lib/readings/store';
import { addTrace } from '@/lib/wiring/store';
import { addClaim, addJob, addPart, addWorkItem, deleteJob, jobRow } from '@/lib/work/store';
import type { JobId } from '@/shared/ids';
import { faultsQuerySchema, pickupsQuerySchema, readingsQuerySchema } from '@/shared/reference';
import { newTraceSchema } from '@/shared/traces';
import { openTestDatabase } from '../open-test-database';

let test: ReturnType<typeof openTestDatabase>;
beforeEach(() => {
  test = openTestDatabase();
});
afterEach(() => test.close());

const book = (title: string, type = 'electric guitar'): JobId =>
  addJob(test.db, { title, instrument: { type, maker: 'Plainly & Co', model: null } }).id;
const note = (jobId: JobId, ...lines: string[]) => {
  for (const text of lines) addQuickReading(test.db, jobId, { text });
};
const pickups = (parts: Record<string, string> = {}) =>
  pickupsAnswer(test.db, pickupsQuerySchema.parse(parts));
const readings = (parts: Record<string, string> = {}) =>
  readingsAnswer(test.db, readingsQuerySchema.parse(parts));
const faults = (parts: Record<string, string> = {}) => faultsAnswer(test.db, faultsQuerySchema.parse(parts));

function traced(title: string, conductors = ['red', 'white', 'green', 'black']): JobId {
  const jobId = book(title);
  addTrace(test.db, jobId, newTraceSchema.parse({ subject: 'neck pickup', conductors }));
  return jobId;
}
const measured = (jobId: JobId) =>
  note(
    jobId,
    ...['neck red-white 4.08k', 'neck green-black 3.97k', 'neck red-green open'],
    ...['neck slug + red/white touch', 'neck screw - green/black touch', 'neck 8.05k'],
  );
/** As a spreadsheet reads it: csv-parse, a library of its own making (RFC 4180). */
const table = (csv: string) => parse(csv, { columns: true, bom: true, record_delimiter: '\r\n' });

describe('pickups traced', () => {
  it('stand with what the readings of their jobs say', () => {
    const jobId = traced('Rewire');
    measured(jobId);
    const { pickups: all, count, same } = pickups();
    expect({ count, same }).toEqual({ count: 1, same: null });
    expect(all[0]).toMatchObject({
      ...{ subject: 'neck pickup', job: { id: jobId, title: 'Rewire' }, shield: true, likeness: null },
      ...{ totalOhms: 8050, said: [{ text: 'Plainly & Co', basis: 'stated' }] },
    });
    expect(all[0]?.coils.map(({ ohms }) => ohms).sort()).toEqual([3970, 4080]);
  });

  it('are told by the record’s own words, of this pickup and no other', () => {
    const jobId = traced('Rewire');
    const { instrumentId } = jobRow(test.db, jobId);
    const claim = { kind: 'original part' as const, value: 'not original' };
    addClaim(test.db, instrumentId, { ...claim, subject: 'neck pickup', basis: 'stated' });
    addClaim(test.db, instrumentId, { ...claim, subject: 'bridge pickup' });
    addPart(test.db, jobId, { what: 'humbucker without a name', deed: 'removed' });
    expect(pickups().pickups[0]?.said.map(({ text }) => text)).toEqual([
      'Plainly & Co',
      'neck pickup: not original',
      'humbucker without a name, removed',
    ]);
  });

  it('come the very same colours first, then more, then fewer; the bin is left out', () => {
    traced('fewer', ['red', 'white']);
    traced('more', ['red', 'white', 'green', 'black', 'blue']);
    const same = traced('same', ['black', 'green', 'white', 'red']);
    traced('other', ['red', 'violet']);
    measured(same);
    deleteJob(test.db, traced('in the bin'));
    const answer = pickups({ colours: 'r w g b bare' });
    expect(answer.pickups.map(({ job, likeness }) => [job.title, likeness])).toEqual([
      ['same', 'same'],
      ['more', 'more'],
      ['fewer', 'fewer'],
    ]);
    expect(answer.same).toMatchObject({ count: 1, lookedAt: 1, open: 0 });
    expect(answer.same?.assignments[0]?.traces[0]?.job.id).toBe(same);
  });

  it('change with the record at once', () => {
    const jobId = traced('Rewire');
    expect(pickups().pickups[0]?.totalOhms).toBeNull();
    measured(jobId);
    expect(pickups().pickups[0]?.totalOhms).toBe(8050);
    deleteJob(test.db, jobId);
    expect(pickups().count).toBe(0);
  });

  it('go out as CSV that reads back', () => {
    measured(traced('Rewire, "again"'));
    expect(table(pickupsTable(pickups().pickups))).toMatchObject([
      {
        ...{ pickup: 'neck pickup', conductors: 'red white green black', 'letter codes': 'RD WH GN BK' },
        ...{ shield: 'yes', 'total ohms': '8050', 'coil 1 row': 'screw', 'coil 2 ohms': '4080' },
      },
    ]);
  });

  it('are counted by pages that end', () => {
    for (const at of [1, 2, 3]) traced(`job ${at}`);
    expect(pickups({ limit: '2', page: '9' })).toMatchObject({
      page: 2,
      pages: 2,
      pickups: [{ job: { number: 1 } }],
    });
  });
});

describe('readings', () => {
  it('spread by kind, type and place; only what was measured, open ones apart', () => {
    for (const ohms of ['7.1k', '7.2k', '7.3k', '7.4k', '9k']) note(book('A'), `neck ${ohms}`);
    note(book('B'), 'neck open', 'neck red-white 4.08k');
    note(book('C', 'bass guitar'), 'neck 10k');
    const kind = 'resistance' as const;
    addReading(test.db, book('D'), { kind, value: '99', unit: 'kΩ', subject: 'neck', basis: 'assumed' });
    const { groups } = readings({ kind });
    expect(groups.map(({ place, instrument, n }) => [place, instrument, n])).toEqual([
      ['neck pickup', 'electric guitar', 5],
      ['neck pickup', 'bass guitar', 1],
      ['neck pickup, between conductors', 'electric guitar', 1],
    ]);
    expect(groups[0]).toMatchObject({
      ...{ min: 7100, max: 9000, open: 1, notMeasured: 1 },
      quartiles: { lower: 7200, median: 7300, upper: 7400 },
    });
    expect(table(readingsTable(kind, groups))[0]).toMatchObject({ readings: '5', median: '7300', unit: 'Ω' });
  });

  it('set a typed one against the measured ones of its place', () => {
    for (const ohms of ['7.1k', '7.2k', '7.3k', '7.4k', '9k']) note(book('A'), `neck ${ohms}`);
    const { standing, chosen, kind } = readings({ reading: 'neck 7.15k' });
    expect(kind).toBe('resistance');
    expect(standing).toMatchObject({
      place: 'neck pickup',
      is: { n: 5, below: 1, above: 4, isEnough: true },
    });
    expect(standing?.is.sentence).toBe('Lower than 80 % of the 5 readings of “neck pickup” measured here.');
    expect(chosen?.readings.map(({ value }) => value)).toEqual([9000, 7400, 7300, 7200, 7100]);
    expect(readings({ reading: 'neck 7k', instrument: 'banjo' }).standing?.is.sentence).toContain(
      'nothing to judge',
    );
  });

  it('ask back what a line leaves open', () => {
    expect(readings({ reading: 'hello' })).toMatchObject({ standing: null, unclear: expect.any(String) });
  });

  it('leave the bin out, of the counts too', () => {
    const jobId = book('A');
    note(jobId, 'neck 7.1k');
    note(book('B'), 'neck 7.2k');
    deleteJob(test.db, jobId);
    const { kinds, groups } = readings();
    expect(kinds).toMatchObject([{ kind: 'resistance', count: 1 }]);
    expect(groups).toMatchObject([{ n: 1, min: 7200 }]);
  });
});

describe('faults and fixes', () => {
  it('are put together from titles and work; what was only offered tells of no fault', () => {
    const jobId = book('It hums in both positions');
    addWorkItem(test.db, jobId, { what: 'Shield the cavity', outcome: 'done' });
    addWorkItem(test.db, jobId, { what: 'Cure the hum', outcome: 'done' });
    addWorkItem(test.db, jobId, {
      what: 'Fret buzz: level the frets',
      origin: 'offered',
      outcome: 'declined',
    });
    const { faults: all, jobs } = faults();
    expect(jobs).toBe(1);
    expect(all.map(({ word }) => word)).toEqual(['hum']);
    expect(all[0]?.cures.map(({ word }) => word)).toEqual(['shielding']);
    expect(table(faultsTable(all))).toMatchObject([{ fault: 'hums', work: 'shield the cavity', jobs: '1' }]);
  });

  it('are empty for an empty workshop', () => {
    expect(faults()).toEqual({ instruments: [], jobs: 0, faults: [], left: 0 });
    expect(readings()).toMatchObject({ kinds: [], kind: null, groups: [], chosen: null });
    expect(pickups()).toMatchObject({ pickups: [], count: 0, page: 1, pages: 1 });
  });
});
