import { and, eq, isNull } from 'drizzle-orm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { olderClients, olderJobs } from '@/db/demo/older-jobs';
import type { Database } from '@/db/open';
import { changes, jobs } from '@/db/schema';
import { searchArchive } from '@/lib/archive/store';
import { kindOf, plausibilityCaution } from '@/lib/readings';
import { getTraceView } from '@/lib/wiring/store';
import { deleteJob, getJobRecord, loadOlderJobs, looseEndsOf, rackOf, restoreJob } from '@/lib/work/store';
import { type ArchiveAnswer, archiveQuerySchema } from '@/shared/archive';
import type { JobRecord } from '@/shared/jobs';
import { openTestDatabase } from '../open-test-database';

let db: Database;
let close: () => void;
let all: JobRecord[];
beforeAll(() => {
  ({ db, close } = openTestDatabase());
  loadOlderJobs(db);
  all = records();
});
afterAll(() => close());

function records(): JobRecord[] {
  const rows = db
    .select({ id: jobs.id })
    .from(jobs)
    .where(and(eq(jobs.demo, true), isNull(jobs.deletedAt)))
    .orderBy(jobs.number)
    .all();
  return rows.map(({ id }) => getJobRecord(db, id));
}

const views = () => all.flatMap(({ traces }) => traces.map(({ id }) => getTraceView(db, id)));
const colours = (conductors: readonly string[]) => [...conductors].sort().join(' ');

describe('the older jobs', () => {
  it('are loaded once, and found from then on', () => {
    expect(all).toHaveLength(28);
    expect(loadOlderJobs(db)).toBe(28);
    expect(records()).toHaveLength(28);
  });

  it('have gone from the workshop, in the order of their days, over all seasons', () => {
    const states = all.map(({ job }) => job.state);
    expect(new Set(states)).toEqual(new Set(['collected', 'returned undone']));
    const days = all.map(({ job }) => job.receivedOn);
    expect(days).toEqual([...days].sort());
    expect(new Set(days.map((day) => day.slice(0, 4)))).toEqual(new Set(['2023', '2024', '2025', '2026']));
    expect(new Set(days.map((day) => Math.floor((Number(day.slice(5, 7)) % 12) / 3))).size).toBe(4);
    const { jobs: tickets } = rackOf(db, { find: '', limit: 100 });
    expect(tickets.every(({ state }) => state === 'collected' || state === 'returned undone')).toBe(true);
  });

  it('are of many instruments, and some come back', () => {
    expect(new Set(all.map(({ instrument }) => instrument.type)).size).toBeGreaterThanOrEqual(11);
    expect(new Set(all.map(({ instrument }) => instrument.id)).size).toBe(25);
    expect(new Set(all.map(({ client }) => client?.id)).size).toBe(olderClients.length);
  });

  it('have nothing to be undone', () => {
    const loaded = all.map(({ job }) => job.id);
    const left = db
      .select()
      .from(changes)
      .all()
      .filter(({ jobId }) => jobId !== null && loaded.includes(jobId));
    expect(left).toEqual([]);
    expect(all.every(({ undo, redo }) => undo === null && redo === null)).toBe(true);
  });

  it('hold no claim of a maker', () => {
    expect(all.every(({ instrument }) => instrument.maker === null && instrument.model === null)).toBe(true);
    expect(all.flatMap(({ claims }) => claims).some(({ kind }) => kind === 'factory')).toBe(false);
  });
});

describe('their readings', () => {
  it('are many enough of neck and bridge pickups to be looked at together', () => {
    const wholes = all
      .flatMap(({ readings }) => readings)
      .filter(({ kind, between, open }) => kind === 'resistance' && !open && between?.[0] === 'hot');
    for (const place of ['neck', 'bridge']) {
      const here = wholes.filter(({ subject }) => subject.includes(place));
      expect(here.length).toBeGreaterThanOrEqual(25);
      const usual = here.filter(({ baseValue }) => (baseValue ?? 0) >= 5600 && (baseValue ?? 0) <= 16_000);
      expect(usual.length).toBeGreaterThanOrEqual(here.length - 1);
    }
  });

  it('are of a size that is usual', () => {
    const odd = all.flatMap(({ instrument, readings }) =>
      readings.flatMap((reading) => plausibilityCaution(reading, { instrumentType: instrument.type }) ?? []),
    );
    expect(odd).toEqual([]);
  });

  it('keep the order in which they were noted', () => {
    for (const [at, { readings }] of all.entries()) {
      const { readings: plain = [], traces = [] } = olderJobs[at] ?? {};
      const traced = traces.flatMap(({ readings: own, total }) => [...own, ...(total ? [total] : [])]);
      const written = [...plain, ...traced].map(({ value }) => value ?? null);
      expect(readings.map(({ valueText }) => valueText)).toEqual(written);
    }
  });

  it('rise with the warmth as copper does: 0.393 % a kelvin at 20 °C (IEC 60028)', () => {
    const back = all.at(-1);
    const ohmsAt = (celsius: number) =>
      back?.readings.find(({ details }) => details.celsius === celsius)?.baseValue ?? Number.NaN;
    const expected = (1 + 0.00393 * (21 - 20)) / (1 + 0.00393 * (12 - 20));
    expect(ohmsAt(21) / ohmsAt(12)).toBeCloseTo(expected, 2);
  });

  it('of high voltage say who took them', () => {
    const high = all
      .flatMap(({ readings }) => readings)
      .filter(({ kind, baseValue }) => kindOf(kind).baseUnit === 'V' && (baseValue ?? 0) > 50);
    expect(high.length).toBeGreaterThan(0);
    for (const { note } of high) expect(note).toMatch(/qualified/);
  });
});

