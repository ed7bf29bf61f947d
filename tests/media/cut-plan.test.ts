import { describe, expect, test } from 'vitest';
import { chaptersInCut, cutPlan } from '@/lib/media/cut';
import { lastClosed } from '@/lib/media/engine/cut/facts';
import { withoutUserData } from '@/lib/media/engine/cut/user-data';
import { type CutFacts, type CutPicture, type CutPoints, cutPlanSpecSchema } from '@/shared/cut-engine';

const camera: CutPicture = {
  codec: 'h264',
  pixelFormat: 'yuv420p',
  width: 1920,
  height: 1080,
  rotation: 0,
  pixelAspect: [1, 1],
  frameRate: 25,
  settings: 'a',
  copies: true,
  mixes: true,
};
const sound = { codec: 'aac', sampleRateHz: 48000, channels: 2, copies: true };
const source = (picture: CutPicture | null, hears = true) => ({
  durationMs: 60_000,
  picture,
  sound: hears ? sound : null,
});

/** A key frame every two seconds; cuts at the end fall where they are asked for. */
function pointsOf({ fromMs, toMs }: { fromMs: number; toMs: number }): CutPoints {
  const keyAtMs = Math.floor(fromMs / 2000) * 2000;
  return { keyAtMs, nextKeyMs: keyAtMs + 2000, closedAtMs: toMs };
}

interface Asked {
  path: string;
  fromMs: number;
  toMs: number;
  covers?: { fromMs: number; toMs: number; x: number; y: number; width: number; height: number }[];
  mutes?: { fromMs: number; toMs: number }[];
}

function planned(pieces: Asked[], sources: CutFacts['sources'], more: Record<string, unknown> = {}) {
  const spec = cutPlanSpecSchema.parse({ pieces, ...more });
  return { spec, plan: cutPlan(spec, { sources, points: pieces.map(pointsOf) }) };
}

const piece = (fromMs: number, toMs: number, path = 'a'): Asked => ({ path, fromMs, toMs });
const cover = (fromMs: number, toMs: number) => ({ fromMs, toMs, x: 0, y: 0, width: 0.5, height: 0.5 });
const a = { a: source(camera) };

