import { describe, expect, it } from 'vitest';
import { analyseTrace, nextMeasurement, TraceProblem, takeOver, UnknownColour } from '@/lib/wiring';
import type { TraceInput, TraceReading } from '@/shared/wiring';
import { kick, neck, neckReadings, pair } from './set/traces';

const conclusions = (trace: TraceInput) =>
  new Map(analyseTrace(trace).conclusions.map((one) => [one.key, one]));
const pickup = (
  conductors: string[],
  readings: TraceReading[],
  rest: Partial<TraceInput> = {},
): TraceInput => ({
  subject: 'bridge',
  conductors,
  readings,
  ...rest,
});

describe('coils from pair readings', () => {
  it('finds both coils of the common-practice neck pickup', () => {
    const { coils, contradictions } = analyseTrace(neck());
    expect(coils.map(({ ends, ohms, basis }) => ({ ends, ohms, basis }))).toEqual([
      { ends: [['red'], ['white']], ohms: 4080, basis: 'measured' },
      { ends: [['green'], ['black']], ohms: 3971, basis: 'measured' },
    ]);
    expect(contradictions).toEqual([]);
  });

  it('implies the other pair of four conductors, and says that it is not measured', () => {
    const other = conclusions(neck([pair('p1', ['RD', 'WH'], 4080)])).get('coil:green|black');
    expect(other).toMatchObject({ basis: 'implied', readings: ['p1'] });
    expect(other?.because).toContain('red/white leaves');
  });

  it('implies both pairs from open readings alone', () => {
    const found = conclusions(neck([pair('a', ['red', 'white'], null), pair('b', ['red', 'green'], null)]));
    expect(found.get('coil:red|black')?.basis).toBe('implied');
    expect(found.get('coil:white|green')?.basis).toBe('implied');
  });

  it('sees a tapped coil when the sum rule holds', () => {
    const found = conclusions(
      pickup(
        ['red', 'white', 'black'],
        [
          pair('a', ['red', 'white'], 5200),
          pair('b', ['white', 'black'], 2650),
          pair('c', ['red', 'black'], 7850),
        ],
      ),
    );
    expect(found.get('tapped:red|white|black')?.kind).toBe('tapped coil');
  });

  it('sees coils already linked inside', () => {
    const linked = analyseTrace(
      neck([
        pair('a', ['white', 'green'], 0.3),
        pair('b', ['red', 'white'], 4080),
        pair('c', ['green', 'black'], 3971),
        pair('d', ['red', 'black'], 8060),
      ]),
    );
    expect(linked.conclusions.find(({ kind }) => kind === 'linked inside')?.about).toEqual([
      'white',
      'green',
    ]);
    expect(linked.contradictions).toEqual([]);
  });

  it('sees two coils linked inside two conductors by clear kicks under both rows', () => {
    const found = conclusions(
      pickup(
        ['red', 'black'],
        [
          pair('a', ['red', 'black'], 8080),
          kick('k', ['red', 'black'], 'slug'),
          kick('l', ['red', 'black'], 'screw'),
        ],
      ),
    );
    expect(found.get('linked:rows:red|black')?.because).toContain('same direction');
  });

  it('sees a single coil under one row of poles, between one conductor and the shield as well', () => {
    const one = pickup(['white'], [pair('a', ['white', 'shield'], 6900)], { shield: true, rows: ['poles'] });
    expect(conclusions(one).get('single:white|shield')?.kind).toBe('single coil');
    const two = pickup(['white', 'black'], [pair('a', ['white', 'black'], 6900)], { rows: ['poles'] });
    expect(conclusions(two).get('single:white|black')?.kind).toBe('single coil');
  });

  it('sees an open coil only when no other end is left', () => {
    const readings = [pair('a', ['red', 'white'], 4080), pair('b', ['green', 'black'], null)];
    expect(conclusions(neck(readings)).has('open coil:green|black')).toBe(false);
    const more = ['green', 'black'].flatMap((end) => [
      pair(`${end}1`, ['red', end], null),
      pair(`${end}2`, [end, 'shield'], null),
    ]);
    expect(conclusions(neck([...readings, ...more])).get('open coil:green|black')?.basis).toBe('implied');
  });

  it('sees a short, leakage, and connections to shield and frame', () => {
    const short = pickup(['red', 'black'], [pair('a', ['red', 'black'], 0.4)]);
    expect(conclusions(short).get('short:red|black')?.kind).toBe('short');
    const leak = neck([pair('a', ['red', 'shield'], 2_200_000)]);
    expect(conclusions(leak).get('leak:red|shield')?.kind).toBe('leakage');
    const onMetal = pickup(
      ['red', 'black'],
      [pair('a', ['black', 'cover'], 0.4), pair('b', ['red', 'frame'], 8000)],
      { frame: true },
    );
    expect(conclusions(onMetal).get('metal:black|frame')?.text).toContain('connected to the frame');
    expect(conclusions(onMetal).get('metal:red|frame')?.text).toContain('through a winding');
  });

  it('says that all conductors stand clear of the shield from one reading per coil', () => {
    const readings = [
      ...neckReadings,
      pair('s1', ['white', 'shield'], null),
      pair('s2', ['black', 'shield'], null),
    ];
    expect(conclusions(neck(readings)).get('clear:shield')?.basis).toBe('implied');
  });

  it('fills the grid with what follows for pairs that were not read', () => {
    const cell = analyseTrace(neck()).grid.find(({ between }) => between.join() === 'white,black');
    expect(cell).toMatchObject({ state: 'open', basis: 'implied', ohms: null });
    expect(cell?.readings.toSorted()).toEqual(['p1', 'p2', 'p3']);
  });
});

