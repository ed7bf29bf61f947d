import { describe, expect, it } from 'vitest';
import {
  expectedAtJack,
  faultTable,
  HarnessProblem,
  judgeAtJack,
  placesOf,
  prepareHarness,
  solve,
} from '@/lib/wiring/jack';
import {
  expectedReadingSchema,
  type HarnessInput,
  type JackReadingInput,
  jackJudgementSchema,
} from '@/shared/jack';
import {
  doubleCoil,
  fourPots,
  onePickup,
  singleCoil,
  split,
  threeSingles,
  threeWay,
  twoIndependent,
  volume,
} from './jack-harnesses';

const allUp = (ohms: Record<string, number | null>): JackReadingInput[] =>
  Object.entries(ohms).map(([position, value]) => ({ position, ohms: value }));

const plain: HarnessInput = { ...fourPots, switches: [] };

describe('the solver', () => {
  it('says short, open and floating', () => {
    const network = [
      { from: 'a', to: 'b', ohms: 0 },
      { from: 'c', to: 'd', ohms: 10 },
    ];
    expect(solve(network, 'a', 'b')).toEqual({ state: 'short', ohms: 0, floating: ['c', 'd'] });
    expect(solve(network, 'a', 'c')).toEqual({ state: 'open', ohms: Number.POSITIVE_INFINITY, floating: [] });
    expect(solve([], 'a', 'z').state).toBe('open');
  });

  it('is not led astray by dead ends, loops on one terminal, or a resistor on itself', () => {
    const network = [
      { from: 'a', to: 'b', ohms: 100 },
      { from: 'a', to: 'dead', ohms: 5 },
      { from: 'b', to: 'x', ohms: 5 },
      { from: 'x', to: 'y', ohms: 5 },
      { from: 'y', to: 'b', ohms: 5 },
      { from: 'a', to: 'a', ohms: 1 },
      { from: 'a', to: 'b', ohms: Number.POSITIVE_INFINITY },
    ];
    expect(solve(network, 'a', 'b').ohms).toBeCloseTo(100, 9);
  });

  it.each([-1, Number.NaN])('refuses %f Ω', (ohms) => {
    expect(() => solve([{ from: 'a', to: 'b', ohms }], 'a', 'b')).toThrow(HarnessProblem);
  });
});

describe('what the jack should read', () => {
  it('lists each position with the switches that act there, and the pots up, down, and each volume down', () => {
    const labels = expectedAtJack(fourPots).map(({ label }) => label);
    expect(labels).toHaveLength(28);
    expect(labels.slice(0, 6)).toEqual([
      'neck, pots up',
      'neck, all pots down',
      'neck, neck volume down',
      'neck, neck split thrown, pots up',
      'neck, neck split thrown, all pots down',
      'neck, neck split thrown, neck volume down',
    ]);
    expect(labels).toContain('both, neck split thrown, bridge split thrown, bridge volume down');
  });

  it('says in one line where each number comes from', () => {
    const lines = new Map(expectedAtJack(fourPots).map(({ label, explanation }) => [label, explanation]));
    expect(lines.get('neck, pots up')).toBe('neck 8.051 kΩ beside neck volume 500 kΩ');
    expect(lines.get('bridge, bridge split thrown, pots up')).toBe(
      "bridge's slug coil 4.42 kΩ beside bridge volume 500 kΩ",
    );
    expect(lines.get('both, neck volume down')).toBe(
      "neck volume is down: the wiper takes the jack's tip to ground.",
    );
    const independent = expectedAtJack(twoIndependent).find(({ label }) => label === 'on, neck volume down');
    expect(independent?.explanation).toBe(
      'bridge 8.1 kΩ beside neck volume 250 kΩ beside bridge volume 250 kΩ; neck shorted, carrying nothing',
    );
  });

  it('takes the worst corners, by hand: 8080 Ω ±2 % beside 500 kΩ ±20 %', () => {
    const [reading] = expectedAtJack({
      pickups: [singleCoil('neck', 8080)],
      volumes: [volume('neck')],
      positions: [{ name: 'on', on: ['neck'] }],
    });
    const beside = (a: number, b: number) => (a * b) / (a + b);
    expect(reading?.leastOhms).toBeCloseTo(beside(8080 * 0.98, 400_000), 6);
    // Up to 2 Ω of contacts and 20 Ω at the stop of the volume come on top.
    expect(reading?.mostOhms).toBeCloseTo(beside(8080 * 1.02, 600_000) + 22, 6);
  });

  it('does not see a tone pot through its capacitor', () => {
    const without = expectedAtJack({ ...plain, tones: [] });
    const withTones = expectedAtJack(plain);
    expect(withTones.map(({ ohms }) => ohms)).toEqual(without.map(({ ohms }) => ohms));
  });

  it('speaks its own contract', () => {
    for (const reading of expectedAtJack(threeSingles)) expectedReadingSchema.parse(reading);
    expect(placesOf(prepareHarness(onePickup)).map(({ place }) => place)).toContain('volume.wiper');
  });
});

