import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { soundPeaks } from '@/lib/media/engine/sound';
import { aac, h264, made, picture, plain, recording, removeMade, tone } from './make';
import { odd } from './odd-recordings';

const watch = { signal: new AbortController().signal, report: () => undefined };
afterAll(removeMade);

async function peaksOf(path: string, level = 100) {
  const folder = mkdtempSync(join(made, 'peaks-'));
  const result = await soundPeaks(path, folder, watch);
  const bytes =
    result.peaks.length === 0 ? Buffer.alloc(0) : readFileSync(join(folder, `peaks-${level}.bin`));
  rmSync(folder, { recursive: true });
  return { ...result, pairs: new Int8Array(bytes.buffer, bytes.byteOffset, bytes.length) };
}

/** Take times of the loud pairs, in milliseconds, one for each click. */
function clicks(pairs: Int8Array): number[] {
  const loud = Array.from({ length: pairs.length / 2 }, (_, i) =>
    Math.max(-(pairs[i * 2] ?? 0), pairs[i * 2 + 1] ?? 0),
  );
  const top = loud.reduce((most, value) => Math.max(most, value), 0);
  return loud.flatMap((value, i) =>
    value > top / 2 && !loud.slice(Math.max(0, i - 10), i).some((before) => before > top / 2) ? [i * 10] : [],
  );
}

/** Clicks of 2 ms at 0.5 s, 1.25 s and 2.75 s, in 4 s. */
const clickTimes = [500, 1250, 2750];
const clicking = (rateHz = 48000) => [
  '-f',
  'lavfi',
  '-i',
  `aevalsrc='0.8*(${clickTimes.map((ms) => `between(t,${ms / 1000},${ms / 1000 + 0.002})`).join('+')})*sin(2*PI*1000*t)':s=${rateHz}:d=4`,
];
const film = (...codecs: string[]) => [...picture(4), ...clicking(), ...h264, ...codecs];
const clickingFilm = () => recording('clicks.mp4', ...film(...aac));

