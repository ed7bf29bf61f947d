import { describe, expect, it } from 'vitest';
import { parseQuickEntry, sayNewReading } from '@/lib/readings';

function read(line: string, instrumentType = 'electric guitar'): string {
  const entry = parseQuickEntry(line, { instrumentType });
  if (entry.state === 'understood') return sayNewReading(entry.reading);
  return entry.state === 'question' ? `? ${entry.choices.map(({ label }) => label).join(' | ')}` : '…';
}

describe('units that can mean several things', () => {
  it.each([
    ['room 21 C', 'room, temperature: 21 °C'],
    ['high E +2 c', 'intonation, high E string: +2 cents'],
    ['intonation high e +2c', 'intonation, high E string: +2 cents'],
    ['72F', 'temperature: 72 °F'],
    ['80n', 'capacitance: 80 nF'],
    ['tension 80 N', 'string tension: 80 N'],
    ['tension 16 lb', 'string tension: 16 lbf'],
    ['weight 8 lb', 'mass: 8 lb'],
    ['pot 1m', 'pot: 1 MΩ'],
    ['scale 0.65 m', 'scale, length: 0.65 m'],
    ['heater 6.3vac', 'heater, voltage: 6.3 V'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });
});

describe('numbers without a unit', () => {
  it.each([
    ['A 440', 'A, pitch: 440 Hz'],
    ['A4 441', 'A4, pitch: 441 Hz'],
    ['low E 82.4', 'low E, pitch: 82.4 Hz'],
    // Not in tune with the note: a height, then, of which the unit is asked.
    [
      'low E 12th 1.8',
      '? string height, low E string, fret 12: 1.8 mm | string height, low E string, fret 12: 1.8/64 in (0.71 mm)',
    ],
    [
      'tone cap 22',
      '? tone cap, capacitance: 22 nF | tone cap, capacitance: 22 pF | tone cap, capacitance: 22 µF',
    ],
    ['battery 9.1', '? battery, voltage: 9.1 V | battery, voltage: 9.1 mV'],
    ['low E 12 1.8mm', 'string height, low E string, fret 12: 1.8 mm'],
    ['8 800 ohm', '? 8: 800 Ω | 8800 Ω'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });
});

describe('lines that look like something else', () => {
  it.each([
    ['steel string 12th 1.8mm', 'steel, string height, fret 12: 1.8 mm'],
    ['neck 2.4H 1kHz', 'neck pickup, inductance, at 1000 Hz: 2.4 H'],
    ['relief 4k', '…'],
    ['neck red 4.08k', '? neck pickup red: 4.08 kΩ'],
    ['plate 3 V', 'plate, voltage: 3 V'],
    ['nut ground 0.3 ohm', 'nut ground: 0.3 Ω'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected);
  });
});
