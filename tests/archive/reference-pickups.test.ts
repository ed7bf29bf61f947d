import { describe, expect, it } from 'vitest';
import { assignmentsOf, usesOf } from '@/lib/archive/reference/assignments';
import { askedKey, cableKey, likenessOf } from '@/lib/archive/reference/cables';
import { readColoursAsked } from '@/lib/archive/reference/colours-asked';
import { tracedOf } from '@/lib/archive/reference/traced';
import { jobIdSchema, readingIdSchema, traceIdSchema } from '@/shared/ids';
import type { Reading } from '@/shared/readings';

const codes = (text: string) => readColoursAsked(text).conductors.map(({ code }) => code);

describe('colours in the hand', () => {
  it('are read as names, letter codes or single letters, in any order', () => {
    // Letters: IEC 60757, table 1.
    expect(codes('red white green black bare')).toEqual(['RD', 'WH', 'GN', 'BK']);
    expect(codes('RD, WH; gn BK')).toEqual(['RD', 'WH', 'GN', 'BK']);
    expect(codes('r w g b')).toEqual(['RD', 'WH', 'GN', 'BK']);
    expect(codes('the black and the white')).toEqual(['BK', 'WH']);
  });

  it('say what a letter was taken for that several colours begin with, and only that', () => {
    expect(readColoursAsked('r w g b').taken).toEqual([
      { said: 'g', means: 'green' },
      { said: 'b', means: 'black' },
    ]);
    expect(readColoursAsked('red y o').taken).toEqual([]);
  });

  it('know the shield by its several names, striped conductors, and two of one colour', () => {
    for (const word of ['bare', 'braid', 'drain', 'shield', 'bare wire', 's'])
      expect(readColoursAsked(`red ${word}`)).toMatchObject({ shield: true, unknown: [] });
    expect(codes('white with a red stripe, green/yellow')).toEqual(['RDWH', 'GNYE']);
    expect(codes('black black white')).toEqual(['BK', 'BK2', 'WH']);
    expect(codes('black 1 black 2')).toEqual(['BK1', 'BK2']);
  });

  it('leave what is no colour to be said, and never take it for one', () => {
    expect(readColoursAsked('red mauve 🎸 q "; drop table')).toMatchObject({
      conductors: [{ name: 'red' }],
      unknown: ['mauve', '🎸', 'q', '"', 'drop', 'table'],
    });
    expect(readColoursAsked('   ')).toEqual({ conductors: [], shield: false, taken: [], unknown: [] });
    expect(readColoursAsked('red '.repeat(200)).conductors).toHaveLength(12);
  });
});

describe('cables like the one in the hand', () => {
  const like = (cable: string[], shield: boolean, asked: string) =>
    likenessOf({ key: cableKey(cable), shield }, askedKey(readColoursAsked(asked)))?.likeness ?? null;

  it('are the same in any order, whatever tells two of one colour apart', () => {
    expect(like(['black', 'green', 'white', 'red'], true, 'r w g b')).toBe('same');
    expect(like(['black 1', 'black 2'], false, 'black black')).toBe('same');
    expect(like(['red/white', 'black'], false, 'white/red bk')).toBe('same');
  });

  it('have more, or fewer, or are no match where each has a colour of its own', () => {
    expect(like(['red', 'white', 'green', 'black'], true, 'red white')).toBe('more');
    expect(like(['red', 'white'], true, 'red white green')).toBe('fewer');
    expect(like(['red', 'blue'], true, 'red white')).toBeNull();
  });

  it('count the shield only where it was named', () => {
    expect(like(['red', 'white'], true, 'red white')).toBe('same');
    expect(like(['red', 'white'], true, 'red white bare')).toBe('same');
    expect(like(['red', 'white'], false, 'red white bare')).toBe('fewer');
  });
});

const jobId = jobIdSchema.parse('j0000000000000000000');
const job = { id: jobId, number: 1, title: 'A guitar', instrument: 'electric guitar', day: '2026-05-04' };
const sheet = {
  ...{ subject: 'neck', conductors: ['red', 'white', 'green', 'black'], shield: true, frame: false },
  ...{ rows: ['slug', 'screw'], assumed: [], planId: null },
};
let nth = 0;
function reading(fields: Partial<Reading>): Reading {
  nth += 1;
  return {
    ...{ id: readingIdSchema.parse(`e${String(nth).padStart(19, '0')}`), jobId, takeId: null, ms: null },
    ...{
      kind: 'resistance',
      open: false,
      valueText: null,
      unit: 'Ω',
      baseValue: null,
      subject: 'neck pickup',
    },
    ...{ between: null, basis: 'measured', meterId: null, details: {}, note: null },
    ...fields,
  };
}
const ohms = (a: string, b: string, value: number | null) =>
  reading({ between: [a, b], baseValue: value, open: value === null });
