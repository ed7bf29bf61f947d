import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { listen } from '@/lib/media/engine/listen';
import { made, picture, plain, recording, removeMade } from './make';
import { writeWeightlessModel } from './speech-model';

afterAll(removeMade);

/** A name with everything in it that a filter's description might stumble over. */
const model = () => {
  mkdirSync(made, { recursive: true });
  const path = join(made, "weightless model's, [a]: b; c.bin");
  writeWeightlessModel(path);
  return path;
};
/** Where the filter writes: with the same odd letters. */
const heard = join(made, "take's, [a]: b; c", 'heard.srt');
const watch = (
  report: (progress: number) => void = () => undefined,
  signal = new AbortController().signal,
) => ({
  signal,
  report,
});

describe('a speech model without weights', () => {
  it('loads, runs over the whole sound and hears nothing', async () => {
    const told: number[] = [];
    const found = await listen(
      plain(60),
      model(),
      heard,
      watch((progress) => told.push(progress)),
    );
    expect(found).toEqual({ captions: '', offsetMs: 0 });
    // Once at least for each third of the minute that is heard at once, and never backwards.
    expect(told.length).toBeGreaterThanOrEqual(2);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBeLessThanOrEqual(1);
    expect(existsSync(heard)).toBe(false);
  });

  it('lays what it hears on the take’s clock, wherever the file’s own begins', async () => {
    const late = recording(
      'late.mp4',
      '-itsoffset',
      '1.4',
      ...picture(3),
      '-f',
      'lavfi',
      '-i',
      'sine=d=3',
      '-c:v',
      'libx264',
      '-fps_mode',
      'passthrough',
      '-c:a',
      'aac',
    );
    expect((await listen(late, model(), heard, watch())).offsetMs).toBe(-1400);
  });

  it('knows where sound begins that comes after the picture', async () => {
    const lateSound = recording(
      'late-sound.mkv',
      ...picture(4),
      ...['-itsoffset', '1.5', '-f', 'lavfi', '-i', 'sine=d=2', '-c:v', 'libx264', '-c:a', 'pcm_s16le'],
    );
    expect((await listen(lateSound, model(), heard, watch())).offsetMs).toBe(1500);
  });

  it('is called off between two pieces', async () => {
    const off = new AbortController();
    off.abort(new Error('called off'));
    await expect(
      listen(
        plain(60),
        model(),
        heard,
        watch(() => undefined, off.signal),
      ),
    ).rejects.toThrow('called off');
    expect(existsSync(heard)).toBe(false);
  });
});

describe('what cannot be listened to', () => {
  it('a file that is no model', async () => {
    mkdirSync(made, { recursive: true });
    const path = join(made, 'no-model.bin');
    writeFileSync(path, 'lmgg and nothing that makes sense');
    await expect(listen(plain(), path, heard, watch())).rejects.toThrow('no speech model');
  });

  it('a recording without sound', async () => {
    const silent = recording('picture-only.mp4', ...picture(2), '-c:v', 'libx264');
    await expect(listen(silent, model(), heard, watch())).rejects.toThrow('no sound');
  });
});
