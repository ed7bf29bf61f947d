import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeAtJack } from '@/lib/wiring';
import { type LooseEndFacts, lastingEnds, looseEnds } from '@/lib/work/loose-ends';
import { claimKinds, sureness } from '@/shared/claims';
import { jobStates } from '@/shared/jobs';
import { type LooseEnd, looseEndKinds, looseEndSchema } from '@/shared/loose-ends';
import { proposalTypes } from '@/shared/narration';
import { origins, workOutcomes } from '@/shared/work';
import {
  bare,
  claim,
  factsWith,
  idOf,
  marker,
  type ReadingFacts,
  type TraceFacts,
  take,
  totalOf,
  traceWith,
  workItem,
} from './loose-ends-facts';

const words = fc.constantFrom('Set-up', 'Find the hum', 'new nut', 'Гриф', '🎸 Fret dress', '  two\nlines ');
const when = fc.integer({ min: 1, max: 20_000 });
const numbered = <T>(make: fc.Arbitrary<(at: number) => T>, maxLength = 4): fc.Arbitrary<T[]> =>
  fc.array(make, { maxLength }).map((makers) => makers.map((one, index) => one(index + 1)));

const work = numbered(
  fc
    .record({
      what: words,
      origin: fc.constantFrom(...origins),
      outcome: fc.constantFrom(...workOutcomes),
      why: fc.constantFrom(null, '', 'no time'),
      createdAt: when,
    })
    .map((some) => (at: number) => workItem(at, some)),
);

const claims = numbered(
  fc
    .record({
      kind: fc.constantFrom(...claimKinds),
      subject: fc.constantFrom(null, 'neck', 'the Neck'),
      value: fc.constantFrom('1984', '1987', 'the 80s', 'yes'),
      sure: fc.constantFrom(...sureness),
      createdAt: when,
    })
    .map(
      ({ value, ...some }) =>
        (at: number) =>
          claim(at, value, some),
    ),
  5,
);

const markers = numbered(
  fc
    .record({
      takeId: fc.integer({ min: 1, max: 3 }).map(idOf.take),
      title: fc.constantFrom('Tap test', 'Marla’s joint', 'Ring 555 0142', 'Rose wood'),
      public: fc.boolean(),
    })
    .map((some) => (at: number) => marker(at, some)),
);

const totals = fc.constantFrom(undefined, 8050, 12_100, null, 0.2);
const wishes = fc.record({
  subject: fc.constantFrom('neck', 'Bridge pickup'),
  takenOver: fc.boolean(),
  totalOhms: totals,
  joined: fc.boolean(),
  chosen: fc.boolean(),
  joinedAt: fc.constantFrom(undefined, { takeId: idOf.take(2), ms: 200_000 }),
  isDisputed: fc.boolean(),
});

/** Thinking a trace through takes its time: each wish is thought through once. */
const known = new Map<string, TraceFacts>();
const traces = numbered(
  wishes.map(({ isDisputed, totalOhms, joinedAt, ...wish }) => (at: number) => {
    const more = isDisputed
      ? [
          {
            kind: 'pair' as const,
            id: idOf.reading(at + 10),
            between: ['red', 'white'] as [string, string],
            ohms: 9900,
          },
        ]
      : [];
    const all = {
      ...wish,
      more,
      ...(totalOhms === undefined ? {} : { totalOhms }),
      ...(joinedAt ? { joinedAt } : {}),
    };
    const key = `${at} ${JSON.stringify(all)}`;
    const trace = known.get(key) ?? traceWith(at, all);
    known.set(key, trace);
    return trace;
  }),
  2,
);

const readings = fc
  .array(
    fc.record({ createdAt: when, moment: fc.constantFrom(null, { takeId: idOf.take(2), ms: 250_000 }) }),
    {
      minLength: 20,
      maxLength: 20,
    },
  )
  .map((all) => all.map((some, at): ReadingFacts => totalOf(at, { ...some, atJack: at === 7 })));

const harness = {
  pickups: [{ id: 'neck', subject: 'neck', coils: [{ name: 'slug', ohms: 8050 }] }],
  positions: [{ name: 'neck', on: ['neck'] }],
};
const judged = [8050, 3000].map((ohms) =>
  judgeAtJack(harness, [{ id: idOf.reading(7), position: 'neck', ohms }]),
);