describe('rows and positive ends from kicks', () => {
  it('finds row and positive end of both coils', () => {
    const found = conclusions(neck());
    expect(found.get('positive:red|white:slug')).toMatchObject({ positive: 'red', basis: 'measured' });
    expect(found.get('positive:green|black:screw')).toMatchObject({ positive: 'green', basis: 'measured' });
  });

  it('takes the other row for a coil that kicks only slightly, and for the other coil', () => {
    const found = conclusions(
      neck([pair('p', ['red', 'white'], 4080), kick('k', ['red', 'white'], 'screw', { size: 'small' })]),
    );
    expect(found.get('row:red|white:slug')?.basis).toBe('implied');
    expect(found.get('row:green|black:screw')?.basis).toBe('implied');
  });

  it('takes a kick for a winding where no resistance was read', () => {
    const found = conclusions(neck([kick('k', ['red', 'white'], 'slug')]));
    expect(found.get('coil:red|white')).toMatchObject({ basis: 'implied', readings: ['k'] });
  });
});

describe('contradictions', () => {
  const texts = (trace: TraceInput) =>
    analyseTrace(trace).contradictions.map(({ readings }) => readings.toSorted());

  it('names both readings of a pair and their moments', () => {
    const again = pair('p9', ['white', 'red'], 3300, { moment: { takeId: 'take2', ms: 5 } });
    const [first, ...more] = analyseTrace(neck([...neckReadings, again])).contradictions;
    expect(more).toEqual([]);
    expect(first?.text).toContain('4.08 kΩ');
    expect(first?.text).toContain('3.3 kΩ');
    expect(first?.moments.map(({ moment }) => moment)).toEqual([
      { takeId: 'take2', ms: 5 },
      { takeId: 'take1', ms: 61_000 },
    ]);
  });

  it.each<[string, TraceReading[], string[]]>([
    [
      'open although the way round reads through',
      [
        pair('a', ['red', 'white'], 4000),
        pair('b', ['white', 'green'], 4000),
        pair('c', ['red', 'green'], null),
      ],
      ['a', 'b', 'c'],
    ],
    [
      'parts that do not add up',
      [
        pair('a', ['red', 'white'], 4000),
        pair('b', ['white', 'green'], 4000),
        pair('c', ['red', 'green'], 9000),
      ],
      ['a', 'b', 'c'],
    ],
    [
      'a kick across an open pair',
      [pair('a', ['red', 'white'], null), kick('k', ['red', 'white'], 'slug')],
      ['a', 'k'],
    ],
    [
      'kicks in opposite directions',
      [kick('k', ['red', 'white'], 'slug'), kick('l', ['red', 'white'], 'slug', { sign: -1 })],
      ['k', 'l'],
    ],
    [
      'a clear and a slight kick',
      [kick('k', ['red', 'white'], 'slug'), kick('l', ['red', 'white'], 'slug', { size: 'small' })],
      ['k', 'l'],
    ],
    [
      'two coils under one row',
      [
        pair('a', ['red', 'white'], 4000),
        pair('b', ['green', 'black'], 4000),
        kick('k', ['red', 'white'], 'slug'),
        kick('l', ['green', 'black'], 'slug'),
      ],
      ['k', 'l'],
    ],
    [
      'one coil under both rows beside another',
      [
        pair('a', ['red', 'white'], 4000),
        kick('k', ['red', 'white'], 'slug'),
        kick('l', ['red', 'white'], 'screw'),
      ],
      ['k', 'l'],
    ],
    [
      'both poles under one row',
      [
        { kind: 'pole', id: 'n', row: 'slug', up: 'north', basis: 'measured' },
        { kind: 'pole', id: 's', row: 'slug', up: 'south', basis: 'measured' },
      ],
      ['n', 's'],
    ],
  ])('%s', (_, readings, named) => {
    expect(texts(neck(readings))).toContainEqual(named);
  });

  it('holds three values that could meet at a fourth point against nobody while that point is unread', () => {
    const readings = [
      pair('a', ['red', 'white'], 4000),
      pair('b', ['white', 'green'], 4000),
      pair('c', ['red', 'green'], 6000),
    ];
    expect(texts(neck(readings))).toEqual([]);
    expect(texts(pickup(['red', 'white', 'green'], readings))).toEqual([['a', 'b', 'c']]);
  });

  it('lets a measured value stand against a stated one, and still says so', () => {
    const told = pair('told', ['red', 'white'], 7000, { basis: 'stated' });
    const analysis = analyseTrace(neck([...neckReadings, told]));
    expect(analysis.coils[0]?.ohms).toBe(4080);
    expect(analysis.contradictions).toHaveLength(1);
  });
});