describe('the verdict', () => {
  it('passes when every position reads as it should', () => {
    const judged = judgeAtJack(plain, allUp({ neck: 7920, both: 4130, bridge: 8640 }));
    expect(judged).toMatchObject({ verdict: 'pass', explanations: [], missing: [] });
    expect(judged.checks.map(({ verdict }) => verdict)).toEqual(['pass', 'pass', 'pass']);
    jackJudgementSchema.parse(judged);
  });

  it('cannot say while positions are unread, and names them', () => {
    const judged = judgeAtJack(plain, allUp({ neck: 7920 }));
    expect(judged.verdict).toBe('cannot say');
    expect(judged.missing.map(({ label }) => label)).toEqual(['both, pots up', 'bridge, pots up']);
    expect(judgeAtJack(plain, []).verdict).toBe('cannot say');
  });

  it('cannot say with a meter that is too coarse, but a gross fault is a fault with any meter', () => {
    const coarse = { position: 'neck', uncertaintyOhms: 5000 };
    expect(judgeAtJack(plain, [{ ...coarse, ohms: 7000 }]).checks[0]?.verdict).toBe('cannot say');
    expect(judgeAtJack(plain, [{ ...coarse, ohms: 500_000 }]).checks[0]?.verdict).toBe('fail');
  });

  it('says what a pass leaves open, and which setting would show it', () => {
    const { notRuledOut, invisible } = judgeAtJack(plain, allUp({ neck: 7920, both: 4130, bridge: 8640 }));
    const backwards = notRuledOut.find(({ title }) => title.startsWith("neck tone's capacitor"));
    expect(backwards?.label).toBe('neck, neck tone down');
    const reversed = notRuledOut.find(({ title }) =>
      title.includes('hot lead of the slug coil and the ground lead'),
    );
    expect(reversed).toMatchObject({ setting: null, label: null });
    expect(invisible.some((line) => line.startsWith('Phase:'))).toBe(true);
  });

  it('does not depend on the order of the readings', () => {
    const readings = allUp({ neck: 500_000, both: 8500, bridge: 8640 });
    const keys = (some: JackReadingInput[]) => judgeAtJack(plain, some).explanations.map(({ key }) => key);
    expect(keys([...readings].reverse())).toEqual(keys(readings));
  });
});

