import { describe, expect, it } from 'vitest';
import {
  analyseTrace,
  checkTotal,
  drawPlan,
  planWiring,
  recordOutcome,
  TraceProblem,
  takeOver,
} from '@/lib/wiring';
import type { Plan, TraceInput, TraceReading } from '@/shared/wiring';
import { kick, neck, neckReadings, pair } from './set/traces';

const poles: TraceReading[] = [
  { kind: 'pole', id: 'm1', row: 'slug', up: 'north', basis: 'measured' },
  { kind: 'pole', id: 'm2', row: 'screw', up: 'south', basis: 'measured' },
];

function planFor(trace: TraceInput, id: string): Plan {
  const plan = planWiring(trace).plans.find((one) => one.id === id);
  if (!plan) throw new Error(`no plan ${id}`);
  return plan;
}

const groups = ({ hot, joined, ground, insulated }: Plan) => ({ hot, joined, ground, insulated });

describe('plans of the common-practice neck pickup (no source)', () => {
  it('series: hot red, white and green joined, black and shield to ground', () => {
    const plan = planFor(neck(), 'series');
    expect(groups(plan)).toEqual({
      hot: ['red'],
      joined: [['white', 'green']],
      ground: ['black', 'shield'],
      insulated: [],
    });
    expect(plan.predictedOhms).toBe(8051);
    expect([plan.stringsAdd, plan.humCancels, plan.basis]).toEqual(['yes', 'unknown', 'measured']);
  });

  it('parallel: both positive ends to hot', () => {
    const plan = planFor(neck(), 'parallel');
    expect(groups(plan)).toEqual({
      hot: ['red', 'green'],
      joined: [],
      ground: ['white', 'black', 'shield'],
      insulated: [],
    });
    expect(plan.predictedOhms).toBeCloseTo(2012.4, 1);
    expect(plan.stringsAdd).toBe('yes');
  });

  it('split: the joined pair goes to the switch, and the switch decides which coil stays', () => {
    const toGround = planFor(neck(), 'split to ground');
    expect(groups(toGround)).toEqual(groups(planFor(neck(), 'series')));
    expect([toGround.stays, toGround.predictedOhms]).toEqual([['slug coil'], 4080]);
    expect(toGround.steps.join(' ')).toContain('Join white and green');
    expect(toGround.lines.find(({ role }) => role === 'joined')?.goesTo).toContain('split switch');
    const toHot = planFor(neck(), 'split to hot');
    expect([toHot.stays, toHot.predictedOhms]).toEqual([['screw coil'], 3971]);
  });

  it('one coil alone: the other two ends are insulated each by itself', () => {
    const plan = planFor(neck(), 'alone red|white');
    expect(groups(plan)).toEqual({
      hot: ['red'],
      joined: [],
      ground: ['white', 'shield'],
      insulated: ['green', 'black'],
    });
    expect([plan.stringsAdd, plan.humCancels]).toEqual(['yes', 'no']);
    expect(plan.lines.filter(({ role }) => role === 'insulated')).toHaveLength(2);
  });

  it('out of phase: the second coil turned round', () => {
    const plan = planFor(neck(), 'out of phase');
    expect(groups(plan)).toEqual({
      hot: ['red'],
      joined: [['white', 'black']],
      ground: ['green', 'shield'],
      insulated: [],
    });
    expect(plan.stringsAdd).toBe('no');
  });

  it('knows whether hum cancels once the magnets are known', () => {
    const opposite = neck([...neckReadings, ...poles]);
    expect(planFor(opposite, 'series').humCancels).toBe('yes');
    expect(planFor(opposite, 'out of phase').humCancels).toBe('no');
    const alike = neck([
      ...neckReadings,
      ...poles.map((one): TraceReading => (one.kind === 'pole' ? { ...one, up: 'north' } : one)),
    ]);
    expect(planFor(alike, 'series').humCancels).toBe('no');
    expect(planFor(alike, 'out of phase').humCancels).toBe('yes');
  });

  it('gives the joints in order: links and loose ends first, hot last, then the measurement', () => {
    const { steps } = planFor(neck(), 'series');
    expect(steps).toHaveLength(4);
    expect(steps[0]).toContain('sleeve');
    expect(steps[1]).toContain('Solder black and the bare shield to the back of the volume pot');
    expect(steps[2]).toContain('red');
    expect(steps[3]).toContain('8.051 kΩ expected');
  });

  it('puts another coil on the hot side and names other places when asked', () => {
    const [series] = planWiring(neck(), { hotCoil: 'green|black', places: { hot: 'the selector' } }).plans;
    expect(series && groups(series)).toEqual({
      hot: ['green'],
      joined: [['black', 'red']],
      ground: ['white', 'shield'],
      insulated: [],
    });
    expect(series?.lines[0]?.goesTo).toBe('the selector');
    expect(() => planWiring(neck(), { hotCoil: 'pink|grey' })).toThrow(TraceProblem);
  });
});