const records: fc.Arbitrary<LooseEndFacts> = fc.record({
  job: fc.record({
    title: fc.constantFrom('Crackle on the neck pickup', 'Marla’s rewire'),
    state: fc.constantFrom(...jobStates),
    promisedOn: fc.constantFrom(null, '2026-03-20', '2026-02-28'),
    createdAt: when,
  }),
  client: fc.constantFrom(null, bare.client, { name: 'Rose Marsh', alias: 'Rose Marsh', reach: null }),
  instrument: fc.constantFrom({ serial: null }, { serial: '40417283' }),
  claims,
  work,
  takes: numbered(
    when.map((createdAt) => (at: number) => take(at, { createdAt })),
    3,
  ),
  markers,
  readings,
  traces,
  jack: fc.constantFrom(null, ...judged),
  proposals: fc.array(
    fc.record({
      type: fc.constantFrom(...proposalTypes),
      moment: fc.constant({ takeId: idOf.take(1), ms: 0 }),
    }),
    { maxLength: 5 },
  ),
});
const today = fc.constantFrom('2026-03-01', '2026-03-20', '2026-03-21');

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** The record with this one thing tied up, as a repairer would. */
function tiedUp(facts: LooseEndFacts, { id, kind, place }: LooseEnd): LooseEndFacts {
  const onTrace = (change: (trace: TraceFacts) => TraceFacts): LooseEndFacts => ({
    ...facts,
    traces: facts.traces.map((trace) =>
      place.on === 'trace' && trace.worksheet.id === place.traceId ? change(trace) : trace,
    ),
  });
  const anchor = place.on === 'ticket' ? place.anchor : null;
  switch (kind) {
    case 'promise passed':
      return { ...facts, job: { ...facts.job, promisedOn: null } };
    case 'offered and open':
    case 'asked and open':
    case 'found and open':
      return {
        ...facts,
        work: facts.work.map((item) => (item.id === anchor ? { ...item, outcome: 'done' } : item)),
      };
    case 'contradiction':
      return anchor === null ? onTrace(settled) : { ...facts, claims: withoutDoubles(facts.claims, anchor) };
    case 'assumed conductor':
      return onTrace(proved);
    case 'failed check':
      if (place.on === 'jack') return { ...facts, jack: judged[0] ?? null };
      return onTrace((trace) => ({ ...trace, check: trace.check && { ...trace.check, verdict: 'pass' } }));
    case 'missing check':
      // At the jack the place does not say which pickup it speaks of; the id does.
      return {
        ...facts,
        traces: facts.traces.map((trace) => (id.endsWith(trace.worksheet.id) ? unjoined(trace) : trace)),
      };
    case 'private words':
      return withoutPrivate(facts, place);
    case 'take without marker': {
      const takeId = place.on === 'film' ? place.moment.takeId : idOf.take(9);
      return { ...facts, markers: [...facts.markers, marker(50, { takeId, public: false })] };
    }
    case 'proposals':
      return { ...facts, proposals: [] };
  }
}

const settled = (trace: TraceFacts): TraceFacts => ({
  ...trace,
  analysis: { ...trace.analysis, contradictions: trace.analysis.contradictions.slice(1) },
});

const measured = <T extends { basis: string }>(one: T) => ({ ...one, basis: 'measured' as const });

function proved(trace: TraceFacts): TraceFacts {
  const rows = (coil: TraceFacts['analysis']['coils'][number]) =>
    coil.rows.map((row) => ({ ...measured(row), positiveBasis: 'measured' as const }));
  return {
    ...trace,
    analysis: {
      ...trace.analysis,
      coils: trace.analysis.coils.map((coil) => ({ ...measured(coil), rows: rows(coil) })),
    },
    plans: trace.plans.map((plan) => ({ ...plan, lines: plan.lines.map(measured) })),
    outcomes: trace.outcomes.map((record) => ({
      ...record,
      outcome: { ...record.outcome, lines: record.outcome.lines.map(measured) },
    })),
  };
}

/** As if the joint had been noted by mistake; the plan stays chosen, so what is assumed stays so. */
const unjoined = (trace: TraceFacts): TraceFacts => ({ ...trace, outcomes: [] });

function withoutDoubles(claims: LooseEndFacts['claims'], anchor: string): LooseEndFacts['claims'] {
  const about = (one: (typeof claims)[number]) => `${one.kind} ${one.subject === null ? '' : 'neck'}`;
  const first = claims.find(({ id }) => id === anchor);
  return claims.map((one) => (first && about(one) === about(first) ? { ...one, sure: 'likely' } : one));
}

function withoutPrivate(facts: LooseEndFacts, place: LooseEnd['place']): LooseEndFacts {
  const { job, client, markers } = facts;
  if (place.on === 'sheet')
    return {
      ...facts,
      markers: markers.map((one) => (one.id === place.line ? { ...one, title: 'Tap test' } : one)),
    };
  const isTitle = place.on === 'ticket' && place.anchor === 'title';
  return isTitle
    ? { ...facts, job: { ...job, title: 'Rewire' } }
    : { ...facts, client: client && { ...client, alias: 'a client' } };
}

