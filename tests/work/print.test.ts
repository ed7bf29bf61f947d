import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedTicket, type RecordToPrint } from '@/lib/work/print';
import { benchAddress, type CardAddress, type HowAsked, isLoopback } from '@/lib/work/print-address';
import { qrCode, quietZone } from '@/lib/work/print-code';
import { fitLists, moreLineMm } from '@/lib/work/print-fit';
import { type Paper, papers } from '@/lib/work/print-paper';
import { cutTo } from '@/lib/work/print-text';
import { sayCharge, sayDeed } from '@/lib/work/print-words';
import { clientSchema } from '@/shared/clients';
import { instrumentSchema, jobSchema } from '@/shared/jobs';
import { type LooseEndKind, looseEndSchema } from '@/shared/loose-ends';
import { partSchema, workItemSchema } from '@/shared/work';

const id = (number: number) => String(number).padStart(20, '0');

const record = (more: Partial<RecordToPrint> = {}): RecordToPrint => ({
  job: jobSchema.parse({
    id: id(1),
    number: 12,
    title: 'Crackles on the neck pickup',
    state: 'booked in',
    receivedOn: '2026-11-25',
    promisedOn: '2026-12-04',
    collectedOn: null,
    place: 'rail by the window',
    cameWith: ['case', 'strap'],
    readyLook: null,
    demo: false,
    createdAt: 0,
    updatedAt: 0,
    deletedAt: null,
  }),
  instrument: instrumentSchema.parse({
    id: id(2),
    type: 'electric guitar',
    maker: null,
    model: null,
    serial: null,
    features: null,
    clientId: null,
  }),
  client: null,
  readings: [],
  markers: [],
  work: [],
  parts: [],
  looseEnds: [],
  ...more,
});

const item = (what: string, more: object = {}) =>
  workItemSchema.parse({
    id: id(3),
    jobId: id(1),
    what,
    origin: 'asked',
    charge: null,
    priceMinor: null,
    currency: null,
    outcome: 'open',
    why: null,
    begun: null,
    ended: null,
    createdAt: 0,
    ...more,
  });
const part = (what: string, more: object = {}) =>
  partSchema.parse({
    id: id(4),
    jobId: id(1),
    what,
    deed: 'fitted',
    source: null,
    fate: null,
    doubt: null,
    doubtBasis: null,
    evidence: null,
    moment: null,
    createdAt: 0,
    ...more,
  });
const looseEnd = (sentence: string, kind: LooseEndKind = 'contradiction') =>
  looseEndSchema.parse({
    id: sentence,
    kind,
    sentence,
    since: 0,
    place: { on: 'ticket', anchor: 'work' },
  });
const times = <T>(count: number, make: (at: number) => T): T[] =>
  Array.from({ length: count }, (_, at) => make(at));
const everyPaper: readonly Paper[] = ['a4', 'letter'];

describe('a text on paper', () => {
  it('stays as it is where it fits, without the spaces that nobody needs', () => {
    expect(cutTo('  new   nut ', 30, 2)).toEqual({ text: 'new nut', lines: 1 });
    expect(cutTo('by phone\r\n\r\n  by letter', 30, 4)).toEqual({ text: 'by phone\nby letter', lines: 2 });
    expect(cutTo('', 30, 4)).toEqual({ text: '', lines: 1 });
  });

  it('is cut between words, and says so', () => {
    const { text, lines } = cutTo('the nut slots are cut too deep on the treble side', 10, 2);
    expect(lines).toBe(2);
    expect(text).toMatch(/^the nut slots .*\S…$/);
  });

  it('is cut within a word that is longer than all its lines', () => {
    const { text, lines } = cutTo('x'.repeat(20_000), 11, 3);
    expect(lines).toBe(3);
    expect(text).toMatch(/^x{50,60}…$/);
  });

  it('leaves a surrogate pair whole', () => {
    expect(cutTo('🎸'.repeat(50), 5, 1).text).toBe(`${'🎸'.repeat(4)}…`);
  });

  it('keeps its beginning and never takes more lines than it may', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.integer({ min: 3, max: 60 }),
        fc.integer({ min: 1, max: 5 }),
        (text, widthEm, maxLines) => {
          const whole = cutTo(text, widthEm, 1000);
          const cut = cutTo(text, widthEm, maxLines);
          expect(cut.lines).toBe(Math.min(whole.lines, maxLines));
          if (whole.lines <= maxLines) expect(cut.text).toBe(whole.text);
          else expect(whole.text.startsWith(cut.text.slice(0, -1))).toBe(true);
          expect(cutTo(cut.text, widthEm, 1000).lines).toBeLessThanOrEqual(maxLines);
        },
      ),
    );
  });
});

