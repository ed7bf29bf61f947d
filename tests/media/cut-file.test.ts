import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { inspectCut, writeCut } from '@/lib/media/engine/cut';
import { type CutProgress, type CutSpec, cutSpecSchema } from '@/shared/cut-engine';
import { DomainError } from '@/shared/problem';
import { aac, ffmpeg, h264, made, picture, plain, recording, removeMade, tone } from './make';

afterAll(removeMade);
const watch = { signal: new AbortController().signal, report: () => undefined };
const chapters = [
  { startMs: 0, title: 'In' },
  { startMs: 1500, title: 'Größe, 4 kΩ 🎸' },
  { startMs: 2600, title: 'בדיקה' },
];

function specFor(name: string, path: string, more: Record<string, unknown> = {}): CutSpec {
  const workFolder = mkdtempSync(join(made, 'work-'));
  const pieces = [{ path, fromMs: 0, toMs: 3500 }];
  return cutSpecSchema.parse({ pieces, output: join(workFolder, name), workFolder, ...more });
}

const probeSchema = z.object({
  chapters: z.array(z.object({ start_time: z.string(), tags: z.object({ title: z.string() }) })),
  streams: z.array(z.object({ codec_type: z.string(), codec_name: z.string(), width: z.int().optional() })),
  format: z.object({ duration: z.string(), tags: z.record(z.string(), z.string()) }),
});

/** Debian's ffprobe. */
function probed(path: string) {
  const shown = ['-show_chapters', '-show_streams', '-show_format', '-of', 'json'];
  return probeSchema.parse(
    JSON.parse(execFileSync('ffprobe', ['-v', 'error', ...shown, path], { encoding: 'utf8' })),
  );
}

describe.each(['mp4', 'mkv'])('chapters and title in %s', (kind) => {
  test('are read back by ffprobe, and by our own fresh look', async () => {
    const spec = specFor(`cut.${kind}`, plain(), { chapters, title: 'A neck pickup, rewired' });
    const { durationMs } = await writeCut(spec, watch);
    const { chapters: found, format } = probed(spec.output);
    expect(
      found.map(({ start_time, tags }) => ({
        startMs: Math.round(Number(start_time) * 1000),
        title: tags.title,
      })),
    ).toEqual(chapters);
    expect(format.tags.title ?? format.tags.TITLE).toBe('A neck pickup, rewired');
    const look = await inspectCut(spec.output, watch);
    expect(look).toMatchObject({ chapters, tags: { title: 'A neck pickup, rewired' }, hasPlaceTags: false });
    expect(Math.abs(look.durationMs - durationMs)).toBeLessThan(40);
    expect(Math.abs(look.soundStartsLaterMs ?? 99)).toBeLessThan(25);
    expect(Math.abs(look.soundEndsLaterMs ?? 99)).toBeLessThan(40);
    expect(look.streams.map((stream) => stream.kind)).toEqual(
      kind === 'mp4' ? ['picture', 'sound', 'chapters'] : ['picture', 'sound'],
    );
  });
});

test('an independent reader of Matroska accepts the file and its chapters', async () => {
  const spec = specFor('whole.mkv', plain(), { chapters });
  await writeCut(spec, watch);
  expect(execFileSync('mkvextract', [spec.output, 'chapters', '-s'], { encoding: 'utf8' })).toContain(
    'CHAPTER02=00:00:01.500',
  );
  const info = execFileSync('mkvmerge', ['--identify', spec.output], { encoding: 'utf8' });
  expect(info).toContain('Chapters: 3 entries');
});

test('cuts on key frames move chapters along', async () => {
  const pieces = [0, 1].map((i) => ({ path: plain(), fromMs: 1300 + i * 1000, toMs: 2000 + i * 1000 }));
  const asked = [0, 350, 700].map((startMs, i) => ({ startMs, title: `Part ${i}` }));
  const { pieces: cut, chapters: moved } = await writeCut(
    specFor('moved.mp4', '', { pieces, chapters: asked }),
    watch,
  );
  expect(cut.map(({ fromMs, outMs }) => [fromMs, outMs])).toEqual([
    [1000, 0],
    [2000, 1000],
  ]);
  expect(moved.map(({ startMs }) => startMs)).toEqual([0, 650, 1000]);
});

