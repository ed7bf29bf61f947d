import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOfferedFor, parseQuickEntry, type QuickEntry, readingKinds, sayNewReading } from '@/lib/readings';
import { instrumentTypes } from '@/shared/instruments';
import { type NewReading, newReadingSchema, unitIds } from '@/shared/readings';

const conductors = ['red', 'white', 'green', 'black', 'white/red', 'blue'];
const context = fc.record({
  instrumentType: fc.constantFrom(...instrumentTypes, 'hurdy-gurdy'),
  conductors: fc.constantFrom([], conductors),
});
const words = fc.constantFrom(
  ...[
    'neck',
    'bridge',
    'red',
    'white',
    'red-white',
    'red/white',
    'green',
    'slug',
    'touch',
    'lift',
    'low',
    'E',
    'e',
  ],
  ...[
    '12th',
    'fret',
    '3',
    'string',
    'bass side',
    '6/64',
    '1/0',
    '.010',
    '8k8',
    '4.08',
    '-3',
    '+',
    '-',
    '1,000',
    'at',
  ],
  ...[
    'k',
    'ohm',
    'mm',
    '"',
    'V',
    'cents',
    'C',
    'F',
    'm',
    'Hz',
    'open',
    'OL',
    'relief',
    'plate',
    'bias',
    '@',
    '1 kHz',
  ],
  ...unitIds,
);

/** The readings that an entry holds, ready to be kept. */
function readingsIn(entry: QuickEntry): NewReading[] {
  if (entry.state === 'understood') return [entry.reading];
  return entry.state === 'question' ? entry.choices.map(({ reading }) => reading) : [];
}

describe('quick entry, whatever is typed', () => {
  const check = (line: string, typedIn: { instrumentType: string; conductors: string[] }) => {
    const entry = parseQuickEntry(line, typedIn);
    if (entry.state === 'unfinished') expect(entry.missing).not.toBe('');
    if (entry.state === 'question') expect(entry.choices.length).toBeGreaterThan(0);
    for (const reading of readingsIn(entry)) {
      const kept = newReadingSchema.safeParse(reading);
      expect(kept.error?.issues ?? [], `${line} → ${JSON.stringify(reading)}`).toEqual([]);
    }
  };

  it('never throws, and never offers a reading that cannot be kept', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300, size: 'max' }), context, check), {
      numRuns: 500,
    });
  });

  it.each([
    '1 ',
    '1,',
    'red-',
    'red/',
    'a',
    ' -',
    '6/64 ',
    'low E ',
    '1k ',
    '12th ',
    'pickup ',
    'red lead on ',
  ])('nor when “%s” fills the line', (part) => {
    const line = part.repeat(300).slice(0, 300);
    check(line, { instrumentType: 'electric guitar', conductors });
    check(`${line.slice(0, 290)}7.9k`, { instrumentType: 'valve amplifier', conductors: [] });
  });

  it('nor when the words are ours', () => {
    const line = fc.array(words, { minLength: 1, maxLength: 9 }).map((parts) => parts.join(' '));
    fc.assert(fc.property(line, context, check), { numRuns: 2000 });
  });
});

describe('a reading in words, read again', () => {
  const shown = fc.stringMatching(/^(0|[1-9]\d{0,2})(\.\d{1,3})?$/);
  const pair = fc.constantFrom<[string, string][]>(
    ['red', 'white'],
    ['green', 'shield'],
    ['black', 'white/red'],
  );
  const strings = { string: 'low E', fret: 12 };
  const measured = fc
    .record({
      kind: fc.constantFrom(...readingKinds.filter(({ id }) => id !== 'polarity-kick')),
      unitAt: fc.nat(),
      value: shown,
      between: pair,
      subject: fc.constantFrom('neck pickup', 'bridge pickup'),
      open: fc.boolean(),
      instrumentType: fc.constantFrom(...instrumentTypes),
    })
    .filter(({ kind, instrumentType }) => isOfferedFor(kind, instrumentType))
    .map(({ kind, unitAt, value, between, subject, open, instrumentType }) => {
      const unit = kind.units[unitAt % kind.units.length] ?? kind.baseUnit;
      const reading: NewReading =
        kind.id === 'resistance'
          ? { kind: kind.id, unit, subject, between, ...(open ? { open } : { value }) }
          : { kind: kind.id, unit, value, ...(kind.needs?.includes('string') ? { details: strings } : {}) };
      return { reading, instrumentType };
    });

  it('is the same reading, or is among those asked about', () => {
    fc.assert(
      fc.property(measured, ({ reading, instrumentType }) => {
        const line = sayNewReading(reading);
        const found = readingsIn(parseQuickEntry(line, { instrumentType, conductors }));
        expect(found.map(sayNewReading), line).toContain(line);
        const same = found.find((other) => sayNewReading(other) === line);
        expect(same).toMatchObject({ kind: reading.kind, between: reading.between ?? null });
        if (!reading.open) expect(same).toMatchObject({ value: reading.value, unit: reading.unit });
      }),
      { numRuns: 2000 },
    );
  });

  it('also a kick of the needle', () => {
    const kick = fc
      .record({
        leads: fc.constantFrom({ red: 'red', black: 'white' }, { red: 'white/red', black: 'green' }),
        steel: fc.constantFrom('laid on' as const, 'taken off' as const),
        row: fc.constantFrom('slug', 'screw', 'upper', 'lower'),
        sign: fc.constantFrom(1 as const, -1 as const),
        size: fc.constantFrom('large' as const, 'small' as const),
      })
      .map((details): NewReading => ({ kind: 'polarity-kick', subject: 'neck pickup', details }));
    fc.assert(
      fc.property(kick, (reading) => {
        const entry = parseQuickEntry(sayNewReading(reading), {
          instrumentType: 'electric guitar',
          conductors,
        });
        expect(entry).toMatchObject({ state: 'understood', reading });
      }),
    );
  });
});

describe('quick entry and cautions', () => {
  it('never asks for a plate voltage', () => {
    const line = fc.array(words, { maxLength: 5 }).map((parts) => parts.join(' '));
    fc.assert(
      fc.property(line, (typed) => {
        const entry = parseQuickEntry(typed, { instrumentType: 'valve amplifier' });
        if (entry.state === 'unfinished') expect(entry.missing).not.toMatch(/plate|anode|B\+/i);
      }),
    );
  });
});
