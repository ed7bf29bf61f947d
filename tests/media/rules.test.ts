import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { probe } from '@/lib/media/engine/probe';
import { fingerprintBlocks } from '@/lib/media/fingerprint-layout';
import { isVariable } from '@/lib/media/frame-times';
import { coarser, PeakCollector } from '@/lib/media/peaks';
import { clockwiseFrom } from '@/lib/media/rotation';
import { findSilences } from '@/lib/media/silences';
import { placeRun } from '@/lib/media/sound-timeline';
import { fitHeight, stillTimes } from '@/lib/media/stills';
import { hasDevice, hasPlace, readTime, recordedAtOf } from '@/lib/media/tags';
import { findViewChanges } from '@/lib/media/view-changes';
import { plain, recording, removeMade } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };

describe('recorded-at', () => {
  test.each([
    ['2026-03-17T10:00:00+0200', '2026-03-17T08:00:00Z', 'zoned', 120],
    ['2026-03-17T10:00:00-03:30', '2026-03-17T13:30:00Z', 'zoned', -210],
    ['2026-03-17T08:00:00.250000Z', '2026-03-17T08:00:00.250Z', 'utc', null],
    ['2026:03:17 08:00:00', '2026-03-17T08:00:00Z', 'utc', null],
  ])('%s', (text, instant, source, offsetMinutes) => {
    expect(readTime(text)).toEqual({ epochMs: Date.parse(instant), source, offsetMinutes });
  });

  test('a time with its zone goes before UTC, UTC before the file; an unset clock counts as none', () => {
    const now = Date.parse('2026-06-01T00:00:00Z');
    const zoned = { 'com.example.quicktime.creationdate': '2026-03-17T10:00:00+0200' };
    const utc = { creation_time: '2026-03-17T08:00:00.000000Z' };
    expect(recordedAtOf({ ...utc, ...zoned }, 5, now).source).toBe('zoned');
    expect(recordedAtOf(utc, 5, now).source).toBe('utc');
    for (const wrong of ['1904-01-01T00:00:00Z', '1970-01-01T00:00:00Z', '2107-01-01T00:00:00Z', 'Tuesday']) {
      expect(recordedAtOf({ creation_time: wrong }, 5, now)).toEqual({
        epochMs: 5,
        source: 'file',
        offsetMinutes: null,
      });
    }
  });

  test('read from a recording, with place and device tags', async () => {
    const tagged = recording(
      'tagged.mov',
      ...[
        '-i',
        plain(),
        '-c',
        'copy',
        '-movflags',
        'use_metadata_tags',
        '-metadata',
        'creation_time=2026-03-17T09:00:00Z',
      ],
      ...['-metadata', 'location=+52.5000+013.4000/', '-metadata', 'model=Bench camera'],
    );
    const found = await probe(tagged, watch);
    expect(found.recordedAt).toEqual({
      epochMs: Date.parse('2026-03-17T09:00:00Z'),
      source: 'utc',
      offsetMinutes: null,
    });
    expect([found.hasPlaceTags, found.hasDeviceTags]).toEqual([true, true]);
    const bare = await probe(plain(), watch);
    expect([bare.recordedAt?.source, bare.hasPlaceTags, bare.hasDeviceTags]).toEqual(['file', false, false]);
  });

  test('place and device tags by name', () => {
    for (const key of [
      'location',
      'location-eng',
      'com.example.quicktime.location.iso6709',
      'gpslatitude',
      '©xyz',
      'loci',
    ])
      expect([key, hasPlace({ [key]: 'x' }, [])]).toEqual([key, true]);
    expect(hasPlace({}, ['avc1', 'gpmd'])).toBe(true);
    expect(hasPlace({ title: 'neck pickup', encoder: 'x' }, ['avc1'])).toBe(false);
    for (const key of ['make', 'model', 'com.example.quicktime.model', 'com.example.version'])
      expect([key, hasDevice({ [key]: 'x' })]).toEqual([key, true]);
    expect(hasDevice({ title: 'model', encoder: 'x', comment: 'make' })).toBe(false);
  });
});

test('quarter turns out of display matrices (ISO/IEC 14496-12, 8.3.2.3)', () => {
  const one = 0x10000;
  expect(clockwiseFrom([one, 0, 0, 0, one])).toBe(0);
  expect(clockwiseFrom([0, one, 0, -one, 0])).toBe(90);
  expect(clockwiseFrom([-one, 0, 0, 0, -one])).toBe(180);
  expect(clockwiseFrom([0, -one, 0, one, 0])).toBe(270);
});