describe('no word of the sources is left', () => {
  const words = [
    'Lugano',
    '46.0037',
    'Quixotic',
    'Zephyrcam',
    'Xanthippe',
    'Yggdrasil',
    'Wolpertinger',
    'Kumquat',
  ];
  const source = () => {
    const captions = join(made, 'captions.srt');
    writeFileSync(captions, '1\n00:00:00,000 --> 00:00:02,000\nKumquat\n');
    const cover = recording('cover.png', ...picture(1), '-frames:v', '1');
    const tags = {
      location: '+46.0037+008.9511/ Lugano',
      make: 'Quixotic',
      model: 'Zephyrcam',
      artist: 'Xanthippe',
      comment: 'Yggdrasil',
    };
    return recording(
      'tagged.mp4',
      ...[...picture(4), ...tone(4), '-i', captions, '-i', cover],
      ...[
        '-map',
        '0:v',
        '-map',
        '1:a',
        '-map',
        '2:s',
        '-map',
        '3:v',
        ...h264,
        ...aac,
        '-c:s',
        'mov_text',
        '-c:v:1',
        'png',
      ],
      ...[
        '-disposition:v:1',
        'attached_pic',
        '-metadata:s:v:0',
        'handler_name=Xanthippe',
        '-metadata:s:a:0',
        'title=Xanthippe',
      ],
      ...Object.entries(tags).flatMap(([key, value]) => ['-metadata', `${key}=${value}`]),
      ...['-bsf:v:0', 'h264_metadata=sei_user_data=086f3693-b7b3-4f2c-9653-21492feee5b8+Wolpertinger'],
      ...['-movflags', '+use_metadata_tags', '-metadata', 'creation_time=2021-05-06T07:08:09Z'],
    );
  };

  test('the source has them', () => {
    const bytes = readFileSync(source());
    for (const word of words) expect(bytes.includes(word), word).toBe(true);
  });

  test.each([
    ['copied.mp4', {}],
    ['copied.mkv', {}],
    ['encoded.mp4', { cutting: 'exact', pieces: 230 }],
  ])('%s', async (name, more) => {
    const pieces = [{ path: source(), fromMs: 'pieces' in more ? 230 : 0, toMs: 3600 }];
    const spec = specFor(name, source(), { ...more, pieces });
    await writeCut(spec, watch);
    const bytes = readFileSync(spec.output);
    for (const word of words) expect(bytes.includes(word), word).toBe(false);
    expect(await inspectCut(spec.output, watch)).toMatchObject({ hasPlaceTags: false, hasDeviceTags: false });
    expect(JSON.stringify(probed(spec.output))).not.toMatch(/2021|creation/);
    expect(probed(spec.output).streams.map(({ codec_type }) => codec_type)).toEqual(['video', 'audio']);
  });
});

test('a covered region is black while it is covered, and not else', async () => {
  const white = recording('white.mp4', '-f', 'lavfi', '-i', 'color=c=white:s=160x90:r=25:d=4', ...h264);
  const turned = recording('white-turned.mp4', '-i', white, '-c', 'copy', '-metadata:s:v:0', 'rotate=90');
  const covers = [{ fromMs: 1010, toMs: 1990, x: 0.5, y: 0, width: 0.5, height: 0.25 }];
  const spec = specFor('covered.mp4', '', { pieces: [{ path: turned, fromMs: 0, toMs: 3000, covers }] });
  await writeCut(spec, watch);
  const lumas = (crop: string) => {
    const args = ['-v', 'error', '-i', spec.output, '-vf', `crop=${crop},scale=1:1:flags=area,format=gray`];
    return [...execFileSync('ffmpeg', [...args, '-f', 'rawvideo', '-'])]
      .map((luma) => (luma > 128 ? 'w' : 'b'))
      .join('');
  };
  // Shown upright: 90 wide, 160 high.
  expect(lumas('iw/2-4:ih/4-4:iw/2+2:2')).toMatch(/^w{25}b{25}w{25}$/);
  expect(lumas('iw/2-4:ih/4-4:2:2')).toMatch(/^w{75}$/);
  expect(lumas('iw:ih/2:0:ih/2')).toMatch(/^w{75}$/);
});

