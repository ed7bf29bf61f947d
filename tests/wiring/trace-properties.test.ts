import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseTrace, nextMeasurement } from '@/lib/wiring';
import { DomainError } from '@/shared/problem';
import { type NextMeasurement, type TraceReading, traceAnalysisSchema } from '@/shared/wiring';
import { everyReading, faultyPickup, traceOf, truePickup } from './set/pickups';
import { together } from './set/traces';

const someReadings = truePickup.chain((pickup) =>
  fc.record({ pickup: fc.constant(pickup), readings: fc.shuffledSubarray(everyReading(pickup)) }),
);

describe('conclusions', () => {
  it('do not depend on the order of the readings', () => {
    fc.assert(
      fc.property(someReadings, ({ pickup, readings }) => {
        const back = analyseTrace(traceOf(pickup, readings.toReversed()));
        expect(analyseTrace(traceOf(pickup, readings))).toEqual(back);
      }),
    );
  });

  it('are the same with leads and sign swapped, and with steel taken off instead', () => {
    const swap = (reading: TraceReading): TraceReading => {
      if (reading.kind === 'pair') return { ...reading, between: [reading.between[1], reading.between[0]] };
      if (reading.kind !== 'kick') return reading;
      return {
        ...reading,
        leads: { red: reading.leads.black, black: reading.leads.red },
        sign: reading.sign === 1 ? -1 : 1,
      };
    };
    const lift = (reading: TraceReading): TraceReading =>
      reading.kind === 'kick'
        ? { ...reading, steel: 'taken off', sign: reading.sign === 1 ? -1 : 1 }
        : reading;
    fc.assert(
      fc.property(someReadings, fc.constantFrom(swap, lift), ({ pickup, readings }, change) => {
        const changed = analyseTrace(traceOf(pickup, readings.map(change)));
        expect(changed).toEqual(analyseTrace(traceOf(pickup, readings)));
      }),
    );
  });

  it('are never lost to a reading that agrees', () => {
    // What is implied rests on the pickup being of an ordinary build; a reading that shows it to be another does not agree.
    fc.assert(
      fc.property(someReadings, ({ pickup, readings }) => {
        const before = analyseTrace(traceOf(pickup, readings.slice(0, -1)));
        const after = analyseTrace(traceOf(pickup, readings));
        const kept = new Set(after.conclusions.map(({ key }) => key));
        expect(before.conclusions.filter(({ key }) => !kept.has(key))).toEqual([]);
        expect(after.contradictions).toEqual([]);
      }),
    );
  });

  it('find the true pickup from all readings', () => {
    fc.assert(
      fc.property(truePickup, (pickup) => {
        const { coils } = analyseTrace(traceOf(pickup, everyReading(pickup)));
        const truth = pickup.windings.map(({ from, to, ohms, row, fromIsPositive }) => ({
          ends: together(pickup.conductors[from] ?? '', pickup.conductors[to] ?? ''),
          ohms,
          row,
          positive: pickup.conductors[fromIsPositive ? from : to],
        }));
        const found = coils.map(({ ends, ohms, rows }) => ({
          ends: together(ends[0][0] ?? '', ends[1][0] ?? ''),
          ohms,
          row: rows[0]?.row,
          positive: rows[0]?.positive,
        }));
        expect(found).toHaveLength(truth.length);
        expect(found).toEqual(expect.arrayContaining(truth));
      }),
    );
  });

  it('fit their own contract', () => {
    fc.assert(
      fc.property(someReadings, ({ pickup, readings }) => {
        const analysis = analyseTrace(traceOf(pickup, readings));
        expect(traceAnalysisSchema.parse(analysis)).toEqual(analysis);
      }),
    );
  });
});