const kick = (red: string, black: string, row: string, sign: 1 | -1) =>
  reading({
    kind: 'polarity-kick',
    unit: 'kick',
    details: { leads: { red, black }, steel: 'laid on', row, sign },
  });

const twoCoils = [
  ...[ohms('red', 'white', 4080), ohms('green', 'black', 3970), ohms('red', 'green', null)],
  ...[ohms('red', 'shield', null), ohms('green', 'shield', null)],
];
const kicked = [...twoCoils, kick('red', 'white', 'slug', 1), kick('green', 'black', 'screw', -1)];

describe('a traced pickup', () => {
  it('tells coils with rows, positive ends, ohms and the total that was measured', () => {
    const traced = tracedOf(
      sheet,
      [...kicked, reading({ baseValue: 8050 }), reading({ baseValue: 9000, basis: 'assumed' })],
      () => undefined,
    );
    expect(traced).toMatchObject({
      basis: 'measured',
      totalOhms: 8050,
      problem: null,
      conductors: [{ code: 'RD' }, { code: 'WH' }, { code: 'GN' }, { code: 'BK' }],
    });
    expect(traced.coils.map(({ row, ohms }) => [row, ohms])).toEqual([
      ['screw', 3970],
      ['slug', 4080],
    ]);
    expect(traced.coils[1]?.ends).toEqual([
      { names: ['red'], isPositive: true },
      { names: ['white'], isPositive: false },
    ]);
  });

  it('that was taken over from another is assumed, never measured', () => {
    const assumed = [
      { ends: ['red', 'white'] as [string, string], row: 'slug', positive: 'red', fromSubject: 'bridge' },
    ];
    expect(tracedOf({ ...sheet, assumed }, [], () => undefined).basis).toBe('assumed');
  });

  it('that cannot be thought through says why and stands there all the same', () => {
    const traced = tracedOf(sheet, [ohms('red', 'white', -4)], () => undefined);
    expect(traced).toMatchObject({ coils: [], basis: null, complete: false });
    expect(traced.problem).toContain('cannot be negative');
  });
});

describe('what cables of one sort turned out to be', () => {
  const id = (at: number) => traceIdSchema.parse(`w${String(at).padStart(19, '0')}`);
  const pickup = (at: number, readings: readonly Reading[], assumed: typeof sheet.assumed = []) => ({
    ...tracedOf({ ...sheet, assumed }, readings, () => undefined),
    ...{ trace: id(at), job },
  });
  const turned = [...twoCoils, kick('red', 'white', 'screw', 1), kick('green', 'black', 'slug', -1)];
  const three = [pickup(1, turned), pickup(2, kicked), pickup(3, kicked), pickup(4, [])];

  it('comes in groups, the one that was measured most often first; nothing is said where nothing is known', () => {
    const groups = assignmentsOf(three);
    expect(groups.map(({ counts }) => counts.measured)).toEqual([2, 1]);
    expect(groups[0]?.traces.map(({ trace }) => trace)).toEqual([id(2), id(3)]);
    expect(groups[0]?.coils.map(({ row }) => row)).toEqual(['screw', 'slug']);
  });

  it('counts what was only assumed apart, however often it was', () => {
    const coil = { ends: ['red', 'white'], row: 'slug', positive: 'red', fromSubject: 'bridge' };
    const copies = [5, 6, 7].map((at) => ({
      ...pickup(at, []),
      ...tracedOf({ ...sheet, assumed: [{ ...coil, ends: ['red', 'white'] }] }, [], () => undefined),
    }));
    const groups = assignmentsOf([...copies, pickup(1, kicked)]);
    expect(groups.map(({ counts }) => [counts.measured, counts.assumed])).toEqual([
      [1, 0],
      [0, 3],
    ]);
    expect(usesOf([{ name: 'red', code: 'RD' }], [...copies, pickup(1, kicked)])).toEqual([
      { name: 'red', code: 'RD', uses: [{ end: 'positive end of the slug coil', count: 1 }] },
    ]);
  });

  it('says of each conductor which end of which coil it was, and how often', () => {
    expect(usesOf([{ name: 'red', code: 'RD' }], three)[0]?.uses).toEqual([
      { end: 'positive end of the slug coil', count: 2 },
      { end: 'positive end of the screw coil', count: 1 },
    ]);
  });
});