describe('lists on one page', () => {
  const lists = fc.array(
    fc.record({
      rowsMm: fc.array(fc.integer({ min: 4, max: 12 }), { maxLength: 40 }),
      turns: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 4 },
  );
  const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

  it('never take more room than there is, the lines that tell of the rest with them', () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 30, max: 400 }), (wanted, room) => {
        const counts = fitLists(wanted, room);
        const taken = wanted.map(({ rowsMm }, at) => {
          const count = counts[at] ?? 0;
          return sum(rowsMm.slice(0, count)) + (count < rowsMm.length ? moreLineMm : 0);
        });
        expect(sum(taken)).toBeLessThanOrEqual(room + 1e-9);
      }),
    );
  });

  it('are whole where there is room, and leave no room unused where they are not', () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 30, max: 400 }), (wanted, room) => {
        const counts = fitLists(wanted, room);
        const whole = sum(wanted.flatMap(({ rowsMm }) => rowsMm));
        const shown = sum(wanted.map(({ rowsMm }, at) => sum(rowsMm.slice(0, counts[at]))));
        if (whole <= room) expect(shown).toBe(whole);
        else expect(shown).toBeGreaterThan(room - 12 - wanted.length * moreLineMm);
      }),
    );
  });

  it('let a short list through beside a long one', () => {
    const [long, short] = fitLists(
      [
        { rowsMm: times(40, () => 6), turns: 2 },
        { rowsMm: [6, 6], turns: 1 },
      ],
      80,
    );
    expect(short).toBe(2);
    expect(long).toBe(9);
  });
});

