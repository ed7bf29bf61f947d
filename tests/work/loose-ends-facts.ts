import { analyseTrace, checkTotal, planWiring, recordOutcome, takeOver } from '@/lib/wiring';
import type { LooseEndFacts } from '@/lib/work/loose-ends';
import {
  claimIdSchema,
  jobIdSchema,
  markerIdSchema,
  outcomeIdSchema,
  readingIdSchema,
  takeIdSchema,
  traceIdSchema,
  workItemIdSchema,
} from '@/shared/ids';
import type { TotalReading, TraceInput } from '@/shared/wiring';

export type WorkFacts = LooseEndFacts['work'][number];
export type TraceFacts = LooseEndFacts['traces'][number];
export type ReadingFacts = LooseEndFacts['readings'][number];

/** An id that can be told from others at sight: "2" becomes twenty letters and digits. */
const spun = (kind: string, at: number): string => `${kind}${at}`.padEnd(20, 'x');

export const idOf = {
  work: (at: number) => workItemIdSchema.parse(spun('work', at)),
  claim: (at: number) => claimIdSchema.parse(spun('claim', at)),
  take: (at: number) => takeIdSchema.parse(spun('take', at)),
  marker: (at: number) => markerIdSchema.parse(spun('marker', at)),
  reading: (at: number) => readingIdSchema.parse(spun('reading', at)),
  trace: (at: number) => traceIdSchema.parse(spun('trace', at)),
  outcome: (at: number) => outcomeIdSchema.parse(spun('outcome', at)),
};

/** A job that has come in, with nothing noted yet. */
export const bare: LooseEndFacts = {
  job: { title: 'Crackle on the neck pickup', state: 'on the bench', promisedOn: null, createdAt: 1000 },
  client: { name: 'Marla Quillfeather', alias: 'a returning client', reach: '555-0142' },
  instrument: { serial: '40417283' },
  claims: [],
  work: [],
  takes: [],
  markers: [],
  readings: [],
  traces: [],
  jack: null,
  proposals: [],
};

export const factsWith = (some: Partial<LooseEndFacts>): LooseEndFacts => ({ ...bare, ...some });

export const workItem = (at: number, some: Partial<WorkFacts> = {}): WorkFacts => ({
  id: idOf.work(at),
  what: 'Set-up',
  origin: 'offered',
  outcome: 'open',
  why: null,
  createdAt: 2000 + at,
  ...some,
});

export const marker = (at: number, some: Partial<LooseEndFacts['markers'][number]> = {}) => ({
  id: idOf.marker(at),
  takeId: idOf.take(1),
  title: 'Tap test',
  public: true,
  createdAt: 3000 + at,
  ...some,
});

export const take = (at: number, some: Partial<LooseEndFacts['takes'][number]> = {}) => ({
  id: idOf.take(at),
  name: `take-${at}.mp4`,
  filmStartMs: at * 600_000,
  createdAt: 1500 + at,
  ...some,
});

export const claim = (at: number, value: string, some: Partial<LooseEndFacts['claims'][number]> = {}) => ({
  id: idOf.claim(at),
  kind: 'year' as const,
  subject: null,
  value,
  sure: 'certain' as const,
  createdAt: 4000 + at,
  ...some,
});

/** Two windings of a four-conductor pickup, read; both rows kicked. */
const measured = (subject: string): TraceInput => ({
  subject,
  conductors: ['red', 'white', 'green', 'black'],
  shield: true,
  readings: [
    { kind: 'pair', id: 'a', between: ['red', 'white'], ohms: 4080 },
    { kind: 'pair', id: 'b', between: ['green', 'black'], ohms: 3970 },
    { kind: 'pair', id: 'c', between: ['red', 'green'], ohms: null },
    { kind: 'kick', id: 'd', leads: { red: 'red', black: 'white' }, steel: 'laid on', row: 'slug', sign: 1 },
    {
      kind: 'kick',
      id: 'e',
      leads: { red: 'green', black: 'black' },
      steel: 'laid on',
      row: 'screw',
      sign: 1,
    },
  ],
});

interface TraceWish {
  subject?: string;
  /** What is taken over from another pickup, instead of readings. */
  takenOver?: boolean;
  /** More readings than those of the windings. */
  more?: NonNullable<TraceInput['readings']>;
  /** Ohms between hot and ground once joined: the reading `idOf.reading(at)`. */
  totalOhms?: number | null;
  chosen?: boolean;
  joined?: boolean;
  /** Where on the film it was joined. */
  joinedAt?: { takeId: ReturnType<typeof idOf.take>; ms: number };
  createdAt?: number;
}

/** A worksheet thought through by the real rules. */
export function traceWith(at: number, wish: TraceWish = {}): TraceFacts {
  const {
    subject = 'neck',
    takenOver,
    more = [],
    totalOhms,
    chosen,
    joined,
    joinedAt,
    createdAt = 5000 + at,
  } = wish;
  const { readings = [], ...empty } = measured(subject);
  const total: TotalReading | null =
    totalOhms === undefined
      ? null
      : { kind: 'total', id: idOf.reading(at), basis: 'measured', ohms: totalOhms, plan: 'series' };
  const { assumed } = takeOver(empty, measured('bridge'));
  const input: TraceInput = {
    ...empty,
    readings: [...(takenOver ? [] : readings), ...more, ...(total ? [total] : [])],
    ...(takenOver ? { assumed } : {}),
  };
  const { plans } = planWiring(input);
  const series = plans.find(({ id }) => id === 'series');
  if (!series) throw new Error('this pickup cannot be joined in series');
  const planId = chosen || joined ? series.id : null;
  return {
    worksheet: {
      ...{ subject, planId, shield: true, frame: false, rows: ['slug', 'screw'] },
      id: idOf.trace(at),
      jobId: jobIdSchema.parse(spun('job', 1)),
      conductors: empty.conductors,
      assumed: input.assumed ?? [],
    },
    analysis: analyseTrace(input),
    plans,
    check: planId && total ? checkTotal(series, total, plans) : null,
    createdAt,
    outcomes: joined
      ? [
          {
            id: idOf.outcome(at),
            traceId: idOf.trace(at),
            takeId: joinedAt?.takeId ?? null,
            ms: joinedAt?.ms ?? null,
            outcome: recordOutcome({ subject, plan: series }),
            createdAt: createdAt + 100,
          },
        ]
      : [],
  };
}

/** The reading that a trace's total rests on. */
export const totalOf = (at: number, some: Partial<ReadingFacts> = {}): ReadingFacts => ({
  id: idOf.reading(at),
  moment: null,
  atJack: false,
  createdAt: 6000 + at,
  ...some,
});
