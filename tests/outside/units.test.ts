import { ucum } from '@atomic-ehr/ucum';
import { describe, expect, it } from 'vitest';
import { kindOf, parseQuickEntry, readingKinds, toBase, unitOf, units } from '@/lib/readings';

const bases = new Set(readingKinds.map(({ baseUnit }) => baseUnit));
const baseOf = (quantity: string) => {
  const base = units.find((unit) => unit.quantity === quantity && bases.has(unit.id));
  if (!base) throw new Error(`${quantity} has no base unit`);
  return base;
};

/** The Unified Code for Units of Measure, through an independent implementation of it (@atomic-ehr/ucum). */
describe('units against UCUM', () => {
  it.each(units.map((unit) => [unit.id, unit] as const))(
    '%s has a code that UCUM knows',
    (_, { ucum: code }) => {
      expect(ucum.validate(code)).toMatchObject({ valid: true });
    },
  );

  it.each(units.map((unit) => [unit.id, unit] as const))(
    '%s converts as UCUM does',
    (id, { ucum: code, quantity }) => {
      for (const text of ['1', '4.08', '-3', '.010', '98.6']) {
        const expected = ucum.convert(Number(text), code, baseOf(quantity).ucum);
        const tolerance = 1e-12 * Math.max(Math.abs(expected), 1e-12);
        expect(Math.abs(toBase(text, id) - expected), `${text} ${id}`).toBeLessThanOrEqual(
          Math.max(tolerance, 1e-13),
        );
      }
    },
  );

  it('is no easy winner: a wrong code converts otherwise', () => {
    expect(ucum.convert(1, 'mV', 'V')).not.toBeCloseTo(toBase('1', 'V'), 6);
  });

  it('counts every kind in a unit of one quantity', () => {
    for (const { baseUnit, units: offered } of readingKinds) {
      for (const id of offered) expect(unitOf(id).quantity).toBe(unitOf(baseUnit).quantity);
    }
  });
});

/**
 * IEC 60062:2016, marking of resistors and capacitors by letter and digits, examples of its tables (from memory).
 * Those that begin with the letter (R47, p33) are left out: on a bench they name a part as well.
 */
describe('values marked as in IEC 60062', () => {
  it.each([
    ['1R0', 1],
    ['1R5', 1.5],
    ['3R32', 3.32],
    ['10R', 10],
    ['33R2', 33.2],
    ['332R', 332],
    ['1K0', 1e3],
    ['1K5', 1.5e3],
    ['3K32', 3.32e3],
    ['10K', 10e3],
    ['33K2', 33.2e3],
    ['332K', 332e3],
    ['1M0', 1e6],
    ['1M5', 1.5e6],
    ['10M', 10e6],
    ['1p5', 1.5e-12],
    ['3p32', 3.32e-12],
    ['10p', 10e-12],
    ['332p', 332e-12],
    ['1n5', 1.5e-9],
    ['33n2', 33.2e-9],
    ['100n', 100e-9],
    ['1µ5', 1.5e-6],
    ['10µ', 10e-6],
  ])('%s', (marking, expected) => {
    const entry = parseQuickEntry(marking, { instrumentType: 'other' });
    if (entry.state !== 'understood') throw new Error(JSON.stringify(entry));
    const { kind, value, unit = kindOf(kind).baseUnit } = entry.reading;
    expect(kind).toBe(/[RKM]/.test(marking) ? 'resistance' : 'capacitance');
    expect(toBase(String(value), unit) / expected).toBeCloseTo(1, 12);
  });
});
