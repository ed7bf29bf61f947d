import type { HandoverFacts } from '@/lib/handover/facts';
import { publishedFilm } from '@/lib/handover/published';
import { chaptersOfPublished } from '@/lib/handover/published-chapters';
import { cautions, cautionsFor } from '@/lib/safety';
import { analyseTrace, checkTotal, planWiring, recordOutcome } from '@/lib/wiring';
import {
  claimIdSchema,
  clientIdSchema,
  instrumentIdSchema,
  jobIdSchema,
  meterIdSchema,
  outcomeIdSchema,
  partIdSchema,
  readingIdSchema,
  traceIdSchema,
  workItemIdSchema,
} from '@/shared/ids';
import type { JobRecord } from '@/shared/jobs';
import type { Marker } from '@/shared/markers';
import type { TraceView } from '@/shared/traces';
import type { TraceInput } from '@/shared/wiring';
import { cut, filmOf, marker, takeId } from './films';

let made = 0;
const nextId = () => String(++made).padStart(20, '0');
const jobId = jobIdSchema.parse('1'.repeat(20));
const instrumentId = instrumentIdSchema.parse('2'.repeat(20));
const traceId = traceIdSchema.parse('3'.repeat(20));
export const at = (take: number, ms: number) => ({ takeId: takeId(take), ms });

export type Claim = JobRecord['claims'][number];
export type Reading = JobRecord['readings'][number];
export type WorkItem = JobRecord['work'][number];
export type Part = JobRecord['parts'][number];

export const claim = (some: Partial<Claim> & Pick<Claim, 'kind' | 'value'>): Claim => ({
  id: claimIdSchema.parse(nextId()),
  instrumentId,
  jobId,
  subject: null,
  basis: 'stated',
  evidence: null,
  moment: null,
  readingId: null,
  sure: 'likely',
  ...some,
});

export const reading = (some: Partial<Reading>): Reading => ({
  id: readingIdSchema.parse(nextId()),
  jobId,
  takeId: null,
  ms: null,
  kind: 'resistance',
  open: false,
  valueText: '4.08',
  unit: 'kΩ',
  baseValue: 4080,
  subject: 'neck pickup',
  between: null,
  basis: 'measured',
  meterId: null,
  details: {},
  note: null,
  ...some,
});

export const work = (some: Partial<WorkItem> & Pick<WorkItem, 'what' | 'outcome'>): WorkItem => ({
  id: workItemIdSchema.parse(nextId()),
  jobId,
  origin: 'asked',
  charge: 'agreed',
  priceMinor: 4500,
  currency: 'EUR',
  why: null,
  begun: null,
  ended: null,
  createdAt: 0,
  ...some,
});

export const part = (some: Partial<Part> & Pick<Part, 'what' | 'deed'>): Part => ({
  id: partIdSchema.parse(nextId()),
  jobId,
  source: null,
  fate: null,
  doubt: null,
  doubtBasis: null,
  evidence: null,
  moment: null,
  createdAt: 0,
  ...some,
});

export const meter = {
  id: meterIdSchema.parse('4'.repeat(20)),
  name: 'hand-held meter',
  ranges: [{ unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0.8, counts: 2 }],
} satisfies JobRecord['meters'][number];

/** The neck pickup of common practice (no source); the green end is taken over from another pickup. */
const neck: TraceInput = {
  subject: 'neck pickup',
  conductors: ['red', 'white', 'green', 'black'],
  shield: true,
  readings: [
    { kind: 'pair', id: 'r1', between: ['red', 'white'], ohms: 4080, basis: 'measured', uncertaintyOhms: 60 },
    {
      kind: 'pair',
      id: 'r2',
      between: ['green', 'black'],
      ohms: 3970,
      basis: 'measured',
      uncertaintyOhms: 60,
    },
    { kind: 'pair', id: 'r3', between: ['red', 'green'], ohms: null, basis: 'measured' },
    { kind: 'pair', id: 'r4', between: ['red', 'shield'], ohms: null, basis: 'measured' },
    { kind: 'pair', id: 'r5', between: ['green', 'shield'], ohms: null, basis: 'measured' },
    kick('k1', 'red', 'white', 'slug'),
  ],
  assumed: [{ ends: ['green', 'black'], row: 'screw', positive: 'green', fromSubject: 'bridge pickup' }],
};

function kick(id: string, red: string, black: string, row: string) {
  return {
    kind: 'kick' as const,
    id,
    basis: 'measured' as const,
    leads: { red, black },
    steel: 'laid on' as const,
    row,
    sign: 1 as const,
    size: 'large' as const,
  };
}

export function traceView(planId = 'series', input = neck): TraceView {
  const { plans, unavailable } = planWiring(input);
  const plan = plans.find(({ id }) => id === planId);
  if (!plan) throw new Error(`no plan ${planId} among ${plans.map(({ id }) => id)}`);
  const outcome = recordOutcome({ subject: input.subject, plan });
  return {
    worksheet: {
      id: traceId,
      jobId,
      subject: input.subject,
      conductors: ['red', 'white', 'green', 'black'],
      shield: true,
      frame: false,
      rows: ['slug', 'screw'],
      assumed: [],
      planId,
    },
    analysis: analyseTrace(input),
    plans,
    unavailable,
    check: checkTotal(plan, { ohms: 8080, uncertaintyOhms: 90 }, plans),
    outcomes: [{ id: outcomeIdSchema.parse(nextId()), traceId, ...at(2, 40_000), outcome }],
  };
}

const note = (of: Marker, words: string): Marker => ({ ...of, note: words });
const kind = (of: Marker, kind: Marker['kind']): Marker => ({ ...of, kind });