describe('a sound lands where it is heard', () => {
  test.each<[string, () => string, number[]]>([
    ['AAC in MP4', clickingFilm, clickTimes],
    ['AAC in Matroska', () => recording('clicks.mkv', ...film(...aac)), clickTimes],
    ['AAC in MPEG-TS', () => recording('clicks.ts', ...film(...aac)), clickTimes],
    ['AAC at 44.1 kHz', () => recording('clicks-44.m4a', ...clicking(44100), ...aac), clickTimes],
    // An AVI does not say how much priming its MP3 sound has; PCM has none.
    ['PCM in AVI', () => recording('clicks.avi', ...film('-c:a', 'pcm_s16le')), clickTimes],
    ['MP3 by itself', () => recording('clicks.mp3', ...clicking(), '-c:a', 'libmp3lame'), clickTimes],
    ['MP3 in MP4', () => recording('clicks-mp3.mp4', ...film('-c:a', 'libmp3lame')), clickTimes],
    [
      'Opus in WebM',
      () =>
        recording(
          'clicks.webm',
          ...picture(4),
          ...clicking(),
          '-c:v',
          'libvpx',
          '-deadline',
          'realtime',
          '-c:a',
          'libopus',
        ),
      clickTimes,
    ],
    ['Opus in MP4', () => recording('clicks-opus.mp4', ...film('-c:a', 'libopus')), clickTimes],
    ['Vorbis in Matroska', () => recording('clicks-vorbis.mkv', ...film('-c:a', 'libvorbis')), clickTimes],
    ['PCM in MOV', () => recording('clicks.mov', ...film('-c:a', 'pcm_s16le')), clickTimes],
    [
      'PCM of 24 bits at 11 025 Hz',
      () => recording('clicks.wav', ...clicking(11025), '-c:a', 'pcm_s24le'),
      clickTimes,
    ],
    ['FLAC', () => recording('clicks.flac', ...clicking(), '-c:a', 'flac'), clickTimes],
    ['ADPCM', () => recording('clicks-adpcm.wav', ...clicking(), '-c:a', 'adpcm_ms'), clickTimes],
    [
      'fragmented',
      () =>
        recording(
          'clicks-fragments.mp4',
          '-i',
          clickingFilm(),
          '-c',
          'copy',
          '-movflags',
          '+frag_keyframe+delay_moov',
        ),
      clickTimes,
    ],
    [
      'clock that starts at one hour',
      () => recording('clicks-hour.ts', '-i', clickingFilm(), '-c', 'copy', '-output_ts_offset', '3600'),
      clickTimes,
    ],
    [
      'picture starts 0.4 s late',
      () =>
        recording(
          'clicks-late-picture.mp4',
          '-itsoffset',
          '0.4',
          '-i',
          clickingFilm(),
          '-i',
          clickingFilm(),
          '-map',
          '0:v',
          '-map',
          '1:a',
          '-c',
          'copy',
        ),
      [100, 850, 2350],
    ],
    [
      'sound starts 0.4 s late',
      () =>
        recording(
          'clicks-late-sound.mp4',
          '-itsoffset',
          '0.4',
          '-i',
          clickingFilm(),
          '-i',
          clickingFilm(),
          '-map',
          '1:v',
          '-map',
          '0:a',
          '-c',
          'copy',
        ),
      [900, 1650, 3150],
    ],
    [
      'sound starts 0.4 s late, Matroska',
      () =>
        recording(
          'clicks-late-sound.mkv',
          '-itsoffset',
          '0.4',
          '-i',
          clickingFilm(),
          '-i',
          clickingFilm(),
          '-map',
          '1:v',
          '-map',
          '0:a',
          '-c',
          'copy',
        ),
      [900, 1650, 3150],
    ],
    [
      'edit list that cuts 1 s off',
      () => recording('clicks-cut.mp4', '-ss', '1', '-i', clickingFilm(), '-c', 'copy'),
      [250, 1750],
    ],
  ])('%s', async (_name, make, expected) => {
    const found = clicks((await peaksOf(make())).pairs);
    expect(found).toHaveLength(expected.length);
    for (const [i, ms] of found.entries()) expect(Math.abs(ms - (expected[i] ?? 0))).toBeLessThanOrEqual(10);
  });

  test('a gap in the sound is silence, and what follows keeps its place', async () => {
    const holed = recording(
      'holed.mkv',
      ...picture(4),
      ...clicking(),
      '-af',
      "aselect='not(between(t,1,2))'",
      ...h264,
      '-c:a',
      'pcm_s16le',
    );
    const found = clicks((await peaksOf(holed)).pairs);
    expect(found).toHaveLength(2);
    expect(Math.abs((found[0] ?? 0) - 500)).toBeLessThanOrEqual(10);
    expect(Math.abs((found[1] ?? 0) - 2750)).toBeLessThanOrEqual(10);
  });
});

describe('peaks against FFmpeg’s own decoding', () => {
  // Source: Debian's ffmpeg, mixed down by the same default matrix, at the recording's own rate.
  test.each([
    'plain MP4',
    'sound only, MP3',
    'sound only, FLAC',
    'sound only, Opus',
    '5.1 sound',
    'AVI',
    'ProRes',
  ])('%s', async (name) => {
    const path = odd[name]?.() ?? '';
    const { pairs } = await peaksOf(path);
    const rateHz = Number(
      execFileSync('ffprobe', [
        '-v',
        'error',
        '-select_streams',
        'a:0',
        '-show_entries',
        'stream=sample_rate',
        '-of',
        'csv=p=0',
        path,
      ]),
    );
    const pcm = execFileSync(
      'ffmpeg',
      ['-v', 'error', '-i', path, '-map', '0:a:0', '-ac', '1', '-f', 's16le', '-'],
      { maxBuffer: 1e9 },
    );
    const perPair = rateHz / 100;
    let worst = 0;
    const count = Math.min(pairs.length / 2, Math.floor(pcm.length / 2 / perPair));
    for (let pair = 0; pair < count; pair++) {
      const samples = Array.from(
        { length: perPair },
        (_, i) => pcm.readInt16LE((pair * perPair + i) * 2) / 258,
      );
      worst = Math.max(
        worst,
        Math.abs(Math.max(...samples) - (pairs[pair * 2 + 1] ?? 0)),
        Math.abs(Math.min(...samples) - (pairs[pair * 2] ?? 0)),
      );
    }
    expect(count).toBeGreaterThan(250);
    expect(worst).toBeLessThanOrEqual(2);
  });
});

