import { chmodSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { probe } from '@/lib/media/engine/probe';
import { soundPeaks } from '@/lib/media/engine/sound';
import { stillAt, stripStills } from '@/lib/media/engine/stills';
import { Lane } from '@/lib/tasks/lane';
import { DomainError } from '@/shared/problem';
import { h264, made, picture, plain, recording, removeMade, tone } from './make';
import { odd } from './odd-recordings';
import { bundleWorker } from './worker-bundle';

const watch = { signal: new AbortController().signal, report: () => undefined };
let bundle: Awaited<ReturnType<typeof bundleWorker>>;

beforeAll(async () => {
  bundle = await bundleWorker();
});
afterAll(() => {
  bundle.remove();
  removeMade();
});

function file(name: string, bytes: string | Buffer): string {
  const path = join(made, name);
  writeFileSync(path, bytes);
  return path;
}

function folderNamedLikeAFilm(): string {
  const path = join(made, 'folder.mp4');
  mkdirSync(path, { recursive: true });
  return path;
}

function headOnly(name: string, path: string, bytes: number): string {
  return file(name, readFileSync(path).subarray(0, bytes));
}

const indexLast = () => odd['index at the end']?.() ?? '';
const indexFirst = () => recording('index-first.mp4', '-i', plain(), '-c', 'copy', '-movflags', '+faststart');

describe('what is not a recording is said in words', () => {
  test.each<[string, () => string, RegExp]>([
    ['empty', () => file('empty.mp4', ''), /empty/],
    ['text', () => file('text.mp4', 'neck 7.9k, bridge 8.2k\n'.repeat(200)), /not a film/],
    [
      'noise',
      () => file('noise.mp4', Buffer.from(Array.from({ length: 50_000 }, (_, i) => (i * i * 7919) >> 3))),
      /not a film|damaged/,
    ],
    ['zeros', () => file('zeros.mp4', Buffer.alloc(100_000)), /not a film|damaged/],
    ['without its index', () => headOnly('no-index.mp4', indexLast(), 60_000), /index/],
    ['index without what it points to', () => headOnly('index-only.mp4', indexFirst(), 6_000), /damaged/],
    ['a folder', folderNamedLikeAFilm, /folder/],
    ['not there', () => join(made, 'gone.mp4'), /not there/],
    [
      'subtitles only',
      () => file('captions.srt', '1\n00:00:00,000 --> 00:00:01,000\nhello\n'),
      /neither picture nor sound/,
    ],
  ])('%s', async (_name, make, words) => {
    const error = await probe(make(), watch).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(DomainError);
    expect(String(error)).toMatch(words);
    expect(error instanceof DomainError && error.detail).not.toBe('');
  });

  test('unreadable', async () => {
    const path = file('locked.mp4', readFileSync(plain()));
    chmodSync(path, 0);
    await asNobody(() => expect(probe(path, watch)).rejects.toThrow('may not be read'));
  });
});

/** The superuser may read everything, so for once the test runs as somebody else. */
async function asNobody(work: () => Promise<void>): Promise<void> {
  const root = process.geteuid?.() === 0;
  if (root) process.seteuid?.(65_534);
  try {
    await work();
  } finally {
    if (root) process.seteuid?.(0);
  }
}

describe('lightly damaged recordings are read as far as they go', () => {
  test('cut off in the middle, index first', async () => {
    const whole = readFileSync(indexFirst()).length;
    const path = headOnly('cut-off.mp4', indexFirst(), Math.round(whole * 0.6));
    expect((await probe(path, watch)).durationMs).toBe(4000);
    const { peaks } = await soundPeaks(path, mkdtempSync(join(made, 'peaks-')), watch);
    expect(peaks[0]?.pairs).toBeGreaterThan(150);
    expect(peaks[0]?.pairs).toBeLessThan(350);
  });

  test('cut off in the middle, Matroska', async () => {
    const whole = odd.Matroska?.() ?? '';
    const path = headOnly('cut-off.mkv', whole, Math.round(readFileSync(whole).length / 2));
    expect((await probe(path, watch)).video?.codec).toBe('h264');
    expect((await stripStills(path, mkdtempSync(join(made, 'stills-')), watch)).stills).toEqual([0]);
  });

  test('a still from behind the end is the last picture', async () => {
    expect((await stillAt(plain(), 3_600_000, watch)).subarray(0, 2).toString('hex')).toBe('ffd8');
  });
});

/** A small generator of its own (mulberry32), so that a damage can be made again. */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

describe('flipped bits', () => {
  const families: [string, () => string][] = [
    ['H.264 and AAC in MP4', () => plain()],
    ['MPEG-4 and MP3 in AVI', () => odd.AVI?.() ?? ''],
    ['H.264 and AAC in MPEG-TS', () => odd['MPEG-TS']?.() ?? ''],
    ['VP9 and Opus in WebM', () => odd['WebM with VP9 and Opus']?.() ?? ''],
    ['HEVC in MP4', () => odd.HEVC?.() ?? ''],
    [
      'ProRes in MOV',
      () =>
        recording('small-prores.mov', ...picture(1), ...tone(1), '-c:v', 'prores_ks', '-c:a', 'pcm_s16le'),
    ],
    ['a single picture', () => recording('small.mp4', ...picture(1), '-frames:v', '1', ...h264)],
  ];

  test.each(families)('%s: an answer or a reason, and the worker lives on', async (name, make) => {
    const lane = new Lane({ worker: bundle.worker, mostResidentBytes: 1_500_000_000, mostSilentMs: 20_000 });
    const whole = readFileSync(make());
    const outcomes: string[] = [];
    try {
      for (let seed = 1; seed <= 12; seed++) {
        const path = file(`flipped-${seed}`, flipped(whole, seed));
        const folder = mkdtempSync(join(made, 'flipped-'));
        for (const [kind, payload] of [
          ['probe', { path }],
          ['sound', { path, folder }],
          ['pictures', { path, folder }],
          ['still', { path, ms: 500 }],
        ] as const) {
          outcomes.push(await lane.run(kind, payload).then(() => 'answer', reasonOf));
        }
      }
      const worker = lane.pid;
      await lane.run('probe', { path: plain() });
      expect(lane.pid).toBe(worker);
    } finally {
      lane.stop();
    }
    expect(outcomes).toHaveLength(48);
    expect(outcomes, name).not.toContain('');
    expect(outcomes.filter((outcome) => outcome === 'answer').length).toBeGreaterThan(0);
  });
});

/** Between 1 and 200 bits, anywhere in the file. */
function flipped(whole: Buffer, seed: number): Buffer {
  const next = random(seed);
  const bytes = Buffer.from(whole);
  for (let left = 1 + Math.floor(next() * 200); left > 0; left--) {
    const at = Math.floor(next() * bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(next() * 8));
  }
  return bytes;
}

function reasonOf(error: unknown): string {
  return z.instanceof(DomainError).parse(error).message;
}
