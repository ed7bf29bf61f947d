import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert, DigitsError, fromBase, stepOf, toBase, unitOf, units } from '@/lib/readings';
import { digitsSchema, unitIds } from '@/shared/readings';
import { decimalsShown, digits } from './digits';

const plenty = 45;
const sameQuantity = units.flatMap((from) =>
  units.filter(({ quantity }) => quantity === from.quantity).map((to) => [from.id, to.id] as const),
);

describe('units', () => {
  it('has every unit of the contract, once', () => {
    expect(units.map(({ id }) => id).sort()).toEqual([...unitIds].sort());
  });

  it.each([
    ['4.08', 'kΩ', 4080],
    ['.010', 'in', 0.254],
    ['10', 'thou', 0.254],
    ['6', '64ths', 2.38125],
    ['0.022', 'µF', 2.2e-8],
    ['22', 'nF', 2.2e-8],
    ['-3', 'mV', -0.003],
    ['−3', 'mV', -0.003],
    ['1,8', 'mm', 1.8],
    ['0.1', 'V', 0.1],
    ['68', '°F', 20],
    ['-40', '°F', -40],
    ['1', 'oz', 28.349523125],
    ['1', 'lbf', 4.4482216152605],
  ] as const)('%s %s is %d in the base unit', (text, unit, expected) => {
    expect(toBase(text, unit)).toBe(expected);
  });

  it('there and back gives the very digits that were shown', () => {
    fc.assert(
      fc.property(digits, fc.constantFrom(...sameQuantity), (text, [from, to]) => {
        const decimals = decimalsShown(text);
        const back = convert(convert(text, from, to, plenty), to, from, decimals);
        expect(back).toBe(convert(text, from, from, decimals));
        expect(Number(back)).toBe(Number(text) + 0);
      }),
    );
  });

  it('the number of the base unit is the nearest there is', () => {
    fc.assert(
      fc.property(digits, fc.constantFrom(...units), (text, { id, quantity }) => {
        const base = units.find(
          (unit) => unit.quantity === quantity && stepOf(unit.id) === 1 && unit.offset.top === 0n,
        );
        if (!base) throw new Error(`${quantity} has no base`);
        expect(toBase(text, id)).toBe(Number(convert(text, id, base.id, plenty)));
      }),
    );
  });

  it('tells base values in a unit and takes them back', () => {
    fc.assert(
      fc.property(digits, fc.constantFrom(...units), (text, { id }) => {
        expect(fromBase(toBase(text, id), id)).toBeCloseTo(Number(text), 6);
      }),
    );
  });

  it.each(['', ' ', 'abc', '1.2.3', '1e5', '--3', '.', '-', '4 k', '٣'])('“%s” is no number', (text) => {
    expect(() => toBase(text, 'Ω')).toThrow(DigitsError);
    expect(digitsSchema.safeParse(text).success).toBe(false);
  });

  it('takes every text that the contract takes', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[-+−]?(\d{1,9}([.,]\d{0,9})?|[.,]\d{1,9})$/), (text) => {
        fc.pre(digitsSchema.safeParse(text).success);
        expect(Number.isFinite(toBase(text, 'kΩ'))).toBe(true);
      }),
    );
  });

  it('tells no resistance in millimetres', () => {
    expect(() => convert('1', 'Ω', 'mm', 2)).toThrow(/cannot be told/);
    expect(unitOf('64ths').ucum).toBe('[in_i]/64');
  });
});