describe('the printed ticket', () => {
  it('shows all of an ordinary job', () => {
    const ticket = printedTicket(
      record({
        client: clientSchema.parse({
          id: id(5),
          name: 'Ada Invented',
          alias: 'a client',
          reach: 'ada@invented.example\nevenings',
          notes: null,
        }),
        work: [item('Clean the switch', { charge: 'agreed', priceMinor: 4550, currency: 'EUR' })],
        parts: [part('Switch', { source: 'stock', doubt: 'older than it looks', doubtBasis: 'assumed' })],
        looseEnds: [looseEnd('Its year is read in two ways.')],
      }),
      'a4',
    );
    expect(ticket).toMatchObject({
      title: { text: 'Crackles on the neck pickup' },
      days: { received: 'Wed, 25 Nov 2026', promised: 'Fri, 4 Dec 2026', collected: null },
      client: { name: { text: 'Ada Invented' }, reach: { text: 'ada@invented.example\nevenings', lines: 2 } },
      cameWith: { text: 'case, strap' },
      instrument: { maker: { text: 'unknown' }, serial: { text: 'unknown' }, features: null },
      work: { rows: [{ what: { text: 'Clean the switch' }, charge: '€45.50', outcome: 'open' }], more: 0 },
      parts: {
        rows: [{ deed: { text: 'fitted, from stock' }, doubt: { text: 'older than it looks (assumed)' } }],
        more: 0,
      },
      looseEnds: { rows: [{ text: 'Its year is read in two ways.' }], more: 0 },
    });
  });

  for (const paper of everyPaper)
    it(`holds the worst of jobs to one page and says what is left: ${papers[paper].name}`, () => {
      const enormous = 'W'.repeat(2000);
      const plain = record();
      const ticket = printedTicket(
        record({
          job: { ...plain.job, title: enormous, place: enormous, cameWith: times(30, () => 'W'.repeat(80)) },
          instrument: {
            ...plain.instrument,
            type: 'valve amplifier',
            maker: enormous,
            model: enormous,
            serial: enormous,
            features: enormous,
          },
          client: clientSchema.parse({
            id: id(5),
            name: enormous,
            alias: 'a client',
            reach: times(40, (at) => `line ${at}`).join('\n'),
            notes: null,
          }),
          work: times(40, () =>
            item(`Rewire, refret, refinish, restring, lithium battery pack ${'W'.repeat(300)}`),
          ),
          parts: times(40, () => part('W'.repeat(300), { doubt: enormous })),
          looseEnds: times(40, () => looseEnd(enormous)),
        }),
        paper,
      );
      for (const { rows, more } of [ticket.work, ticket.parts, ticket.looseEnds]) {
        expect(rows.length).toBeGreaterThan(0);
        expect(rows.length + more).toBe(40);
      }
      expect(ticket.cautions.length).toBeGreaterThan(6);
      expect(ticket.client?.reach).toEqual({ text: 'line 0\nline 1\nline 2\nline 3…', lines: 4 });
    });

  it('puts open work and doubtful parts first: what is cut is what is settled', () => {
    const { work, parts } = printedTicket(
      record({
        work: [...times(40, (at) => item(`done ${at}`, { outcome: 'done' })), item('still to do')],
        parts: [...times(40, (at) => part(`sure ${at}`)), part('doubtful', { doubt: 'its year' })],
      }),
      'letter',
    );
    expect(work.rows[0]?.what.text).toBe('still to do');
    expect(work.rows[1]?.what.text).toBe('done 0');
    expect(parts.rows[0]?.what.text).toBe('doubtful');
  });

  it('does not say twice that work is open: its boxes are empty', () => {
    const { looseEnds } = printedTicket(
      record({
        work: [item('Set-up', { origin: 'offered' })],
        looseEnds: [
          looseEnd('Set-up was offered.', 'offered and open'),
          looseEnd('Switch was asked for.', 'asked and open'),
          looseEnd('Jack was found.', 'found and open'),
          looseEnd('The promised day has gone by.', 'promise passed'),
        ],
      }),
      'a4',
    );
    expect(looseEnds.rows.map(({ text }) => text)).toEqual(['The promised day has gone by.']);
  });

  it('holds the cautions that the words of the work call for, whole', () => {
    const { cautions } = printedTicket(record({ work: [item('Refret and restring')] }), 'a4');
    expect(cautions.map(({ key }) => key)).toEqual(['string tension', 'dust']);
    for (const { words } of cautions) expect(words).toMatch(/come first\.$/);
  });
});

describe('words on paper', () => {
  it('says a price as it was agreed', () => {
    const price = { priceMinor: 4550, currency: 'EUR' } as const;
    expect(sayCharge({ charge: 'agreed', ...price })).toBe('€45.50');
    expect(sayCharge({ charge: null, ...price })).toBe('€45.50');
    expect(sayCharge({ charge: 'reduced', ...price })).toBe('reduced €45.50');
    expect(sayCharge({ charge: 'free', priceMinor: null, currency: null })).toBe('free');
    expect(sayCharge({ charge: 'reduced', priceMinor: null, currency: null })).toBe('reduced');
    expect(sayCharge({ charge: null, priceMinor: null, currency: null })).toBeNull();
  });

  it('says where a part came from and where it went', () => {
    expect(sayDeed({ deed: 'fitted', source: 'client', fate: null })).toBe('fitted, from the client');
    expect(sayDeed({ deed: 'removed', source: null, fate: 'returned' })).toBe('removed, returned');
  });
});

