import { DomainError } from '@/shared/problem';
import type { UnitId } from '@/shared/readings';
import {
  inverse,
  negated,
  plus,
  type Rational,
  rational,
  readDigits,
  roundedText,
  times,
  toNumber,
} from './rational';

export type Quantity =
  | 'resistance'
  | 'voltage'
  | 'current'
  | 'capacitance'
  | 'inductance'
  | 'length'
  | 'interval'
  | 'frequency'
  | 'temperature'
  | 'humidity'
  | 'mass'
  | 'force'
  | 'direction';

export interface Unit {
  id: UnitId;
  quantity: Quantity;
  /** base = value × factor + offset, exactly. */
  factor: Rational;
  offset: Rational;
  /** Code of the Unified Code for Units of Measure (UCUM). What it does not know is one, annotated: {cents}. */
  ucum: string;
  /** How people type it, in small letters. */
  words: readonly string[];
}

const zero = rational(0n);
const unit = (
  id: UnitId,
  quantity: Quantity,
  factor: Rational,
  ucum: string,
  words: readonly string[],
  offset = zero,
): Unit => ({
  id,
  quantity,
  factor,
  offset,
  ucum,
  words,
});
const power = (exponent: number) =>
  exponent < 0 ? rational(1n, 10n ** BigInt(-exponent)) : rational(10n ** BigInt(exponent));
/** The international inch, exactly 25.4 mm. */
const inchMm = rational(254n, 10n);