describe('what is copied and what is encoded', () => {
  test('on key frames, the start moves back and the rest of the cut with it', () => {
    const { plan } = planned([piece(3000, 7000), piece(13_500, 20_000)], a);
    expect(plan).toMatchObject({ picture: 'copied', sound: 'encoded', durationMs: 13_000 });
    expect(plan.pieces.map(({ fromMs, outMs, startMovedMs }) => [fromMs, outMs, startMovedMs])).toEqual([
      [2000, 0, 1000],
      [12_000, 5000, 1500],
    ]);
  });

  test('exactly, only what lies before the next key frame is encoded', () => {
    const { plan } = planned([piece(3000, 9000)], a, { cutting: 'exact' });
    expect(plan).toMatchObject({ picture: 'mixed', sound: 'copied' });
    expect(plan.pieces[0]?.parts).toEqual([
      { how: 'encode', fromMs: 3000, toMs: 4000 },
      { how: 'copy', fromMs: 4000, toMs: 9000 },
    ]);
  });

  test('nothing is shown twice: a start whose key frame was shown already is exact', () => {
    const { plan } = planned([piece(2000, 5000), piece(5300, 9000)], a);
    expect(plan.pieces[1]).toMatchObject({ fromMs: 5300, startMovedMs: 0 });
  });

  test('a cover between the key frame and the start is not left out', () => {
    const { plan } = planned([{ ...piece(3000, 7000), covers: [cover(2100, 2900)] }], a);
    expect(plan.pieces[0]?.parts).toEqual([{ how: 'encode', fromMs: 3000, toMs: 7000 }]);
  });

  test('a take of another kind is fitted in where the larger one can be copied', () => {
    const small = source({ ...camera, width: 640, height: 360, settings: 'b' });
    const pieces = [
      piece(0, 4000, 'small'),
      piece(0, 4000),
      { ...piece(8000, 9000), covers: [cover(0, 60_000)] },
    ];
    const { plan } = planned(pieces, { ...a, small });
    expect(plan.picture).toBe('mixed');
    expect(plan.format).toMatchObject({ like: 'a', width: 1920 });
    expect(plan.pieces.map(({ parts }) => parts.map(({ how }) => how))).toEqual([
      ['encode'],
      ['copy'],
      ['encode'],
    ]);
  });

  test('where the largest cannot be copied all is encoded, upright, with square pixels', () => {
    const phone = source({
      ...camera,
      width: 2160,
      height: 3840,
      rotation: 90,
      codec: 'prores',
      copies: false,
    });
    const { plan } = planned([piece(0, 4000), piece(0, 4000, 'phone')], { ...a, phone });
    expect(plan.picture).toBe('encoded');
    expect(plan.format).toEqual({
      like: 'phone',
      width: 3840,
      height: 2160,
      rotation: 0,
      pixelAspect: [1, 1],
    });
  });

  test('HEVC is copied as a whole or not at all', () => {
    const hevc = { a: source({ ...camera, codec: 'hevc', mixes: false }) };
    expect(planned([piece(2000, 9000)], hevc).plan.picture).toBe('copied');
    expect(planned([piece(3000, 9000)], hevc, { cutting: 'exact' }).plan.picture).toBe('encoded');
  });

  test.each([
    ['muted', { mutes: [{ fromMs: 10, toMs: 20 }] }, {}],
    ['levelled', {}, { loudness: { lufs: -16 } }],
  ])('%s sound is encoded', (_name, own, more) => {
    expect(planned([{ ...piece(0, 4000), ...own }], a, more).plan.sound).toBe('encoded');
  });

  test('without any picture, or any sound, there is none', () => {
    expect(planned([piece(0, 4000)], { a: source(null) }).plan).toMatchObject({
      picture: 'none',
      format: null,
    });
    expect(planned([piece(0, 4000)], { a: source(camera, false) }).plan.sound).toBe('none');
  });
});

test('chapters go along, keep to the start of their piece, and never stand twice at one moment', () => {
  const chapters = [0, 1000, 4000, 4000, 9999].map((startMs, i) => ({ startMs, title: `${i}` }));
  const { spec, plan } = planned([piece(3000, 7000), piece(13_000, 15_000)], a, { chapters });
  expect(chaptersInCut(spec, plan)).toEqual([
    { startMs: 0, title: '0' },
    { startMs: 2000, title: '1' },
    { startMs: 5000, title: '3' },
  ]);
});

describe('where a copied piece may end, by the order of decoding', () => {
  // I, P, B, B, P, B, B at 40 ms each.
  const decoded = [0, 120, 40, 80, 240, 160, 200];
  test.each([
    [30, 30],
    [100, 40],
    [120, 40],
    [121, 121],
    [160, 160],
    [230, 160],
    [240, 160],
    [999, 999],
  ])('%i ms: %i', (wanted, place) => {
    expect(lastClosed(decoded, wanted)).toBe(place);
  });

  test('nowhere before the first picture', () => {
    expect(lastClosed(decoded, 0)).toBeNull();
  });
});

test('user data between the pictures is taken out, other information stays', () => {
  const unit = (...bytes: number[]) => [0, 0, 0, bytes.length, ...bytes];
  const settings = Buffer.from([1, 100, 0, 30, 0xff]);
  const recovery = unit(6, 6, 1, 0xc4, 0x80);
  const place = unit(6, 5, 17, ...Array(16).fill(7), 0x41, 0x80);
  const picture = unit(0x65, 1, 2, 3);
  const whole = Buffer.from([...recovery, ...place, ...picture]);
  expect(withoutUserData(whole, 'h264', settings)).toEqual(Buffer.from([...recovery, ...picture]));
  const clean = Buffer.from([...recovery, ...picture]);
  expect(withoutUserData(clean, 'h264', settings)).toBe(clean);
});
