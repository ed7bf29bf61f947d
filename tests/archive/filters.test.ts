import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rebuildArchive, searchArchive } from '@/lib/archive/store';
import { type ArchiveAnswer, type ArchiveQuery, archiveQuerySchema } from '@/shared/archive';
import { openTestDatabase } from '../open-test-database';
import { type Loaded, loadSet } from './load-set';
import { scoredJobs } from './scored-set/jobs';

let home: ReturnType<typeof openTestDatabase>;
let loaded: Loaded;

beforeAll(() => {
  home = openTestDatabase();
  loaded = loadSet(home.db, scoredJobs);
  rebuildArchive(home.db);
});
afterAll(() => home.close());

const ask = (query: Partial<ArchiveQuery>): ArchiveAnswer =>
  searchArchive(home.db, archiveQuerySchema.parse({ today: '2026-11-25', limit: 100, ...query }));

const keysOf = ({ answers }: ArchiveAnswer) =>
  answers.map(({ job }) => loaded.keyOf.get(job.id) ?? '').sort();

/** Readings as they were written, in ohms: "8.1 kΩ". */
const ohmsOf: Readonly<Record<string, number>> = { Ω: 1, kΩ: 1000, MΩ: 1_000_000 };
const jobsBetween = (low: number, high: number) =>
  scoredJobs
    .filter(({ readings }) =>
      readings.some((reading) => {
        if (reading.kind !== 'resistance' || !('value' in reading)) return false;
        const ohms = Number(reading.value) * (ohmsOf[reading.unit] ?? Number.NaN);
        return ohms >= low && ohms <= high;
      }),
    )
    .map(({ key }) => key)
    .sort();

describe('narrowed by a reading', () => {
  const range = { reading: 'resistance', low: 7000, high: 8500 } as const;

  it('without words, all jobs that hold such a reading come, by that reading', () => {
    const found = ask(range);
    expect(keysOf(found)).toEqual(jobsBetween(7000, 8500));
    expect(found.answers.map(({ best }) => best.kind)).toEqual(found.answers.map(() => 'reading'));
  });

  it('with words, only such jobs come, each with such a reading among what is shown', () => {
    const found = ask({ ...range, q: 'dead pickup' });
    const fit = new Set(jobsBetween(7000, 8500));
    expect(keysOf(found).length).toBeGreaterThan(0);
    for (const key of keysOf(found)) expect(fit).toContain(key);
    for (const { best, others } of found.answers)
      expect([best, ...others].some(({ kind }) => kind === 'reading')).toBe(true);
  });

  it('open ends reach as far as there is', () => {
    expect(keysOf(ask({ reading: 'resistance', low: 7000 }))).toEqual(jobsBetween(7000, Number.MAX_VALUE));
    expect(keysOf(ask({ reading: 'resistance', high: 7000 }))).toEqual(jobsBetween(0, 7000));
  });

  it('a range that holds nothing is no answer', () => {
    expect(ask({ reading: 'resistance', low: 1, high: 0 })).toMatchObject({ answers: [], none: true });
  });
});

describe('what it can be narrowed by', () => {
  const questions = ['hum', 'dead pickup', 'neck reset', 'crack glued', 'scratchy volume pot', '', 'banjo'];

  it.each(questions)('“%s” leaves as many answers as each count says', (q) => {
    const { filters } = ask({ q });
    for (const { value, count } of filters.instruments)
      expect(ask({ q, instrument: value }).answers, value).toHaveLength(count);
    for (const { id, count, name } of filters.clients)
      expect(ask({ q, client: id }).answers, name).toHaveLength(count);
    for (const { kind, count } of filters.readings)
      expect(ask({ q, reading: kind }).answers, kind).toHaveLength(count);
    for (const { value, count } of filters.kinds) {
      const kind = archiveQuerySchema.parse({ kind: value }).kind;
      expect(ask({ q, kind }).answers, value).toHaveLength(count);
    }
    for (const { value, count } of filters.bases) {
      const basis = archiveQuerySchema.parse({ basis: value }).basis;
      expect(ask({ q, basis }).answers, value).toHaveLength(count);
    }
  });
});