/** Bases: Ω, V, A, F, H, mm, cent, Hz, °C, %RH, g, N. */
export const units: readonly Unit[] = [
  unit('Ω', 'resistance', power(0), 'Ohm', ['Ω', 'ω', 'ohm', 'ohms', 'r']),
  unit('kΩ', 'resistance', power(3), 'kOhm', [
    'kΩ',
    'kω',
    'k',
    'kohm',
    'kohms',
    'kilohm',
    'kilohms',
    'k ohm',
    'k ohms',
  ]),
  unit('MΩ', 'resistance', power(6), 'MOhm', ['MΩ', 'meg', 'm', 'megohm', 'megohms', 'meg ohm', 'meg ohms']),
  unit('mV', 'voltage', power(-3), 'mV', ['mv', 'millivolt', 'millivolts']),
  unit('V', 'voltage', power(0), 'V', ['v', 'volt', 'volts', 'vac', 'vdc', 'v ac', 'v dc']),
  unit('µA', 'current', power(-6), 'uA', ['µa', 'ua', 'microamp', 'microamps']),
  unit('mA', 'current', power(-3), 'mA', ['ma', 'milliamp', 'milliamps']),
  unit('A', 'current', power(0), 'A', ['a', 'amp', 'amps', 'ampere']),
  unit('pF', 'capacitance', power(-12), 'pF', ['pf', 'p', 'picofarad', 'picofarads']),
  unit('nF', 'capacitance', power(-9), 'nF', ['nf', 'n', 'nanofarad', 'nanofarads']),
  unit('µF', 'capacitance', power(-6), 'uF', ['µf', 'uf', 'µ', 'u', 'microfarad', 'microfarads', 'mfd']),
  unit('F', 'capacitance', power(0), 'F', ['farad', 'farads']),
  unit('mH', 'inductance', power(-3), 'mH', ['mh', 'millihenry', 'millihenries']),
  unit('H', 'inductance', power(0), 'H', ['h', 'henry', 'henries']),
  unit('mm', 'length', power(0), 'mm', ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters']),
  unit('cm', 'length', power(1), 'cm', ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters']),
  unit('m', 'length', power(3), 'm', ['metre', 'metres', 'meter', 'meters']),
  unit('in', 'length', inchMm, '[in_i]', ['in', '"', 'inch', 'inches']),
  unit('thou', 'length', times(inchMm, power(-3)), '[mil_i]', ['thou', 'mil', 'mils']),
  unit('64ths', 'length', times(inchMm, rational(1n, 64n)), '[in_i]/64', [
    '/64',
    '64ths',
    '64th',
    'sixty-fourths',
    '/64"',
    '/64 in',
  ]),
  unit('cents', 'interval', power(0), '{cents}', ['cents', 'cent', 'ct', 'c', '¢']),
  unit('Hz', 'frequency', power(0), 'Hz', ['hz', 'hertz']),
  unit('kHz', 'frequency', power(3), 'kHz', ['khz', 'kilohertz']),
  unit('°C', 'temperature', power(0), 'Cel', ['°c', 'c', 'celsius', 'degc', 'deg c']),
  unit(
    '°F',
    'temperature',
    rational(5n, 9n),
    '[degF]',
    ['°f', 'f', 'fahrenheit', 'degf', 'deg f'],
    rational(-160n, 9n),
  ),
  unit('%RH', 'humidity', power(0), '%', ['%rh', '%', 'rh', 'percent', '% rh']),
  unit('g', 'mass', power(0), 'g', ['g', 'gram', 'grams', 'gramme', 'grammes']),
  unit('kg', 'mass', power(3), 'kg', ['kg', 'kilo', 'kilos', 'kilogram', 'kilograms']),
  // The international avoirdupois ounce and pound-force, exact by definition.
  unit('oz', 'mass', rational(28349523125n, 10n ** 9n), '[oz_av]', ['oz', 'ounce', 'ounces']),
  unit('lb', 'mass', rational(45359237n, 10n ** 5n), '[lb_av]', ['lb', 'lbs', 'pound', 'pounds']),
  unit('N', 'force', power(0), 'N', ['n', 'newton', 'newtons']),
  unit('lbf', 'force', rational(44482216152605n, 10n ** 13n), '[lbf_av]', [
    'lbf',
    'lb',
    'lbs',
    'pound',
    'pounds',
  ]),
  unit('kick', 'direction', power(0), '{kick}', []),
];

const byId = new Map(units.map((entry) => [entry.id, entry]));

export function unitOf(id: UnitId): Unit {
  const found = byId.get(id);
  if (!found) throw new Error(`No unit is called ${id}.`);
  return found;
}

export class DigitsError extends DomainError {
  constructor(text: string) {
    super(
      'invalid',
      `“${text}” is no number.`,
      'Write the digits as the meter shows them, such as 4.08 or .010.',
      { value: text },
    );
  }
}

/**
 * The value in the base unit of its quantity.
 * @param text digits as they were read
 * @throws DigitsError
 */
export function toBase(text: string, id: UnitId): number {
  return toNumber(exactBase(text, id));
}

/** A value in the base unit, told in another of its quantity: for ranges and uncertainties, not for what was read. */
export function fromBase(value: number, id: UnitId): number {
  const { factor, offset } = unitOf(id);
  return (value - toNumber(offset)) / toNumber(factor);
}

/** How much one step of the unit is in the base unit. */
export function stepOf(id: UnitId): number {
  return toNumber(unitOf(id).factor);
}

/**
 * The same value in another unit of the same quantity, with so many digits after the point. Going there and
 * back with enough digits gives the digits that were shown.
 * @throws DigitsError
 */
export function convert(text: string, from: UnitId, to: UnitId, decimals: number): string {
  const target = unitOf(to);
  if (target.quantity !== unitOf(from).quantity) {
    throw new DomainError(
      'invalid',
      `${from} cannot be told in ${to}.`,
      'Choose a unit of the same quantity.',
      { from, to },
    );
  }
  const base = exactBase(text, from);
  return roundedText(times(plus(base, negated(target.offset)), inverse(target.factor)), decimals);
}

function exactBase(text: string, id: UnitId): Rational {
  const digits = readDigits(text);
  if (!digits) throw new DigitsError(text);
  const { factor, offset } = unitOf(id);
  return plus(times(digits, factor), offset);
}
