import { describe, expect, it } from 'vitest';
import { judgeAtJack } from '@/lib/wiring';
import { lastingEnds, looseEnds, promiseEnd } from '@/lib/work/loose-ends';
import { looseEndSchema } from '@/shared/loose-ends';
import { bare, claim, factsWith, idOf, marker, take, totalOf, traceWith, workItem } from './loose-ends-facts';

const said = (some: Parameters<typeof factsWith>[0]): string[] =>
  lastingEnds(factsWith(some)).map(({ sentence }) => sentence);

describe('work', () => {
  it.each([
    ['offered', 'Set-up', 'A set-up was offered and is neither done nor declined.'],
    ['offered', 'string clean', 'A string clean was offered and is neither done nor declined.'],
    ['offered', 'Electrics check', 'An electrics check was offered and is neither done nor declined.'],
    [
      'asked',
      'Rewire the neck pickup',
      '“Rewire the neck pickup” was asked for and is neither done nor declined.',
    ],
    ['found', 'New nut slot', '“New nut slot” was found to be needed and is neither done nor declined.'],
  ] as const)('%s and open: %s', (origin, what, sentence) => {
    expect(lastingEnds(factsWith({ work: [workItem(1, { origin, what })] }))).toEqual([
      {
        id: `${origin} and open:${idOf.work(1)}`,
        kind: `${origin} and open`,
        sentence,
        since: 2001,
        place: { on: 'ticket', anchor: idOf.work(1) },
      },
    ]);
  });

  it.each(['done', 'declined'] as const)('that is %s is tied up', (outcome) => {
    expect(said({ work: [workItem(1, { outcome })] })).toEqual([]);
  });

  it('not done stays loose until somebody says why', () => {
    expect(said({ work: [workItem(1, { outcome: 'not done' })] })).toEqual([
      'A set-up was not done, and nobody says why.',
    ]);
    expect(said({ work: [workItem(1, { outcome: 'not done', why: '  ' })] })).toHaveLength(1);
    expect(said({ work: [workItem(1, { outcome: 'not done', why: 'no time' })] })).toEqual([]);
  });

  it('says long words on one line and cuts them', () => {
    const [sentence = ''] = said({ work: [workItem(1, { what: `Find\nthe ${'very '.repeat(30)}old hum` })] });
    expect(sentence).toMatch(/^“Find the very .{40,60}…” was offered and is neither done nor declined\.$/);
  });
});

describe('a promised day', () => {
  const job = { state: 'on the bench', promisedOn: '2026-03-20' } as const;

  it('is no loose end before it has gone by', () => {
    expect(promiseEnd(job, '2026-03-20')).toBeNull();
    expect(promiseEnd({ ...job, promisedOn: null }, '2026-03-21')).toBeNull();
  });

  it('is one the day after, since the end of that day', () => {
    const end = promiseEnd(job, '2026-03-21');
    expect(end?.sentence).toBe('It was promised for Friday 20 March 2026, and that day has gone by.');
    expect(end?.since).toBe(new Date(2026, 2, 21).getTime());
    expect(end?.place).toEqual({ on: 'ticket', anchor: 'promisedOn' });
  });

  it.each(['ready', 'collected', 'returned undone'] as const)('is over once the job is %s', (state) => {
    expect(promiseEnd({ ...job, state }, '2026-04-01')).toBeNull();
  });

  it('comes first, and the rest stays when the job has gone', () => {
    const facts = factsWith({ job: { ...bare.job, ...job }, work: [workItem(1)] });
    expect(looseEnds(facts, '2026-03-21').map(({ kind }) => kind)).toEqual([
      'promise passed',
      'offered and open',
    ]);
    const gone = factsWith({ job: { ...bare.job, ...job, state: 'collected' }, work: [workItem(1)] });
    expect(looseEnds(gone, '2026-03-21')).toEqual(lastingEnds(facts));
  });
});

