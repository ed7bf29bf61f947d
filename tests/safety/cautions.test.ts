import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingKinds } from '@/lib/readings';
import { type CautionKey, cautionKeys, cautions, cautionsFor, type JobFacts } from '@/lib/safety';

const nothing: JobFacts = { instrumentType: 'electric guitar', readings: [], words: [] };
const forWords = (...words: string[]) => cautionsFor({ ...nothing, words });
const forReading = (kind: string, baseValue: number | null) =>
  cautionsFor({ ...nothing, readings: [{ kind, baseValue }] });

describe('caution texts', () => {
  it.each(cautionKeys)('%s is short and defers to local codes and licensed practice', (key) => {
    expect(cautions[key].length).toBeLessThanOrEqual(200);
    expect(cautions[key]).toMatch(/local (codes|rules|workplace rules).* come first\.$/i);
  });

  it('leaves what can kill to qualified people', () => {
    for (const key of ['valve amplifier', 'mains', 'high voltage'] as const) {
      expect(cautions[key]).toMatch(/qualified people/i);
      expect(cautions[key]).toContain('licensed practice');
    }
  });

  it('stands by its key wherever a kind of reading names one', () => {
    const named = readingKinds.flatMap((kind) => kind.cautions ?? []);
    expect(named.length).toBeGreaterThan(0);
    for (const key of named) expect(cautions[key]).toBeTypeOf('string');
  });
});

describe('what a job involves', () => {
  it.each<[string, CautionKey[]]>([
    ['valve amplifier', ['valve amplifier', 'mains']],
    ['tube amp head', ['valve amplifier', 'mains']],
    ['solid-state amplifier', ['mains']],
    ['electric guitar', []],
    ['violin family', []],
  ])('%s', (instrumentType, expected) => {
    expect(cautionsFor({ ...nothing, instrumentType })).toEqual(expected);
  });

  it.each<[string, number | null, CautionKey[]]>([
    ['voltage', 9.1, []],
    ['voltage', 50, []],
    ['voltage', 50.1, ['high voltage']],
    ['voltage', -230, ['high voltage']],
    ['voltage', null, ['high voltage']],
    ['plate-voltage', 410, ['valve amplifier', 'mains', 'high voltage']],
    ['plate-voltage', 0, ['valve amplifier', 'mains', 'high voltage']],
    ['bias-current', 0.035, ['valve amplifier', 'mains', 'high voltage']],
    ['resistance', 4080, ['ohms without power']],
    ['resistance', null, ['ohms without power']],
    ['string-tension', 71, ['string tension']],
    ['relief', 0.25, []],
  ])('a reading of %s, %s', (kind, baseValue, expected) => {
    expect(forReading(kind, baseValue)).toEqual(expected);
  });

  it.each<[string, CautionKey[]]>([
    ['Rewire the neck pickup', ['soldering']],
    ['re-soldered the ground joint', ['soldering']],
    ['new output jack', ['soldering']],
    ['replace both pots', ['soldering']],
    ['restring and tune up', ['string tension']],
    ['strings off, cleaned the fingerboard', ['string tension']],
    ['full set-up', ['string tension']],
    ['fret dress', ['dust']],
    ['levelled and crowned', ['dust']],
    ['sanding the saddle', ['dust']],
    ['lacquer touch-up', ['solvents']],
    ['wicked superglue into the crack', ['solvents']],
    ['preamp runs on a lithium cell', ['lithium cells']],
    ['Li-ion pack swollen', ['lithium cells']],
    ['hum only when plugged in to the wall socket', ['mains']],
    ['biased the output valves', ['valve amplifier']],
    ['cleaned the case', []],
    ['finished on Friday, collected', []],
    ['neck joint looks fine', []],
  ])('%s', (words, expected) => {
    expect(forWords(words)).toEqual(expected);
  });

  it('names each once, in the order of the table, and more facts never take one away', () => {
    const word = fc.constantFrom('solder', 'restring', 'lacquer', 'lithium', 'mains', 'refret', 'hello');
    const reading = fc.record({
      kind: fc.constantFrom('voltage', 'resistance', 'plate-voltage', 'relief'),
      baseValue: fc.option(fc.double({ noNaN: true })),
    });
    fc.assert(
      fc.property(
        fc.array(word),
        fc.array(reading),
        word,
        reading,
        (words, readings, oneWord, oneReading) => {
          const few = cautionsFor({ ...nothing, words, readings });
          const more = cautionsFor({
            ...nothing,
            words: [...words, oneWord],
            readings: [...readings, oneReading],
          });
          expect(more).toEqual(cautionKeys.filter((key) => more.includes(key)));
          expect(more).toEqual(expect.arrayContaining(few));
        },
      ),
    );
  });
});