test('uneven pictures: rounding is none, a missing picture is', () => {
  const even = Array.from({ length: 60 }, (_, i) => Math.round((i * 1000) / 30) / 1000);
  expect(isVariable(even)).toBe(false);
  expect(isVariable(even.filter((_, i) => i !== 20))).toBe(true);
  expect(isVariable([])).toBe(false);
});

describe('where a run of samples goes', () => {
  test.each([
    ['next in line', 480, 480, { gap: 0, skip: 0, shift: 0 }],
    ['rounded stamp', 480, 500, { gap: 0, skip: 0, shift: 0 }],
    ['no stamp', 480, null, { gap: 0, skip: 0, shift: 0 }],
    ['after a gap', 480, 48_480, { gap: 48_000, skip: 0, shift: 0 }],
    ['before take time 0', 0, -1024, { gap: 0, skip: 1024, shift: 0 }],
    ['already heard', 48_000, 47_000, { gap: 0, skip: 1000, shift: 0 }],
    ['a clock set back', 4_800_000, 0, { gap: 0, skip: 0, shift: 4_800_000 }],
    ['a damaged stamp', 480, 99_000_000, { gap: 0, skip: 0, shift: -98_999_520 }],
  ])('%s', (_name, cursor, stamp, placing) => {
    expect(placeRun(cursor, stamp, 10_000_000, 48_000)).toEqual(placing);
  });
});

describe('peaks', () => {
  test('however the sound is cut up, the pairs are the same', () => {
    const samples = fc.array(fc.integer({ min: -32768, max: 32767 }), { minLength: 1, maxLength: 3000 });
    fc.assert(
      fc.property(
        samples,
        fc.array(fc.integer({ min: 1, max: 700 }), { minLength: 1 }),
        fc.constantFrom(8000, 11_025, 44_100),
        (values, cuts, rateHz) => {
          const sound = Int16Array.from(values);
          const [whole, parts] = [new PeakCollector(rateHz), new PeakCollector(rateHz)];
          whole.add(sound, 0, sound.length);
          whole.finish();
          for (let at = 0, cut = 0; at < sound.length; cut++) {
            const end = Math.min(sound.length, at + (cuts[cut % cuts.length] ?? 1));
            parts.add(sound, at, end);
            at = end;
          }
          parts.finish();
          expect(parts.from(0)).toEqual(whole.from(0));
          expect(whole.pairs).toBe(Math.ceil((sound.length * 100) / rateHz));
        },
      ),
    );
  });

  test('the coarser pair holds the extremes of its group, the last group may be short', () => {
    const pairs = Int8Array.from({ length: 14 }, (_, i) => (i % 2 === 0 ? -i : i));
    expect([...coarser(pairs, 20)]).toEqual([-8, 9, -12, 13]);
  });

  test('a pause is measured against the loud parts; a click does not end it', () => {
    const loud = (count: number, level: number) =>
      Array.from({ length: count }, () => [-level, level]).flat();
    const quiet = [
      ...loud(300, 100),
      ...loud(80, 3),
      ...loud(1, 90),
      ...loud(80, 3),
      ...loud(300, 100),
      ...loud(100, 2),
      ...loud(50, 100),
    ];
    expect(findSilences(Int8Array.from(quiet))).toEqual([{ startMs: 3000, endMs: 4610 }]);
    expect(findSilences(new Int8Array(0))).toEqual([]);
  });
});

test('stills are spread evenly, start at 0 and never crowd', () => {
  expect(stillTimes(0)).toEqual([0]);
  expect(stillTimes(30_000)).toEqual([0, 10_000, 20_000]);
  expect(stillTimes(10_800_000)).toHaveLength(240);
  expect(fitHeight({ width: 1920, height: 1080 }, 160)).toEqual({ width: 284, height: 160 });
  expect(fitHeight({ width: 64, height: 36 }, 160)).toEqual({ width: 64, height: 36 });
});

test('a view that changes stands out from what moves all the time', () => {
  const flat = (level: number, ms: number) => ({ ms, glance: new Float32Array(144).fill(level) });
  expect(
    findViewChanges([flat(40, 0), flat(44, 10), flat(41, 20), flat(120, 30), flat(118, 40), flat(121, 50)]),
  ).toEqual([{ ms: 30 }]);
  expect(findViewChanges([flat(40, 0)])).toEqual([]);
});

test('a fingerprint reads little of however large a file, and all of a small one', () => {
  expect(fingerprintBlocks(1000)).toEqual([{ position: 0, length: 1000 }]);
  const blocks = fingerprintBlocks(5_000_000_000);
  expect(blocks.reduce((sum, { length }) => sum + length, 0)).toBeLessThan(1_000_000);
  expect([blocks[0]?.position, (blocks.at(-1)?.position ?? 0) + (blocks.at(-1)?.length ?? 0)]).toEqual([
    0, 5_000_000_000,
  ]);
});