describe('assumed conductors', () => {
  it('of a pickup whose roles were taken over', () => {
    expect(said({ traces: [traceWith(1, { takenOver: true })] })).toEqual([
      'Red, white, green and black of the neck pickup are assumed, not measured.',
    ]);
  });

  it('of a chosen plan, and of what was joined by it', () => {
    const chosen = traceWith(1, { takenOver: true, chosen: true, subject: 'Bridge pickup' });
    expect(said({ traces: [chosen] })).toEqual([
      'Red, white, green and black of the bridge pickup are assumed, not measured.',
    ]);
    const joined = traceWith(1, { takenOver: true, joined: true, totalOhms: 8050 });
    const ends = lastingEnds(factsWith({ traces: [joined], readings: [totalOf(1)] }));
    expect(ends.map(({ kind }) => kind)).toEqual(['assumed conductor']);
    expect(ends[0]?.since).toBe(joined.createdAt + 100);
  });

  it('names one alone', () => {
    const trace = traceWith(1, { chosen: true });
    const plans = trace.plans.map((plan) => ({
      ...plan,
      lines: plan.lines.map((line) => (line.role === 'hot' ? { ...line, basis: 'assumed' as const } : line)),
    }));
    expect(said({ traces: [{ ...trace, plans }] })).toEqual([
      'Red of the neck pickup is assumed, not measured.',
    ]);
  });

  it('are none where all was measured, nor once it was measured after the joint', () => {
    expect(said({ traces: [traceWith(1, { chosen: true })] })).toEqual([]);
    const before = traceWith(1, { takenOver: true, joined: true, totalOhms: 8050 });
    const now = traceWith(1, { joined: true, totalOhms: 8050 });
    expect(said({ traces: [{ ...now, outcomes: before.outcomes }], readings: [totalOf(1)] })).toEqual([]);
  });
});

describe('checks after wiring', () => {
  const at = (number: number, ms: number) => ({ takeId: idOf.take(number), ms });

  it('a joined pickup without a total or a reading at the jack', () => {
    const [end] = lastingEnds(factsWith({ traces: [traceWith(1, { joined: true })] }));
    expect(end).toEqual({
      id: `missing check:${idOf.trace(1)}`,
      kind: 'missing check',
      sentence: 'The neck pickup was joined, and neither its total nor the jack was read afterwards.',
      since: 5101,
      place: { on: 'trace', traceId: idOf.trace(1) },
    });
  });

  it('a total that fits ties it up; one from before the wiring does not', () => {
    const traces = [traceWith(1, { joined: true, totalOhms: 8050 })];
    expect(said({ traces, readings: [totalOf(1)] })).toEqual([]);
    expect(said({ traces, readings: [totalOf(1, { createdAt: 5050 })] })).toHaveLength(1);
  });

  it('the film tells what came first, whatever was noted first', () => {
    const takes = [take(1), take(2)];
    const markers = [marker(1), marker(2, { takeId: idOf.take(2) })];
    const traces = [traceWith(1, { joined: true, totalOhms: 8050, joinedAt: at(2, 300_000) })];
    const with_ = (moment: ReturnType<typeof at>, createdAt: number) =>
      said({ takes, markers, traces, readings: [totalOf(1, { moment, createdAt })] });
    expect(with_(at(2, 400_000), 1)).toEqual([]);
    // Read between the joint of the coils and the last joint, at which the outcome is pinned.
    expect(with_(at(2, 290_000), 1)).toEqual([]);
    expect(with_(at(2, 100_000), 9999)).toHaveLength(1);
    expect(with_(at(1, 400_000), 9999)).toHaveLength(1);
  });

  it('a total that does not fit', () => {
    const traces = [traceWith(1, { joined: true, totalOhms: 12_100 })];
    const [end] = lastingEnds(factsWith({ traces, readings: [totalOf(1)] }));
    expect(end?.kind).toBe('failed check');
    // 4.08 kΩ and 3.97 kΩ in series, by Ohm's law.
    expect(end?.sentence).toBe(
      'The neck pickup reads 12.1 kΩ since it was joined, where 8.05 kΩ was to be expected.',
    );
    expect(end?.since).toBe(6001);
  });

  it.each([
    [null, 'The neck pickup reads open between hot and ground since it was joined.'],
    [0.2, 'The neck pickup reads 0.2 Ω since it was joined: hot is shorted to ground.'],
  ])('a total of %s ohms', (totalOhms, sentence) => {
    expect(said({ traces: [traceWith(1, { joined: true, totalOhms })], readings: [totalOf(1)] })).toEqual([
      sentence,
    ]);
  });

  const harness = {
    pickups: [{ id: 'neck', subject: 'neck', coils: [{ name: 'slug', ohms: 8050 }] }],
    volumes: [{ id: 'volume', name: 'volume', ohms: 500_000, serves: 'all' as const }],
    positions: [{ name: 'neck', on: ['neck'] }],
  };
  const jackReading = totalOf(7, { atJack: true });
  const judged = (ohms: number) => judgeAtJack(harness, [{ id: idOf.reading(7), position: 'neck', ohms }]);

  it('a judged reading at the jack is a check; one without a harness is not', () => {
    const traces = [traceWith(1, { joined: true })];
    expect(said({ traces, readings: [jackReading], jack: judged(7920) })).toEqual([]);
    const [end] = lastingEnds(factsWith({ traces, readings: [jackReading] }));
    expect(end?.sentence).toBe(
      'The neck pickup was joined and read at the jack, but nothing is written down to hold that against.',
    );
    expect(end?.place).toEqual({ on: 'jack' });
  });

  it('a reading at the jack that fails', () => {
    const [end] = lastingEnds(factsWith({ readings: [jackReading], jack: judged(3000) }));
    expect(end).toEqual({
      id: 'failed check:jack',
      kind: 'failed check',
      sentence: 'The check at the jack fails for “neck, pots up”.',
      since: 6007,
      place: { on: 'jack' },
    });
  });
});