describe('the address in the code', () => {
  const card = (address: string, internal = false): CardAddress => ({
    address,
    family: address.includes(':') ? 'IPv6' : 'IPv4',
    internal,
  });
  const cards = [card('127.0.0.1', true), card('172.17.0.1'), card('fe80::1'), card('192.168.0.20')];
  const asked = (more: Partial<HowAsked>) =>
    benchAddress({
      host: 'localhost:4680',
      protocol: 'http',
      listensOn: '127.0.0.1',
      port: 4680,
      cards,
      ...more,
    });

  it('is the one that the page was asked with', () => {
    const host = 'bench.local:4680';
    expect(asked({ host, listensOn: '0.0.0.0' })).toEqual({ origin: `http://${host}`, otherDevices: true });
    expect(asked({ host: 'bench.local', protocol: 'https' }).origin).toBe('https://bench.local');
    expect(asked({ host: '[fd00::20]:4680', listensOn: '::' })).toEqual({
      origin: 'http://[fd00::20]:4680',
      otherDevices: true,
    });
  });

  it('is that of the network card where the page was asked for on the machine itself', () => {
    for (const host of ['localhost:4680', '127.0.0.1:4680', '[::1]:4680'])
      for (const listensOn of ['0.0.0.0', '::'])
        expect(asked({ host, listensOn })).toEqual({
          origin: 'http://192.168.0.20:4680',
          otherDevices: true,
        });
  });

  it('is the one that the server was told to listen on', () => {
    expect(asked({ listensOn: '10.0.0.7', port: 8080 }).origin).toBe('http://10.0.0.7:8080');
    expect(asked({ listensOn: 'fd00::7' }).origin).toBe('http://[fd00::7]:4680');
  });

  it('stays on the machine where nothing else can reach it, and says so', () => {
    for (const listensOn of ['127.0.0.1', 'localhost', '::1'])
      expect(asked({ listensOn })).toEqual({ origin: 'http://localhost:4680', otherDevices: false });
    expect(
      asked({ listensOn: '0.0.0.0', cards: [card('127.0.0.1', true), card('169.254.7.7'), card('fe80::1')] }),
    ).toEqual({ origin: 'http://localhost:4680', otherDevices: false });
  });

  it('takes a bridge of virtual machines only where there is nothing better', () => {
    expect(asked({ listensOn: '0.0.0.0', cards: cards.slice(0, 3) }).origin).toBe('http://172.17.0.1:4680');
    expect(asked({ listensOn: '::', cards: [card('fe80::1'), card('fd00::9')] }).origin).toBe(
      'http://[fd00::9]:4680',
    );
  });

  // RFC 1122 3.2.1.3 (g): all of 127/8; RFC 6761 6.3: localhost and what is below it; RFC 4291 2.5.3: ::1.
  it('knows the names of "this machine"', () => {
    for (const name of [
      '127.0.0.1',
      '127.8.9.10',
      'LOCALHOST',
      'bench.localhost',
      '::1',
      '[::1]',
      '0:0:0:0:0:0:0:1',
    ])
      expect(isLoopback(name), name).toBe(true);
    for (const name of ['128.0.0.1', 'localhost.example', '127.example', '::', 'fe80::1', '1127.0.0.1'])
      expect(isLoopback(name), name).toBe(false);
  });
});

describe('the QR code', () => {
  const address = `http://192.168.0.20:4680/jobs/${id(1)}`;
  /** Draws the path again, one module at a time. */
  const modules = ({ size, path }: { size: number; path: string }) => {
    const drawn = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
    for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
      drawn[Number(y)]?.fill(true, Number(x), Number(x) + Number(width));
    return drawn;
  };

  // ISO/IEC 18004: 17 + 4 × version modules; version 4 holds 62 bytes at level M (table 7), version 3 holds 42.
  it('is no larger than it must be, with four free modules on every side', () => {
    const code = qrCode(address);
    expect(address.length).toBeGreaterThan(42);
    expect(code.size).toBe(17 + 4 * 4 + 2 * quietZone);
    expect(quietZone).toBe(4);
    const drawn = modules(code);
    for (const [y, row] of drawn.entries())
      for (const [x, dark] of row.entries())
        if (Math.min(x, y, code.size - 1 - x, code.size - 1 - y) < 4) expect(dark).toBe(false);
    expect(drawn[4]?.slice(4, 12)).toEqual([true, true, true, true, true, true, true, false]);
  });

  // ISO/IEC 18004, format information: the first two bits, after the mask 101010000010010, are 00 for level M.
  it('says itself that it is of level M', () => {
    const row = modules(qrCode(address))[quietZone + 8] ?? [];
    const [first, second] = row.slice(quietZone).map(Number);
    expect([(first ?? 0) ^ 1, (second ?? 0) ^ 0]).toEqual([0, 0]);
  });
});