describe('their traces', () => {
  it('are nine, without a contradiction, and what was joined passes where it can be predicted', () => {
    expect(views()).toHaveLength(9);
    for (const { analysis, outcomes, check } of views()) {
      expect(analysis.contradictions).toEqual([]);
      if (outcomes.length > 0) expect(['pass', 'cannot say']).toContain(check?.verdict);
    }
    expect(views().filter(({ check }) => check?.verdict === 'pass')).toHaveLength(7);
  });

  // Resistances in series add; of two in parallel the product is divided by the sum (Ohm's law).
  it('have totals that follow from their coils', () => {
    for (const { traces } of olderJobs)
      for (const { conductors, readings, plan, total } of traces ?? []) {
        const coils = readings.filter(({ kind, open }) => kind === 'resistance' && !open);
        const [a = 0, b = 0] = coils.map(({ value }) => Number(value));
        if (coils.length < 2 || !total) continue;
        const expected = plan === 'parallel' ? (a * b) / (a + b) : a + b;
        expect(Math.abs(Number(total.value) - expected)).toBeLessThan(0.02);
        expect(conductors.length).toBeGreaterThan(2);
      }
  });

  it('show the same colours turning out differently', () => {
    const same = views().filter(({ worksheet }) => colours(worksheet.conductors) === 'black green red white');
    const coils = same
      .filter(({ worksheet, analysis }) => worksheet.assumed.length === 0 && analysis.coils.length === 2)
      .map(({ analysis }) =>
        analysis.coils
          .map(({ ends }) => colours(ends.flat()))
          .sort()
          .join(' | '),
      );
    expect(new Set(coils)).toEqual(
      new Set(['black green | red white', 'black white | green red', 'black red | green white']),
    );
  });

  it('turn out the other way round under the same colours in the same guitar', () => {
    const positives = (subject: string, ofTitle: RegExp) =>
      all
        .filter(({ job }) => ofTitle.test(job.title))
        .flatMap(({ traces }) => traces.filter((trace) => trace.subject === subject))
        .flatMap(({ id }) => getTraceView(db, id).analysis.coils)
        .flatMap(({ rows }) => rows.map(({ row, positive }) => `${row} ${positive}`))
        .sort();
    expect(positives('neck pickup', /^Electric guitar: whole set/)).toEqual(['screw black', 'slug red']);
    expect(positives('bridge pickup', /^Electric guitar: thin/)).toEqual(['screw green', 'slug white']);
  });
});

describe('their loose ends', () => {
  it('are the conductors that were assumed, and were looked at', () => {
    const loose = all.flatMap(({ job }) => looseEndsOf(db, job.id));
    expect(loose.map(({ kind }) => kind)).toEqual(['assumed conductor', 'assumed conductor']);
    const looked = all.flatMap(({ job }) => job.readyLook?.looseEnds ?? []);
    expect(looked.map(({ id }) => id).sort()).toEqual(loose.map(({ id }) => id).sort());
  });
});

describe('in the bin', () => {
  it('one is not counted; when all are, they are loaded anew', () => {
    const ids = all.map(({ job }) => job.id);
    const [first] = ids;
    if (!first) throw new Error('There are no older jobs.');
    deleteJob(db, first);
    expect(loadOlderJobs(db)).toBe(27);
    for (const id of ids.slice(1)) deleteJob(db, id);
    expect(loadOlderJobs(db)).toBe(28);
    restoreJob(db, first);
    expect(loadOlderJobs(db)).toBe(29);
  });
});

describe('the archive', () => {
  /** A search takes in what it can within its time; asked again, it has all. */
  function ask(q: string): ArchiveAnswer {
    const answer = searchArchive(db, archiveQuerySchema.parse({ q, today: '2026-11-25' }));
    return answer.waiting > 0 ? ask(q) : answer;
  }

  it.each([
    ['dead pickup', /bridge pickup dead/],
    ['crack in the top', /crack in the top/],
    ['soundpost', /^Violin/],
    ['lifted bridge', /bridge lifting/],
    ['blown fuse', /blows its fuse/],
    ['out of phase', /thin and hollow/],
    ['wrong cap', /tone control/],
    ['worn frets', /fret buzz/],
    ['hum last winter', /hum is back/],
  ])('finds “%s”', (q, title) => {
    expect(ask(q).answers[0]?.job.title).toMatch(title);
  });
});