describe('the faults behind numbers that do not fit', () => {
  const titles = (harness: HarnessInput, readings: JackReadingInput[]) =>
    judgeAtJack(harness, readings).explanations.map(({ title }) => title);

  it('a dead neck reads its own volume alone, and leaves the bridge', () => {
    const judged = judgeAtJack(plain, allUp({ neck: 500_000, both: 8500, bridge: 8640 }));
    expect(judged.verdict).toBe('fail');
    expect(
      judged.explanations
        .slice(0, 3)
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['dead pickup', 'open link', 'pickup not grounded']);
    expect(judged.explanations.every(({ explainsAll }) => explainsAll)).toBe(true);
  });

  it('tells an open link from a dead coil by a reading at the coil itself', () => {
    const { explanations } = judgeAtJack(plain, allUp({ neck: 500_000, both: 8500, bridge: 8640 }));
    const coil = explanations.find(({ title }) => title === "neck's screw coil is open inside");
    expect(coil?.alikeAtJack).toContain("the link between neck's slug and screw coils is open");
    expect(coil?.next).toMatchObject({ kind: 'inside', leaves: [] });
    expect(coil?.next?.where).toContain("Across neck's screw coil");
  });

  it('hears from the split whether the break is in the upper or the lower coil', () => {
    const readings = [...allUp({ neck: 500_000, both: 8500, bridge: 8640 })];
    const { explanations } = judgeAtJack(fourPots, readings);
    const screw = explanations.find(({ title }) => title === "neck's screw coil is open inside");
    expect(screw?.next).toMatchObject({
      kind: 'jack',
      setting: { position: 'neck', thrown: ['neck split'] },
    });
    const more = [...readings, { position: 'neck', thrown: ['neck split'], ohms: 4050 }];
    expect(titles(fourPots, more)).not.toContain("neck's slug coil is open inside");
    expect(titles(fourPots, more)).toContain("neck's screw coil is open inside");
  });

  it('one coil alone: two leads swapped before anything else', () => {
    const [first] = judgeAtJack(plain, allUp({ neck: 3940, both: 2710, bridge: 8640 })).explanations;
    expect(first).toMatchObject({ kind: 'leads swapped' });
    expect(first?.title).toContain('the hot lead of the slug coil and the link lead of the screw coil');
  });

  it('pickups swapped at the selector, when their windings differ', () => {
    expect(titles(plain, allUp({ neck: 8640, both: 4130, bridge: 7920 }))[0]).toContain(
      'neck and bridge are swapped',
    );
  });

  it('a selector that is stuck', () => {
    expect(titles(plain, allUp({ neck: 8640, both: 8640, bridge: 8640 }))[0]).toBe(
      'the selector makes "bridge" wherever it stands',
    );
  });

  it('nothing anywhere: short or open at the jack', () => {
    const short = judgeAtJack(plain, allUp({ neck: 0.4, both: 0.4, bridge: 0.4 })).explanations;
    expect(short[0]?.kind).toBe('jack shorted');
    const open = judgeAtJack(plain, allUp({ neck: null, both: null, bridge: null })).explanations;
    expect(open.map(({ kind }) => kind)).toEqual(['jack lead off', 'jack lead off']);
    expect(open[0]?.next?.kind).toBe('inside');
  });

  it('solves the value of a pot: 250 kΩ where 500 kΩ was said', () => {
    const one: HarnessInput = {
      pickups: [singleCoil('bass', 8000)],
      volumes: [volume('bass', 500_000, 'independent')],
      positions: [{ name: 'on', on: ['bass'] }],
    };
    const readings = [
      { position: 'on', ohms: 7760 },
      { position: 'on', down: ['bass volume'], ohms: 248_000 },
    ];
    const pot = judgeAtJack(one, readings).explanations.find(({ kind }) => kind === 'pot of another value');
    expect(pot?.title).toBe('bass volume is not as marked but about 248 kΩ, like a 250 kΩ pot');
    expect(pot?.solved?.ohms).toBeCloseTo(248_000, -2);
  });

  it('a volume wired the other way: turned down, it no longer shorts the jack', () => {
    const readings = [
      ...allUp({ neck: 7920, both: 4130, bridge: 8640 }),
      { position: 'both', down: ['neck volume'], ohms: 8500 },
    ];
    expect(titles(plain, readings)).toEqual(
      expect.arrayContaining([expect.stringContaining('wired as an independent volume')]),
    );
  });

  it('owns up when no single fault explains everything', () => {
    const judged = judgeAtJack(plain, allUp({ neck: null, both: 0.3, bridge: 123_000 }));
    expect(judged.explanations.every(({ explainsAll }) => !explainsAll)).toBe(true);
    expect(judged.text).toContain('No single fault');
  });

  it('knows which faults no reading at the jack shows', () => {
    const hidden = faultTable(plain).rows.filter(({ isVisible }) => !isVisible);
    expect(hidden.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['leads swapped']));
    expect(hidden.every(({ kind }) => kind === 'leads swapped' || kind === 'capacitor passes current')).toBe(
      true,
    );
  });
});