describe('what to measure next', () => {
  it('starts with a pair that leaves two of three ways, and gives the reason', () => {
    expect(nextMeasurement(neck([]))).toMatchObject({
      kind: 'pair',
      possibilitiesNow: 3,
      possibilitiesAtMost: 2,
    });
  });

  it('asks for the implied coil, then across, then the shield, then the other kicks', () => {
    expect(nextMeasurement(neck([pair('a', ['red', 'white'], 4080)]))).toMatchObject({
      between: ['green', 'black'],
    });
    expect(nextMeasurement(neck(neckReadings.slice(0, 2)))).toMatchObject({ between: ['red', 'green'] });
    expect(nextMeasurement(neck())).toMatchObject({ between: ['red', 'shield'] });
  });

  it('has nothing to ask when the trace is complete', () => {
    const readings = [
      ...neckReadings,
      pair('s1', ['white', 'shield'], null),
      pair('s2', ['black', 'shield'], null),
    ];
    expect(nextMeasurement(neck(readings))).toBeNull();
    expect(analyseTrace(neck(readings)).complete).toBe(true);
  });

  it('asks for the pair again whose readings disagree', () => {
    const disputed = [pair('a', ['red', 'black'], 8000), pair('b', ['red', 'black'], null)];
    expect(nextMeasurement(pickup(['red', 'black'], disputed))).toMatchObject({ between: ['red', 'black'] });
  });
});