/** A whole record, invented from end to end. */
export function fullRecord(): JobRecord {
  return {
    job: {
      id: jobId,
      number: 117,
      title: 'Marla’s electric guitar: a crackle, and a rewire',
      state: 'ready',
      receivedOn: '2026-03-16',
      promisedOn: '2026-03-20',
      collectedOn: null,
      place: 'second hook',
      cameWith: ['soft case', 'strap'],
      readyLook: null,
      demo: false,
      createdAt: 0,
      updatedAt: 0,
      deletedAt: null,
    },
    instrument: {
      id: instrumentId,
      type: 'electric guitar',
      maker: null,
      model: null,
      serial: '40417283',
      features: 'sea-green top\ntwo two-coil pickups',
      clientId: clientIdSchema.parse('5'.repeat(20)),
    },
    client: {
      id: clientIdSchema.parse('5'.repeat(20)),
      name: 'Marla Quillfeather',
      alias: 'a returning client',
      reach: 'phone 555-0142, evenings only\nmarla@quillfeather.example\n12 Larkspur Road, Penhallow',
      notes: 'pays late',
    },
    takes: [],
    markers: [
      kind(marker('A guitar with no name on it', 1, 0), 'intake'),
      note(kind(marker('What Marla asked for', 1, 7_500, false), 'intake'), 'ring 555-0142'),
      note(
        kind(marker('Tap test: the neck pickup crackles', 1, 16_600), 'diagnosis'),
        'Marla heard it first on the low strings',
      ),
      kind(marker('A cracked solder joint', 1, 38_800), 'diagnosis'),
      kind(marker('Two coils by resistance', 2, 800), 'measurement'),
      note(kind(marker('White to green', 2, 30_000), 'work'), 'soldered, then sleeved'),
      kind(marker('Red to hot, black and bare to ground', 2, 36_000), 'work'),
      kind(marker('Sound check', 2, 60_000), 'result'),
    ],
    readings: [
      reading({ ...at(2, 9_900), between: ['red', 'white'], meterId: meter.id }),
      reading({
        ...at(2, 14_900),
        between: ['green', 'black'],
        valueText: '3.970',
        baseValue: 3970,
        basis: 'assumed',
        note: 'Taken over from the bridge pickup',
      }),
      reading({ ...at(2, 19_700), between: ['red', 'green'], open: true, valueText: null, baseValue: null }),
      reading({
        ...at(1, 5_000),
        kind: 'string-height',
        subject: '',
        details: { string: 'low E', fret: 12 },
        valueText: '6',
        unit: '64ths',
        baseValue: 2.38125,
        basis: 'stated',
      }),
      reading({ valueText: '8.08', baseValue: 8080, between: ['hot', 'ground'] }),
    ],
    meters: [meter],
    traces: [],
    outcomes: [],
    work: [
      work({ what: 'Find and mend the crackle', outcome: 'done', begun: at(1, 7_500), ended: at(2, 58_000) }),
      work({ what: 'Rewire the neck pickup for €45', outcome: 'done', begun: at(1, 10_400) }),
      work({ what: 'New strings for Marla', outcome: 'declined', why: 'she changes them herself' }),
      work({ what: 'Set-up', origin: 'offered', outcome: 'not done', why: 'no time before Friday' }),
      work({ what: 'String clean', origin: 'offered', outcome: 'not done' }),
      work({ what: 'Loose jack nut', origin: 'found', outcome: 'done', begun: at(1, 45_000) }),
      work({ what: 'Worn second fret', origin: 'found', outcome: 'open' }),
    ],
    parts: [
      part({
        what: 'sleeve, 3 mm',
        deed: 'fitted',
        source: 'stock',
        moment: at(2, 34_000),
      }),
      part({
        what: 'volume pot, 500 kΩ',
        deed: 'fitted',
        source: 'client',
        doubt: 'the date stamp looks wrong for the year',
        doubtBasis: 'stated',
        evidence: 'Marla bought it as old stock',
      }),
      part({ what: 'old volume pot', deed: 'removed', fate: 'returned' }),
      part({ what: 'neck pickup screws', deed: 'reused', source: 'instrument' }),
    ],
    claims: [
      claim({ kind: 'year', value: '1978', evidence: 'it says so on the label' }),
      claim({ kind: 'year', value: '1984', basis: 'implied', sure: 'certain', moment: at(1, 41_000) }),
      claim({ kind: 'factory', value: 'the northern works', basis: 'assumed', sure: 'doubtful' }),
    ],
    looseEnds: [],
    narration: '',
    tasks: [],
    undo: null,
    redo: null,
  };
}

/** Two takes of a minute and a bit; 20 to 30 seconds of the first are cut away. */
export function factsOf(record: JobRecord, traces: TraceView[] = [traceView()]): HandoverFacts {
  const film = filmOf(61_500, 71_500);
  const published = publishedFilm(film, [cut(1, 40_000, 50_000)]);
  const involved = cautionsFor({
    instrumentType: record.instrument.type,
    readings: record.readings,
    words: record.work.map(({ what }) => what),
  });
  return {
    record,
    traces,
    jack: {
      harness: null,
      expected: [],
      judgement: null,
      passedOver: [],
      known: [],
      suggestion: { pickups: [], volumes: [], tones: [], positions: [], switches: [], resistors: [] },
      cautions: [],
    },
    workshop: { name: 'Alder Bench', address: '', currency: 'EUR' },
    published,
    chapters: chaptersOfPublished(published, record.markers, record.job.title).chapters,
    cautions: involved.map((key) => cautions[key]),
    today: '2026-03-20',
  };
}