describe('contradictions', () => {
  it('between readings of a pickup', () => {
    const more = [
      {
        kind: 'pair' as const,
        id: idOf.reading(3),
        between: ['red', 'white'] as [string, string],
        ohms: 9900,
      },
    ];
    const trace = traceWith(1, { more });
    const ends = lastingEnds(factsWith({ traces: [trace], readings: [totalOf(3)] })).filter(
      ({ kind }) => kind === 'contradiction',
    );
    expect(ends.map(({ sentence }) => sentence)).toEqual([
      'On the neck pickup, red to white was read as 4.08 kΩ and as 9.9 kΩ: read it again and set the wrong one aside.',
    ]);
    expect(ends[0]?.since).toBe(6003);
    expect(ends[0]?.place).toEqual({ on: 'trace', traceId: idOf.trace(1) });
  });

  it('between certain claims', () => {
    expect(lastingEnds(factsWith({ claims: [claim(2, '1987'), claim(1, '1984')] }))).toEqual([
      {
        id: `contradiction:${idOf.claim(1)}`,
        kind: 'contradiction',
        sentence: 'What is called certain about the year cannot both be true: “1984” and “1987”.',
        since: 4002,
        place: { on: 'ticket', anchor: idOf.claim(1) },
      },
    ]);
    const origin = { kind: 'original part' as const, subject: 'bridge' };
    expect(
      said({ claims: [claim(1, 'yes', origin), claim(2, 'no', origin), claim(3, 'refitted', origin)] }),
    ).toEqual([
      'What is called certain about the origin of “bridge” cannot all be true: “yes”, “no” and “refitted”.',
    ]);
  });

  it('are none between claims that are not certain, or of other things', () => {
    expect(said({ claims: [claim(1, '1984'), claim(2, '1987', { sure: 'likely' })] })).toEqual([]);
    expect(said({ claims: [claim(1, '1984'), claim(2, '1987', { subject: 'neck' })] })).toEqual([]);
    expect(said({ claims: [claim(1, '1984'), claim(2, '1984')] })).toEqual([]);
  });
});

