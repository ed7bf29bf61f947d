import { describe, expect, it } from 'vitest';
import { newId } from '@/db/ids';
import { comparedAt20, dissipationOf, sayDissipation, sayUncertainty, ucumValue } from '@/lib/readings';
import { type JobId, jobIdSchema, readingIdSchema } from '@/shared/ids';
import type { MeterRange, Reading } from '@/shared/readings';

const jobId: JobId = newId(jobIdSchema);

function reading(part: Partial<Reading>): Reading {
  return {
    id: newId(readingIdSchema),
    jobId,
    takeId: null,
    ms: null,
    kind: 'resistance',
    open: false,
    valueText: '4.08',
    unit: 'kΩ',
    baseValue: 4080,
    subject: 'neck pickup',
    between: null,
    basis: 'measured',
    meterId: null,
    details: {},
    note: null,
    ...part,
  };
}

describe('uncertainty in words', () => {
  const ranges: MeterRange[] = [{ unit: 'kΩ', fullScale: 20, resolution: 0.01, percent: 0.8, counts: 2 }];

  it('has no more decimals than the reading', () => {
    // ± (0.0326 + 0.02) kΩ and half a digit, over √3, in quadrature, twice: 0.0610 kΩ.
    expect(sayUncertainty(reading({}), ranges)).toBe('4.08 kΩ ± 0.07 kΩ (k = 2)');
  });

  it('says nothing of an open circuit, a kick, a value off the scale or of another quantity', () => {
    const open = reading({ open: true, valueText: null, baseValue: null });
    const kick = reading({ kind: 'polarity-kick', unit: 'kick', valueText: null, baseValue: 1 });
    const beyond = reading({ valueText: '21.00', baseValue: 21_000 });
    const volts = reading({ kind: 'voltage', unit: 'V', valueText: '9.2', baseValue: 9.2 });
    for (const other of [open, kick, beyond, volts]) expect(sayUncertainty(other, ranges)).toBeNull();
  });
});

describe('a coil at 20 °C', () => {
  it('is compared where a temperature was noted', () => {
    const warm = comparedAt20(reading({ baseValue: 4160.2, details: { celsius: 25 } }), 50);
    expect(warm?.ohms).toBeCloseTo(4080, 0);
    expect(warm?.uncertaintyOhms).toBeCloseTo(50 / 1.01965, 6);
  });

  it('is not, without one or when it is open', () => {
    expect(comparedAt20(reading({}))).toBeNull();
    expect(comparedAt20(reading({ baseValue: null, open: true, details: { celsius: 25 } }))).toBeNull();
  });
});

describe('the dissipation of a valve', () => {
  const plate = (subject: string, volts: number) =>
    reading({ kind: 'plate-voltage', unit: 'V', valueText: String(volts), baseValue: volts, subject });
  const bias = reading({
    kind: 'bias-current',
    unit: 'mA',
    valueText: '35',
    baseValue: 0.035,
    subject: 'V4',
  });

  it('follows from the newest plate voltage of the same valve, behind the caution', () => {
    const found = dissipationOf(bias, [plate('v4', 300), plate('V5', 500), plate('V4', 410), bias]);
    expect(found?.watts).toBeCloseTo(14.35, 9);
    expect(found).toMatchObject({ basis: 'implied', caution: 'valve amplifier' });
    expect(found && sayDissipation(found)).toMatch(/^14\.[34] W at the plate, implied$/);
  });

  it('follows from nothing else', () => {
    expect(dissipationOf(bias, [plate('V5', 500), bias])).toBeNull();
    expect(dissipationOf(plate('V4', 410), [bias, plate('V4', 410)])).toBeNull();
  });
});

describe('values for other programs', () => {
  it('keep the digits that were shown, with a UCUM code', () => {
    expect(ucumValue(reading({ valueText: '7.90' }))).toEqual({ value: '7.90', ucumCode: 'kOhm' });
    expect(ucumValue(reading({ kind: 'humidity', unit: '%RH', valueText: '45' }))?.ucumCode).toBe('%');
  });

  it('are none for an open circuit and a kick', () => {
    expect(ucumValue(reading({ open: true, valueText: null }))).toBeNull();
    expect(ucumValue(reading({ kind: 'polarity-kick', unit: 'kick', valueText: null }))).toBeNull();
  });
});
