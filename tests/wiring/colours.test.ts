import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  colours,
  isConductorColour,
  letterCode,
  readConductor,
  readMetal,
  UnknownColour,
} from '@/lib/wiring';

describe('conductor colours', () => {
  it.each([
    ['red', 'red', 'RD'],
    ['RD', 'red', 'RD'],
    ['  Gray ', 'grey', 'GY'],
    ['purple', 'violet', 'VT'],
    ['white/red', 'white/red', 'RDWH'],
    ['white with red stripe', 'white/red', 'RDWH'],
    ['WHRD', 'white/red', 'RDWH'],
    ['green-yellow', 'green/yellow', 'GNYE'],
    ['black 2', 'black 2', 'BK2'],
    ['BK2', 'black 2', 'BK2'],
  ])('reads %s', (text, name, code) => {
    expect(readConductor(text)).toMatchObject({ name, code });
  });

  it.each(['', 'mauve', 'red/white/blue', 'red/red', 'XXYY', 'constructor', '7'])('refuses "%s"', (text) => {
    expect(() => readConductor(text)).toThrow(UnknownColour);
    expect(isConductorColour(text)).toBe(false);
  });

  it('knows the metal parts by their usual names', () => {
    expect(['bare', 'Braid', 'cover', 'red', 'toString'].map(readMetal)).toEqual([
      'shield',
      'shield',
      'frame',
      null,
      null,
    ]);
  });

  it('reads its own names and codes back', () => {
    const name = fc.constantFrom(...colours.map((colour) => colour.name));
    fc.assert(
      fc.property(name, name, fc.constantFrom('', ' 2', ' 11'), (first, second, number) => {
        const text = (first === second ? first : `${first}/${second}`) + number;
        const conductor = readConductor(text);
        expect(conductor.name).toBe(text);
        expect(letterCode(conductor.code)).toBe(conductor.code);
      }),
    );
  });
});