/** White in one quarter; the picture lies on its side in the file. */
const corner = () => {
  const flat = recording(
    'corner.mp4',
    ...['-f', 'lavfi', '-i', 'color=c=black:s=160x90:r=25:d=6,drawbox=w=80:h=45:c=white:t=fill'],
    ...h264,
  );
  return recording('corner-turned.mp4', '-i', flat, '-c', 'copy', '-metadata:s:v:0', 'rotate=90');
};

test('encoded pictures stand as the copied ones beside them do', async () => {
  const cover = { fromMs: 0, toMs: 1500, x: 0, y: 0.9, width: 0.1, height: 0.1 };
  const pieces = [
    { path: corner(), fromMs: 0, toMs: 1500, covers: [cover] },
    { path: corner(), fromMs: 2000, toMs: 6000 },
  ];
  const spec = specFor('corner.mp4', '', { pieces });
  expect(await writeCut(spec, watch)).toMatchObject({ picture: 'mixed' });
  const quarters = (path: string) =>
    ['iw/8:ih/8', 'iw*5/8:ih/8', 'iw/8:ih*5/8', 'iw*5/8:ih*5/8'].map((place) => {
      const filter = `crop=iw/4:ih/4:${place},scale=1:1:flags=area,format=gray`;
      const args = ['-v', 'error', '-i', path, '-vf', filter, '-f', 'rawvideo', '-'];
      return [...new Set([...execFileSync('ffmpeg', args)].map((luma) => (luma > 128 ? 'white' : 'black')))];
    });
  expect(probed(spec.output).streams[0]).toMatchObject({ width: 160 });
  expect(quarters(corner()).filter((seen) => seen.includes('white'))).toEqual([['white']]);
  expect(quarters(spec.output)).toEqual(quarters(corner()));
});

test('an exact cut begins with the very picture, and copies the rest bit by bit', async () => {
  const spec = specFor('exact.mp4', '', {
    cutting: 'exact',
    pieces: [{ path: plain(), fromMs: 720, toMs: 3480 }],
  });
  expect(await writeCut(spec, watch)).toMatchObject({ picture: 'mixed' });
  const pictures = (path: string) =>
    execFileSync('ffmpeg', ['-v', 'error', '-i', path, '-map', '0:v', '-f', 'framemd5', '-'], {
      encoding: 'utf8',
    })
      .split('\n')
      .filter((line) => line.startsWith('0,'))
      .map((line) => line.split(',').at(-1)?.trim());
  const [cut, source] = [pictures(spec.output), pictures(plain())];
  expect(cut).toHaveLength(69);
  // The first key frame behind the start is at 1 s.
  expect(cut.slice(7)).toEqual(source.slice(25, 87));
});