describe('bad input', () => {
  const base: HarnessInput = {
    pickups: [singleCoil('neck', 6000)],
    positions: [{ name: 'on', on: ['neck'] }],
  };
  const cases: [string, HarnessInput, RegExp][] = [
    ['no pickups', { ...base, pickups: [] }, /at least one pickup/],
    ['zero ohms', { ...base, pickups: [singleCoil('neck', 0)] }, /above zero/],
    ['negative ohms', { ...base, volumes: [volume('neck', -500)] }, /above zero/],
    ['not a number', { ...base, pickups: [singleCoil('neck', Number.NaN)] }, /number of ohms/],
    ['absurd ohms', { ...base, pickups: [singleCoil('neck', 1e12)] }, /more than a hand-held meter/],
    ['no positions', { ...base, positions: [] }, /at least one position/],
    [
      'unknown selector contact',
      { ...base, positions: [{ name: 'on', on: ['rear'] }] },
      /Its pickups are neck/,
    ],
    ['a pickup twice in a position', { ...base, positions: [{ name: 'on', on: ['neck', 'neck'] }] }, /once/],
    ['a position twice', { ...base, positions: [...base.positions, ...base.positions] }, /name of its own/],
    ['an id twice', { ...base, pickups: [singleCoil('neck', 1), singleCoil('neck', 2)] }, /id of its own/],
    ['a reserved id', { ...base, pickups: [singleCoil('tip', 6000)] }, /kept for the harness/],
    ['a volume for nobody', { ...base, volumes: [volume('rear')] }, /Its pickups are neck/],
    [
      'two volumes on one pickup',
      { ...base, volumes: [volume('neck'), { ...volume('neck'), id: 'second' }] },
      /one volume of its own/,
    ],
    ['a split with one coil', { ...base, switches: [split('neck')] }, /Describe both coils/],
    [
      'a split that keeps a coil that is not there',
      { ...base, pickups: [doubleCoil('neck', 4000, 4000)], switches: [split('neck', 'third')] },
      /Its coils are slug and screw/,
    ],
    [
      'two splits on one pickup',
      {
        ...base,
        pickups: [doubleCoil('neck', 4000, 4000)],
        switches: [split('neck'), { ...split('neck'), id: 'more' }],
      },
      /One switch of a kind/,
    ],
    [
      'series behind own volumes',
      {
        pickups: [singleCoil('neck', 6000), singleCoil('bridge', 6000)],
        volumes: [volume('neck')],
        positions: [{ name: 'on', on: ['neck', 'bridge'], together: 'series' }],
      },
      /only where the volume is shared/,
    ],
    [
      'a resistor from nowhere',
      { ...base, resistors: [{ id: 'r', name: 'r', ohms: 10, between: ['neck.hot', 'roof'] }] },
      /Its places are/,
    ],
    [
      'a resistor on itself',
      { ...base, resistors: [{ id: 'r', name: 'r', ohms: 10, between: ['tip', 'tip'] }] },
      /two different places/,
    ],
  ];

  const problemOf = (work: () => unknown): HarnessProblem => {
    try {
      work();
    } catch (error) {
      if (error instanceof HarnessProblem) return error;
      throw error;
    }
    throw new Error('it was let pass');
  };

  it.each(cases)('%s', (_, harness, detail) => {
    const problem = problemOf(() => expectedAtJack(harness));
    expect(problem.detail).toMatch(detail);
    expect(problem.kind).toBe('invalid');
  });

  it.each<[string, JackReadingInput, RegExp]>([
    ['an unknown position', { position: 'middle', ohms: 1 }, /Its positions are neck, both and bridge/],
    ['an unknown switch', { position: 'neck', thrown: ['x'], ohms: 1 }, /Its switches are/],
    ['an unknown pot', { position: 'neck', down: ['x'], ohms: 1 }, /Its pots are/],
    ['a negative reading', { position: 'neck', ohms: -3 }, /Zero the meter/],
    ['more than a meter shows', { position: 'neck', ohms: 1e10 }, /as open/],
    ['no number', { position: 'neck', ohms: Number.NaN }, /Correct it/],
  ])('%s', (_, reading, detail) => {
    expect(problemOf(() => judgeAtJack(fourPots, [reading])).detail).toMatch(detail);
  });

  it('takes thousands of readings of the same kind', () => {
    const many = Array.from({ length: 2000 }, () => allUp({ neck: 7920, both: 4130, bridge: 8640 })).flat();
    expect(judgeAtJack({ ...plain, positions: threeWay }, many)).toMatchObject({ verdict: 'pass' });
  });
});