test('the coarser levels hold the same extremes', async () => {
  const [fine, coarse] = [await peaksOf(clickingFilm(), 100), await peaksOf(clickingFilm(), 4)];
  expect(coarse.pairs.length / 2).toBe(16);
  for (let pair = 0; pair < 16; pair++) {
    const part = fine.pairs.subarray(pair * 50, pair * 50 + 50);
    expect([coarse.pairs[pair * 2], coarse.pairs[pair * 2 + 1]]).toEqual([
      Math.min(...part),
      Math.max(...part),
    ]);
  }
});

test('every frame of sound is decoded: the iterators of node-av give none on Node 20', async () => {
  const { peaks, pairs } = await peaksOf(plain());
  expect(peaks).toEqual([
    { pairsPerSecond: 100, pairs: 400 },
    { pairsPerSecond: 20, pairs: 80 },
    { pairsPerSecond: 4, pairs: 16 },
  ]);
  // FFmpeg's sine source has an amplitude of 1/8.
  expect(Math.max(...pairs)).toBeGreaterThanOrEqual(15);
});

test('pauses are found, and only long ones', async () => {
  const path = recording(
    'pauses.mp4',
    '-f',
    'lavfi',
    '-i',
    "aevalsrc='0.5*sin(2*PI*300*t)*(lt(t,2)+between(t,4,5)+between(t,5.5,7))+0.002*random(0)':s=48000:d=9",
    ...aac,
  );
  const { silences } = await peaksOf(path);
  expect(silences).toHaveLength(2);
  expect(silences[0]?.startMs).toBeCloseTo(2000, -2);
  expect(silences[0]?.endMs).toBeCloseTo(4000, -2);
  expect(silences[1]?.startMs).toBeCloseTo(7000, -2);
});

test('of two sound streams the first is read, unless another is marked as default', async () => {
  const inputs = [...picture(2), ...tone(2), '-f', 'lavfi', '-i', 'anullsrc=r=48000:d=2', ...h264, ...aac];
  const first = recording(
    'first-heard.mkv',
    ...inputs,
    '-map',
    '0',
    '-map',
    '1',
    '-map',
    '2',
    '-t',
    '2',
    '-disposition:a:0',
    '0',
    '-disposition:a:1',
    '0',
  );
  const second = recording(
    'second-heard.mkv',
    ...inputs,
    '-map',
    '0',
    '-map',
    '1',
    '-map',
    '2',
    '-t',
    '2',
    '-disposition:a:0',
    '0',
    '-disposition:a:1',
    'default',
  );
  expect(Math.max(...(await peaksOf(first)).pairs)).toBeGreaterThan(10);
  expect(Math.max(...(await peaksOf(second)).pairs)).toBe(0);
});

test('without sound there are no peaks', async () => {
  expect(await peaksOf(odd['picture only']?.() ?? '')).toMatchObject({ peaks: [], silences: [] });
});

test('three hours stay in step to the end', async () => {
  const { pairs } = await peaksOf(odd['three hours']?.() ?? '');
  const found = clicks(pairs);
  expect(found).toHaveLength(180);
  expect(Math.abs((found.at(-1) ?? 0) - (179 * 60_000 + 30_000))).toBeLessThanOrEqual(10);
});

test('work that is called off stops', async () => {
  const off = new AbortController();
  const path = odd['three hours']?.() ?? '';
  const work = soundPeaks(path, join(made, 'called-off'), { signal: off.signal, report: () => off.abort() });
  await expect(work).rejects.toThrow('aborted');
});
