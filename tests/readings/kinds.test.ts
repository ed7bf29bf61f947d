import { describe, expect, it } from 'vitest';
import {
  isOfferedFor,
  kindOf,
  plausibilityCaution,
  plausibleRange,
  readingKinds,
  sayBase,
} from '@/lib/readings';
import { instrumentTypes } from '@/shared/instruments';
import { readingKindIds } from '@/shared/readings';

const range = (kind: Parameters<typeof kindOf>[0], subject: string, instrumentType = 'electric guitar') =>
  plausibleRange(kindOf(kind), { subject, instrumentType })?.of;

describe('kinds of reading', () => {
  it('has every kind of the contract, once', () => {
    expect(readingKinds.map(({ id }) => id).sort()).toEqual([...readingKindIds].sort());
  });

  it.each(readingKinds.map((kind) => [kind.id, kind] as const))('%s is whole', (_, kind) => {
    const known: readonly string[] = instrumentTypes;
    expect(kind.label).toMatch(/^[A-Z]/);
    expect(kind.units.length).toBeGreaterThan(0);
    for (const type of [
      ...(kind.appliesTo ?? []),
      ...kind.plausible.flatMap(({ instruments = [] }) => instruments),
    ]) {
      expect(known).toContain(type);
    }
    for (const { low, high, of } of kind.plausible) {
      expect(low).toBeLessThan(high);
      expect(of).not.toBe('');
    }
  });

  it('offers valve readings for valve amplifiers alone', () => {
    for (const id of ['plate-voltage', 'bias-current'] as const) {
      expect(instrumentTypes.filter((type) => isOfferedFor(kindOf(id), type))).toEqual(['valve amplifier']);
      expect(kindOf(id).cautions).toContain('valve amplifier');
    }
  });

  it('offers a type of the workshop’s own what any other instrument is offered', () => {
    expect(isOfferedFor(kindOf('relief'), 'hurdy-gurdy')).toBe(true);
    expect(isOfferedFor(kindOf('plate-voltage'), 'hurdy-gurdy')).toBe(false);
    expect(isOfferedFor(kindOf('fret-height'), 'violin family')).toBe(false);
    expect(isOfferedFor(kindOf('relief'), 'violin family')).toBe(true);
  });
});

describe('plausible ranges (common practice, no source)', () => {
  it('are chosen by what is measured and by the instrument', () => {
    expect(range('resistance', 'neck pickup')).toBe('a pickup coil');
    expect(range('resistance', 'volume pot')).toBe('a pot');
    expect(range('resistance', 'bridge ground')).toContain('a joint');
    expect(range('resistance', '')).toBe('a resistance');
    expect(range('voltage', 'battery')).toContain('batteries');
    expect(range('voltage', 'heater', 'valve amplifier')).toBe('a valve amplifier');
    expect(range('string-height', '', 'violin family')).toBe('a bowed instrument');
    expect(range('polarity-kick', '')).toBeUndefined();
  });

  it('hold the ordinary: 8.08 kΩ at the neck, 8.8 kΩ at the bridge, its coils of 4.08 and 3.971 kΩ', () => {
    for (const baseValue of [8080, 8800, 4080, 3971]) {
      const reading = { kind: 'resistance', baseValue, subject: 'bridge pickup' } as const;
      expect(plausibilityCaution(reading, { instrumentType: 'electric guitar' })).toBeNull();
    }
  });

  it('caution names the value and the range', () => {
    const reading = { kind: 'resistance', baseValue: 8, subject: 'neck pickup' } as const;
    const caution = plausibilityCaution(reading, { instrumentType: 'electric guitar' });
    expect(caution).toBe(
      '8 Ω is outside 500 Ω to 40 kΩ, which is usual for a pickup coil (common practice). Look at the meter once more.',
    );
  });

  it('have nothing to say of an open circuit', () => {
    const reading = { kind: 'resistance', baseValue: null, subject: 'neck pickup' } as const;
    expect(plausibilityCaution(reading, { instrumentType: 'electric guitar' })).toBeNull();
  });
});

describe('values that were worked out, in words', () => {
  it.each([
    [8080, 'resistance', '8.08 kΩ'],
    [999, 'resistance', '999 Ω'],
    [0.2, 'resistance', '0.2 Ω'],
    [2.2e6, 'resistance', '2.2 MΩ'],
    [0, 'resistance', '0 Ω'],
    [1e-12, 'capacitance', '1 pF'],
    [2.2e-8, 'capacitance', '22 nF'],
    [-0.003, 'voltage', '-3 mV'],
    [0.035, 'current', '35 mA'],
    [0.1 + 0.2, 'relief', '0.3 mm'],
    [1.5, 'string-height', '1.5 mm'],
    [60_000, 'mass', '60000 g'],
  ] as const)('%d of %s is %s', (value, kind, expected) => {
    expect(sayBase(value, kind)).toBe(expected);
  });
});