describe('plans of other pickups', () => {
  it('says what is not known of a half-traced pickup', () => {
    const plan = planFor(neck([pair('p', ['red', 'white'], 4080)]), 'series');
    expect([plan.predictedOhms, plan.stringsAdd, plan.basis]).toEqual([null, 'unknown', 'assumed']);
    expect(plan.unknowns.join()).toContain('resistance of the coil green/black');
    expect(plan.unknowns.join()).toContain('which end is positive');
  });

  it('has no plan, and says why, when no coil has been found', () => {
    const { plans, unavailable } = planWiring(neck([]));
    expect(plans).toEqual([]);
    expect(unavailable.every(({ why }) => why === 'No coil has been found yet.')).toBe(true);
  });

  it('splits a tapped pickup at its tap, and cannot turn a coil round', () => {
    const trace: TraceInput = {
      subject: 'bridge',
      conductors: ['red', 'white', 'black'],
      readings: [
        pair('a', ['red', 'white'], 4000),
        pair('b', ['white', 'black'], 4100),
        pair('c', ['red', 'black'], 8100),
      ],
    };
    const { plans, unavailable } = planWiring(trace);
    expect(plans.map(({ id }) => id)).toEqual([
      'series',
      'split to ground',
      'split to hot',
      'alone red|white',
      'alone white|black',
    ]);
    expect(planFor(trace, 'series').insulated).toEqual(['white']);
    expect(planFor(trace, 'split to ground').predictedOhms).toBe(4000);
    expect(planFor(trace, 'split to ground').steps[0]).toMatch(/^Take white to the common lug/);
    expect(unavailable.map(({ kind }) => kind)).toEqual(['parallel', 'out of phase']);
  });

  it('puts an end that is on the shield inside to ground', () => {
    const readings = [...neckReadings, pair('s', ['red', 'shield'], 0.3)];
    const plan = planFor(neck(readings), 'series');
    expect(plan.ground).toEqual(['red', 'shield']);
    expect([plan.hot, plan.stringsAdd]).toEqual([['black'], 'yes']);
    expect(planFor(neck(readings), 'split to ground').notes.join()).not.toContain('lift it');
  });

  it('says so when a plan keeps an end off ground that is on the shield inside', () => {
    const trace: TraceInput = {
      subject: 'bridge',
      conductors: ['white', 'black'],
      shield: true,
      readings: [
        pair('a', ['white', 'shield'], 4000),
        pair('b', ['black', 'shield'], 4100),
        pair('c', ['white', 'black'], 8100),
      ],
    };
    expect(planFor(trace, 'series').notes.join()).toContain('lift it there first');
    expect(planFor(trace, 'alone white|shield').notes.join()).not.toContain('lift it');
  });

  it('wires a single coil between one conductor and the shield', () => {
    const trace: TraceInput = {
      subject: 'middle',
      conductors: ['white'],
      shield: true,
      rows: ['poles'],
      readings: [pair('a', ['white', 'shield'], 6900)],
    };
    const [plan] = planWiring(trace).plans;
    expect(plan && [plan.kind, plan.hot, plan.ground, plan.stringsAdd, plan.humCancels]).toEqual([
      'as it is',
      ['white'],
      ['shield'],
      'yes',
      'no',
    ]);
  });

  it('does not claim a single coil while two may be linked inside', () => {
    const trace: TraceInput = {
      subject: 'x',
      conductors: ['red', 'black'],
      readings: [pair('a', ['red', 'black'], 8080), kick('k', ['red', 'black'], 'slug')],
    };
    expect(planWiring(trace).plans[0]?.humCancels).toBe('unknown');
  });
});

