import { describe, expect, it } from 'vitest';
import { colours, letterCode, readConductor } from '@/lib/wiring';

/** IEC 60757:2021, table 1: letter codes in the order of the table. */
const table = [
  ['black', 'BK'],
  ['brown', 'BN'],
  ['red', 'RD'],
  ['orange', 'OG'],
  ['yellow', 'YE'],
  ['green', 'GN'],
  ['blue', 'BU'],
  ['violet', 'VT'],
  ['grey', 'GY'],
  ['white', 'WH'],
  ['pink', 'PK'],
  ['gold', 'GD'],
  ['turquoise', 'TQ'],
  ['silver', 'SR'],
] as const;

describe('colour letters against IEC 60757', () => {
  it('has the whole of table 1, in its order', () => {
    expect(colours.map(({ name, code }) => [name, code])).toEqual(table);
  });

  it.each(table)('%s is %s, both ways', (name, code) => {
    expect(letterCode(name)).toBe(code);
    expect(readConductor(code).name).toBe(name);
  });

  it('writes a red and blue item as RDBU (clause 5.1, the example)', () => {
    expect(letterCode('blue/red')).toBe('RDBU');
  });

  it('writes green-and-yellow as GNYE, the one code the standard gives out of table order', () => {
    expect(letterCode('yellow/green')).toBe('GNYE');
    expect(readConductor('GNYE').colours).toEqual(['green', 'yellow']);
  });
});