describe('loose ends of any record', () => {
  it('are of every kind among the records tried here', () => {
    const ends = fc
      .sample(records, { numRuns: 400, seed: 117 })
      .flatMap((facts) => looseEnds(facts, '2026-03-21'));
    expect(new Set(ends.map(({ kind }) => kind))).toEqual(new Set(looseEndKinds));
  });

  it('are a pure function of it: the same again, nothing changed', () => {
    fc.assert(
      fc.property(records, today, (facts, day) => {
        const kept = structuredClone(facts);
        const ends = looseEnds(frozen(facts), day);
        expect(looseEnds(kept, day)).toEqual(ends);
        expect(facts).toEqual(kept);
      }),
    );
  });

  it('do not depend on the order in which things stand in it', () => {
    const shuffled = records.chain((facts) =>
      fc.record({
        facts: fc.constant(facts),
        other: fc.record({
          ...{ job: fc.constant(facts.job), client: fc.constant(facts.client) },
          ...{ instrument: fc.constant(facts.instrument), jack: fc.constant(facts.jack) },
          claims: fc.shuffledSubarray([...facts.claims], { minLength: facts.claims.length }),
          work: fc.shuffledSubarray([...facts.work], { minLength: facts.work.length }),
          takes: fc.shuffledSubarray([...facts.takes], { minLength: facts.takes.length }),
          markers: fc.shuffledSubarray([...facts.markers], { minLength: facts.markers.length }),
          readings: fc.shuffledSubarray([...facts.readings], { minLength: facts.readings.length }),
          traces: fc.shuffledSubarray([...facts.traces], { minLength: facts.traces.length }),
          proposals: fc.shuffledSubarray([...facts.proposals], { minLength: facts.proposals.length }),
        }),
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ facts, other }) => {
        expect(lastingEnds(other)).toEqual(lastingEnds(facts));
      }),
    );
  });

  it('are as the contract has them, each once, in order of pressing', () => {
    fc.assert(
      fc.property(records, today, (facts, day) => {
        const ends = looseEnds(facts, day);
        for (const end of ends) expect(looseEndSchema.parse(end)).toEqual(end);
        expect(new Set(ends.map(({ id }) => id)).size).toBe(ends.length);
        const ranks = ends.map(({ kind }) => looseEndKinds.indexOf(kind));
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
        // The ids that were looked at go back to the server, which takes so many characters.
        for (const { id } of ends) expect(id.length).toBeLessThanOrEqual(200);
      }),
    );
  });

  it('are each one plain sentence', () => {
    fc.assert(
      fc.property(records, today, (facts, day) => {
        for (const { sentence } of looseEnds(facts, day)) {
          expect(sentence).toMatch(/^[\p{Lu}“][^\n_]+\.$/u);
          expect(sentence).not.toMatch(/undefined|null|NaN|\[object|[0-9a-z]{20}/);
          expect(sentence).not.toMatch(/Marla|Quillfeather|555|4041/);
        }
      }),
    );
  });

  it('tying one up takes that one away, and no other comes', () => {
    fc.assert(
      fc.property(records, today, (facts, day) => {
        const ends = looseEnds(facts, day);
        for (const end of ends) {
          const rest = looseEnds(tiedUp(facts, end), day).map(({ id }) => id);
          expect(rest.sort()).toEqual(ends.flatMap(({ id }) => (id === end.id ? [] : [id])).sort());
        }
      }),
      // Each thing of each record is tied up once: fewer records tell as much.
      { numRuns: 40 },
    );
  });

  it('noting what is done adds none', () => {
    fc.assert(
      fc.property(records, fc.constantFrom(...origins), words, (facts, origin, what) => {
        const done = workItem(90, { origin, what, outcome: 'done' });
        const settledClaim = claim(90, '1984', { sure: 'doubtful' });
        const ends = lastingEnds({
          ...facts,
          work: [...facts.work, done],
          claims: [...facts.claims, settledClaim],
        });
        expect(ends).toEqual(lastingEnds(facts));
      }),
    );
  });

  it('stay when the job has gone, less the promise', () => {
    fc.assert(
      fc.property(records, today, fc.constantFrom('collected', 'returned undone'), (facts, day, state) => {
        expect(looseEnds({ ...facts, job: { ...facts.job, state } }, day)).toEqual(lastingEnds(facts));
      }),
    );
  });

  it('there are none in a record where everything was settled', () => {
    const traces = [traceWith(1, { joined: true, totalOhms: 8050 })];
    const facts = factsWith({
      work: [workItem(1, { outcome: 'declined' })],
      takes: [take(1)],
      markers: [marker(1)],
      traces,
      readings: [totalOf(1)],
      jack: judged[0] ?? null,
    });
    expect(looseEnds(facts, '2026-03-21')).toEqual([]);
  });
});