describe('the total against the prediction', () => {
  const series = planFor(neck(), 'series');

  it('passes 8.08 kΩ for 4.08 kΩ and 3.971 kΩ, and says what it assumed of the meter', () => {
    const check = checkTotal(series, { ohms: 8080 });
    expect(check).toMatchObject({
      verdict: 'pass',
      measuredOhms: 8080,
      predictedOhms: 8051,
      differenceOhms: 29,
    });
    expect(check.allowedOhms).toBeGreaterThan(29);
    expect(check.assumptions.join()).toContain('0.8 % + 3 counts');
  });

  it('fails one coil, an open joint and a short', () => {
    const others = planWiring(neck()).plans;
    const oneCoil = checkTotal(series, { ohms: 4060 }, others);
    expect(oneCoil.verdict).toBe('fail');
    expect(oneCoil.alsoFits).toContain('slug coil alone');
    expect(checkTotal(series, { ohms: null }).verdict).toBe('fail');
    expect(checkTotal(series, { ohms: 0.4 }).text).toContain('shorted');
  });

  it('cannot say without a prediction, or with a meter that is too coarse', () => {
    const bridge: TraceInput = {
      subject: 'bridge',
      conductors: ['red', 'white', 'green', 'black'],
      shield: true,
    };
    const taken = planFor({ ...takeOver(bridge, neck()) }, 'series');
    expect(taken.basis).toBe('assumed');
    expect(checkTotal(taken, { ohms: 8800 })).toMatchObject({ verdict: 'cannot say', predictedOhms: null });
    expect(checkTotal(series, { ohms: 8080, uncertaintyOhms: 6000 }).verdict).toBe('cannot say');
  });

  it('says that the number does not tell series from out of phase', () => {
    expect(checkTotal(series, { ohms: 8080 }, planWiring(neck()).plans).alsoFits).toEqual([
      'Series, out of phase',
    ]);
  });
});

describe('the outcome', () => {
  it('records what was joined, where it went and when', () => {
    const moment = { takeId: 'take2', ms: 9000 };
    const outcome = recordOutcome({ subject: 'neck', plan: planFor(neck(), 'series'), moment });
    expect(outcome).toMatchObject({
      hot: ['red'],
      ground: ['black', 'shield'],
      shield: 'ground',
      insulated: [],
      moment,
      basis: 'measured',
    });
    expect(outcome.lines.every(({ basis, goesTo }) => basis !== undefined && goesTo !== '')).toBe(true);
  });

  it('refuses an end in two places, and a joint without ground', () => {
    const plan = planFor(neck(), 'series');
    const [first, ...rest] = plan.lines;
    expect(() =>
      recordOutcome({ subject: 'neck', plan, lines: first ? [first, first, ...rest] : [] }),
    ).toThrow(TraceProblem);
    const noGround = plan.lines.filter(({ role }) => role !== 'ground');
    expect(() => recordOutcome({ subject: 'neck', plan, lines: noGround })).toThrow('Nothing is ground.');
  });
});

describe('the drawing of a plan', () => {
  it('leads every end to its place, lettered, inside the picture', () => {
    for (const plan of planWiring(neck()).plans) {
      const drawing = drawPlan(plan, analyseTrace(neck()));
      expect(drawing.wires.map(({ name }) => name).toSorted()).toEqual(
        plan.lines.flatMap(({ ends }) => ends).toSorted(),
      );
      for (const wire of drawing.wires) {
        const node = drawing.nodes.find(({ id }) => id === wire.to);
        expect(wire.points.at(-1)).toEqual({ x: node?.x, y: node?.y });
        expect(
          wire.points.every(({ x, y }) => x >= 0 && x <= drawing.width && y >= 0 && y <= drawing.height),
        ).toBe(true);
        expect(wire.label.text).toBe(wire.code);
      }
    }
  });

  it('tells conductors apart without colour, and says everything in words', () => {
    const drawing = drawPlan(planFor(neck(), 'series'), analyseTrace(neck()));
    expect(new Set(drawing.wires.map(({ dash }) => dash.join())).size).toBe(drawing.wires.length);
    expect(drawing.description).toContain('hot: red');
    expect(drawing.coils.map(({ label, value }) => [label, value])).toEqual([
      ['slug coil', '4.08 kΩ'],
      ['screw coil', '3.971 kΩ'],
    ]);
  });
});