describe('following what to measure next', () => {
  it('completes every ordinary pickup, never asking twice, in no more readings than there are', () => {
    fc.assert(
      fc.property(truePickup, (pickup) => {
        const all = everyReading(pickup);
        const taken: TraceReading[] = [];
        for (
          let next = nextMeasurement(traceOf(pickup, taken));
          next;
          next = nextMeasurement(traceOf(pickup, taken))
        ) {
          const answer = all.find((reading) => answers(reading, next));
          if (!answer || taken.includes(answer))
            throw new Error(`asked again, or what cannot be read: ${next.reason}`);
          taken.push(answer);
        }
        expect(analyseTrace(traceOf(pickup, taken)).coils).toHaveLength(pickup.windings.length);
      }),
    );
  });
});

function answers(reading: TraceReading, next: NonNullable<NextMeasurement>): boolean {
  if (reading.kind === 'pair' && next.kind === 'pair')
    return together(...reading.between) === together(...next.between);
  if (reading.kind !== 'kick' || next.kind !== 'kick') return false;
  return (
    reading.row === next.row &&
    together(reading.leads.red, reading.leads.black) === together(next.leads.red, next.leads.black)
  );
}

describe('faulty pickups', () => {
  const some = faultyPickup.chain(({ conductors, readings }) =>
    fc.record({ conductors: fc.constant(conductors), readings: fc.shuffledSubarray(readings) }),
  );
  const analyse = (conductors: string[], readings: TraceReading[]) =>
    analyseTrace({ subject: 'x', conductors, shield: true, readings });

  it('never lose what was concluded without a guess at the build, nor contradict themselves', () => {
    fc.assert(
      fc.property(some, ({ conductors, readings }) => {
        const before = analyse(conductors, readings.slice(0, -1));
        const after = analyse(conductors, readings);
        const kept = new Set(after.conclusions.map(({ key }) => key));
        const lost = before.conclusions.filter(
          ({ key, kind, ohms }) => !kept.has(key) && !(kind === 'coil' && ohms === undefined),
        );
        expect(lost).toEqual([]);
        expect(after.contradictions).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it('come to an end of what to measure next', () => {
    fc.assert(
      fc.property(faultyPickup, ({ conductors, readings }) => {
        const taken: TraceReading[] = [];
        for (
          let next = analyse(conductors, taken).next;
          next?.kind === 'pair';
          next = analyse(conductors, taken).next
        ) {
          const answer = readings.find((reading) => answers(reading, next));
          if (!answer || taken.includes(answer)) throw new Error(`asked again: ${next.reason}`);
          taken.push(answer);
        }
        const { grid } = analyse(conductors, taken);
        expect(grid.filter(({ state }) => state === 'unread')).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

describe('anything at all', () => {
  const colour = fc.constantFrom('red', 'white', 'green', 'black', 'shield', 'frame', 'mauve');
  const ohms = fc.oneof(
    fc.constant(null),
    fc.double(),
    fc.constantFrom(0, 0.3, 4080, 3971, 8080, 250_000, 30_000_000),
  );
  const readings = fc.uniqueArray(
    fc.oneof(
      fc.record({
        kind: fc.constant('pair' as const),
        id: fc.string({ minLength: 1 }),
        between: fc.tuple(colour, colour),
        ohms,
      }),
      fc.record({
        kind: fc.constant('kick' as const),
        id: fc.string({ minLength: 1 }),
        leads: fc.record({ red: colour, black: colour }),
        steel: fc.constantFrom('laid on' as const, 'taken off' as const),
        row: fc.constantFrom('slug', 'screw'),
        sign: fc.constantFrom(1 as const, -1 as const),
      }),
    ),
    { selector: ({ id }) => id, maxLength: 12 },
  );

  it('gives an analysis or a clear refusal', () => {
    fc.assert(
      fc.property(readings, fc.subarray(['red', 'white', 'green', 'black']), (taken, conductors) => {
        try {
          const analysis = analyseTrace({
            subject: 'x',
            conductors,
            shield: true,
            frame: true,
            readings: taken,
          });
          expect(analysis.grid).toHaveLength(((conductors.length + 2) * (conductors.length + 1)) / 2);
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