describe('private words in public texts', () => {
  it.each([
    ['What Marla asked for', 'The public marker “What … asked for” holds a name.'],
    ['Ring 555 0142', 'The public marker “Ring …” holds a telephone number.'],
    ['Marla: 4041-7283', 'The public marker “…: …” holds a name and the serial number.'],
  ])('the title of a public marker: %s', (title, sentence) => {
    const takes = [take(1)];
    expect(lastingEnds(factsWith({ takes, markers: [marker(1, { title })] }))).toEqual([
      {
        id: `private words:${idOf.marker(1)}`,
        kind: 'private words',
        sentence,
        since: 3001,
        place: { on: 'sheet', line: idOf.marker(1) },
      },
    ]);
    expect(said({ takes, markers: [marker(1, { title, public: false })] })).toEqual([]);
  });

  it('the title of the job and the alias', () => {
    const job = { ...bare.job, title: 'Marla’s rewire' };
    const client = { name: 'Marla Quillfeather', alias: 'Marla', reach: null };
    expect(
      lastingEnds(factsWith({ job, client })).map(({ sentence, place }) => ({ sentence, place })),
    ).toEqual([
      {
        sentence: 'The alias of the client, which public texts use, holds a name.',
        place: { on: 'ticket', anchor: 'alias' },
      },
      {
        sentence: 'The title of the job, which heads the public chapters, holds a name.',
        place: { on: 'ticket', anchor: 'title' },
      },
    ]);
  });
});

describe('takes without a marker', () => {
  it('are named one by one', () => {
    const ends = lastingEnds(
      factsWith({ takes: [take(2), take(1), take(3)], markers: [marker(1, { public: false })] }),
    );
    expect(ends.map(({ sentence }) => sentence)).toEqual([
      'Nothing is marked in the take “take-2.mp4”.',
      'Nothing is marked in the take “take-3.mp4”.',
    ]);
    expect(ends[0]?.place).toEqual({ on: 'film', moment: { takeId: idOf.take(2), ms: 0 } });
  });

  it('are counted where they are many', () => {
    const ends = lastingEnds(factsWith({ takes: [5, 4, 3, 2].map((at) => take(at)) }));
    expect(ends.map(({ sentence }) => sentence)).toEqual([
      'Four takes have no marker, the first of them “take-2.mp4”.',
    ]);
    expect(ends[0]?.since).toBe(1502);
  });
});

describe('proposals not looked at', () => {
  const moment = { takeId: idOf.take(1), ms: 0 };
  const takes = [take(1)];
  const markers = [marker(1)];

  it('are counted by type, the private ones apart', () => {
    const types = ['reading', 'marker', 'reading', 'private', 'reading', 'work'] as const;
    const proposals = types.map((type) => ({ type, moment }));
    expect(lastingEnds(factsWith({ takes, markers, proposals }))).toEqual([
      {
        id: 'proposals',
        kind: 'proposals',
        sentence:
          'One marker, three readings and one piece of work heard in the narration were not looked at, nor was one private word.',
        since: 1501,
        place: { on: 'proposals' },
      },
    ]);
  });

  it.each([
    [['private', 'private'] as const, 'Two private words heard in the narration were not looked at.'],
    [['joint'] as const, 'One joint heard in the narration was not looked at.'],
  ])('%s', (types, sentence) => {
    expect(said({ takes, markers, proposals: types.map((type) => ({ type, moment })) })).toEqual([sentence]);
  });
});

describe('the list', () => {
  it('is as the contract has it, most pressing first', () => {
    const ends = lastingEnds(
      factsWith({
        work: [workItem(2), workItem(1), workItem(3, { origin: 'asked' })],
        takes: [take(1)],
        traces: [traceWith(1, { joined: true, takenOver: true })],
        claims: [claim(1, '1984'), claim(2, '1987')],
      }),
    );
    for (const end of ends) expect(looseEndSchema.parse(end)).toEqual(end);
    expect(ends.map(({ kind }) => kind)).toEqual([
      'offered and open',
      'offered and open',
      'asked and open',
      'contradiction',
      'assumed conductor',
      'missing check',
      'take without marker',
    ]);
    expect(ends[0]?.since).toBeLessThan(ends[1]?.since ?? 0);
  });
});