describe('what goes wrong', () => {
  const fails = async (spec: CutSpec, words: RegExp, listening = watch) => {
    const before = existsSync(spec.output);
    const error = await writeCut(spec, listening).catch((thrown: unknown) => thrown);
    expect(String(error)).toMatch(words);
    expect(existsSync(spec.output)).toBe(before);
    expect(existsSync(`${spec.output}.part`)).toBe(false);
    return error;
  };

  test('a source that is missing', async () => {
    const spec = specFor('cut.mp4', join(made, 'gone.mp4'));
    expect(await fails(spec, /not there/)).toBeInstanceOf(DomainError);
  });

  test('a source that is damaged', async () => {
    const path = join(made, 'damaged.mp4');
    writeFileSync(path, readFileSync(plain()).subarray(0, 9000));
    expect(await fails(specFor('cut.mp4', path), /breaks off|damaged|not a film/)).toBeInstanceOf(
      DomainError,
    );
  });

  test('a source with a hole in the middle still gives a film', async () => {
    const path = join(made, 'hole.mp4');
    const bytes = Buffer.from(readFileSync(plain()));
    bytes.fill(0x55, bytes.length / 2, bytes.length / 2 + 3000);
    writeFileSync(path, bytes);
    const spec = specFor('hole.mp4', path);
    expect((await writeCut(spec, watch)).durationMs).toBeGreaterThan(3400);
  });

  test('a piece behind the end', async () => {
    const spec = specFor('cut.mp4', plain(), { pieces: [{ path: plain(), fromMs: 9000, toMs: 9500 }] });
    expect(await fails(spec, /Piece 1 of the cut holds nothing/)).toBeInstanceOf(DomainError);
  });

  test('a file of that name is never written over', async () => {
    const spec = specFor('cut.mp4', plain());
    writeFileSync(spec.output, 'mine');
    expect(await fails(spec, /already a file/)).toBeInstanceOf(DomainError);
    expect(readFileSync(spec.output, 'utf8')).toBe('mine');
  });

  test('a full disk', async (context) => {
    const folder = mkdtempSync(join(made, 'small-'));
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=200k', 'tmpfs', folder]).status === 0;
    context.skip(!mounted, 'needs the right to mount a small disk');
    try {
      const noise = recording('noise.mp4', ...picture(3, '320x180'), '-vf', 'noise=alls=90:allf=t', ...h264);
      // More than what is looked at before fits, so that it runs full while copying; then much more.
      for (const [name, path] of [
        ['early.mp4', noise],
        ['late.mp4', plain()],
      ] as const) {
        const spec = { ...specFor(name, path), output: join(folder, name), workFolder: join(folder, 'work') };
        const covers =
          name === 'late.mp4' ? [] : [{ fromMs: 0, toMs: 10, x: 0, y: 0, width: 0.1, height: 0.1 }];
        const error = await fails(
          { ...spec, pieces: spec.pieces.map((piece) => ({ ...piece, covers })) },
          /not enough room/,
        );
        expect(z.instanceof(DomainError).parse(error).detail).toMatch(/needs about \d+(\.\d)? [MG]B/);
      }
    } finally {
      spawnSync('umount', [folder]);
    }
  });

  test('called off in the middle, and gone on with: finished pieces are not made again', async () => {
    const path = recording('large.mp4', ...picture(6, '854x480'), ...tone(6), ...h264, ...aac);
    const cover = { x: 0, y: 0, width: 0.1, height: 0.1 };
    const pieces = [0, 1].map((i) => ({
      path,
      fromMs: i * 3000 + 200,
      toMs: i * 3000 + 2900,
      covers: [{ ...cover, fromMs: 0, toMs: 6000 }],
    }));
    const spec = specFor('cut.mp4', path, { pieces });
    const off = new AbortController();
    const report = (_: number, progress?: CutProgress) => {
      if (progress?.stage === 'encoding' && progress.doneMs > 2750) off.abort();
    };
    await fails(spec, /abort/i, { signal: off.signal, report } as typeof watch);
    const left = readdirSync(spec.workFolder);
    expect(left).toHaveLength(1);
    const finished = statSync(join(spec.workFolder, left[0] ?? '')).mtimeMs;
    const { reusedPieces, picture: how } = await writeCut(spec, watch);
    expect({ reusedPieces, how }).toEqual({ reusedPieces: 1, how: 'encoded' });
    expect(statSync(join(spec.workFolder, left[0] ?? '')).mtimeMs).toBe(finished);
  });

  test('the recordings are as they were', async () => {
    const before = [readFileSync(plain()), statSync(plain()).mtimeMs];
    mkdirSync(join(made, 'again'), { recursive: true });
    await writeCut({ ...specFor('cut.mp4', plain()), output: join(made, 'again', 'cut.mp4') }, watch);
    expect([readFileSync(plain()), statSync(plain()).mtimeMs]).toEqual(before);
    ffmpeg('-xerror', '-i', join(made, 'again', 'cut.mp4'), '-f', 'null', '-');
  });
});