describe('taking over from another pickup', () => {
  const bridge: TraceInput = {
    subject: 'bridge',
    conductors: ['red', 'white', 'green', 'black'],
    shield: true,
  };

  it('has every role assumed, and no resistance', () => {
    const { coils, complete } = analyseTrace(takeOver(bridge, neck()));
    expect(
      coils.map(({ basis, ohms, rows }) => [basis, ohms, rows[0]?.row, rows[0]?.positive, rows[0]?.basis]),
    ).toEqual([
      ['assumed', null, 'slug', 'red', 'assumed'],
      ['assumed', null, 'screw', 'green', 'assumed'],
    ]);
    expect(complete).toBe(false);
  });

  it('raises what an own reading proves, and nothing more', () => {
    const own = pair('b1', ['red', 'white'], 4400);
    const [first, second] = analyseTrace(takeOver({ ...bridge, readings: [own] }, neck())).coils;
    expect([first?.basis, second?.basis]).toEqual(['measured', 'implied']);
    expect([first?.rows[0]?.positiveBasis, second?.rows[0]?.positiveBasis]).toEqual(['assumed', 'assumed']);
  });

  it('leaves the map assumed when only a total was read', () => {
    const total: TraceReading = { kind: 'total', id: 't', ohms: 8800, basis: 'measured' };
    const analysis = analyseTrace(takeOver({ ...bridge, readings: [total] }, neck()));
    expect(analysis.conclusions.find(({ kind }) => kind === 'total')?.basis).toBe('measured');
    expect(analysis.coils.every(({ basis }) => basis === 'assumed')).toBe(true);
  });

  it('lets own readings stand against what was taken over, and says so', () => {
    const own = [
      pair('b1', ['red', 'white'], null),
      pair('b2', ['red', 'green'], 4400),
      kick('b3', ['red', 'green'], 'slug'),
    ];
    const analysis = analyseTrace(takeOver({ ...bridge, readings: own }, neck()));
    expect(analysis.coils[0]).toMatchObject({ ends: [['red'], ['green']], basis: 'measured' });
    expect(analysis.contradictions.map(({ text }) => text).join()).toContain('taken over from neck');
  });

  it('refuses when no colours are shared', () => {
    expect(() => takeOver({ subject: 'bridge', conductors: ['blue', 'pink'] }, neck())).toThrow(TraceProblem);
  });
});

describe('bad input is answered clearly', () => {
  it.each<[string, TraceInput]>([
    ['a conductor twice', pickup(['red', 'RD'], [])],
    ['two-colour conductors that share a code', pickup(['red/white', 'white/red'], [])],
    ['seven conductors', pickup(['red', 'white', 'green', 'black', 'blue', 'pink', 'grey'], [])],
    ['no conductor', pickup([], [])],
    ['a reading on one conductor', neck([pair('a', ['red', 'RD'], 4080)])],
    ['a conductor that is not there', neck([pair('a', ['red', 'pink'], 4080)])],
    ['an unknown word', neck([pair('a', ['red', 'mauve'], 4080)])],
    ['a negative resistance', neck([pair('a', ['red', 'white'], -4080)])],
    ['an absurd resistance', neck([pair('a', ['red', 'white'], 4e15)])],
    ['not a number', neck([pair('a', ['red', 'white'], Number.NaN)])],
    ['an unknown row', neck([kick('a', ['red', 'white'], 'blade')])],
    ['one id twice', neck([pair('a', ['red', 'white'], 4080), pair('a', ['green', 'black'], 3971)])],
    ['rows of one name', { ...neck(), rows: ['slug', 'Slug'] }],
  ])('%s', (_, trace) => {
    expect(() => analyseTrace(trace)).toThrow(TraceProblem);
  });

  it('an unknown colour', () => {
    expect(() => analyseTrace(pickup(['red', 'mauve'], []))).toThrow(UnknownColour);
  });

  it('takes ten thousand readings of one pickup', () => {
    const readings = Array.from({ length: 10_000 }, (_, at) =>
      pair(`r${at}`, ['red', 'white'], 4075 + (at % 10)),
    );
    expect(analyseTrace(neck(readings)).coils[0]?.basis).toBe('measured');
  });
});
