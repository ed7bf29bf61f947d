import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { sha256OfBlob } from '@/app/send/_send/hash';
import { readTypedTime, shareOf, wholeRecording, wrongWith } from '@/app/send/_send/part';
import { copyArguments, leadMs, readLook } from '@/app/send/_send/prepare-plan';
import { aboutInWords, Rate } from '@/app/send/_send/rate';
import { Watchdog } from '@/app/send/_send/watchdog';
import { numberedName, receivedName } from '@/lib/media/received-name';

describe('times as they are typed', () => {
  it.each([
    ['0:05', 5000],
    ['83.4', 83_400],
    ['83,25', 83_250],
    ['1:02:03.5', 3_723_500],
    [' 2:03 ', 123_000],
  ])('%s', (text, ms) => expect(readTypedTime(text)).toBe(ms));
  it.each(['', 'soon', '1:', ':5', '1:2:3:4', '-3', '1.2345'])('not “%s”', (text) =>
    expect(readTypedTime(text)).toBeNull(),
  );
});

describe('the part that matters', () => {
  it('is checked against the recording', () => {
    expect(wrongWith(wholeRecording, null)).toBeNull();
    expect(wrongWith({ startMs: 5000, endMs: 5000 }, null)).toContain('end before it starts');
    expect(wrongWith({ startMs: 12_000, endMs: null }, 12_000)).toContain('behind the end');
    expect(shareOf({ startMs: 3000, endMs: 6000 }, 12_000)).toBe(0.25);
    expect(shareOf({ startMs: 6000, endMs: 99_000 }, 12_000)).toBe(0.5);
    expect(shareOf(wholeRecording, null)).toBeNull();
  });

  it('starts at the key frame before, which is told', () => {
    expect(leadMs({ startMs: 5500, endMs: 9000 }, 12_000, 5000)).toBe(1500);
    expect(leadMs({ startMs: 5500, endMs: null }, 12_000, 8000)).toBe(1500);
    expect(leadMs(wholeRecording, 12_000, 12_040)).toBe(0);
    expect(leadMs({ startMs: 5500, endMs: null }, null, 8000)).toBeNull();
  });

  it('is copied with no tag but the time of recording', () => {
    const words = copyArguments('/in', '/out', { startMs: 5500, endMs: 9000 }, '2026-03-17T09:00:00.000Z');
    expect(words.join(' ')).toContain('-ss 5.500 -to 9.000 -i /in -map 0:V? -map 0:a? -dn -sn -c copy');
    expect(words.filter((word) => word.includes('='))).toEqual(['creation_time=2026-03-17T09:00:00.000Z']);
    expect(copyArguments('/in', '/out', wholeRecording, null)).not.toContain('-ss');
  });
});

describe('what ffprobe wrote', () => {
  const look = (tags: Record<string, string>) =>
    readLook(JSON.stringify({ format: { duration: '12.5', tags }, streams: [{ codec_type: 'video' }] }));

  it('tells when it was recorded, rather by a time with its zone', () => {
    expect(look({ creation_time: '2026-03-17T09:00:00.000000Z' })).toEqual({
      durationMs: 12_500,
      hasFilm: true,
      recordedAt: '2026-03-17T09:00:00.000Z',
    });
    const both = { 'x.creationdate': '2026-03-17T10:00:00+0200', creation_time: '2026-03-17T10:00:00Z' };
    expect(look(both)?.recordedAt).toBe('2026-03-17T08:00:00.000Z');
    expect(look({ creation_time: 'long ago' })?.recordedAt).toBeNull();
  });

  it('tells nothing of what cannot be opened', () => {
    expect(readLook('{')).toBeNull();
    expect(readLook('{}')).toEqual({ durationMs: null, hasFilm: false, recordedAt: null });
  });
});

// Outside check: OpenSSL's SHA-256, through Node.
it('hashes piece by piece what OpenSSL hashes at once', async () => {
  for (const size of [0, 1, (1 << 20) - 1, (16 << 20) + 17]) {
    const bytes = new Uint8Array(size).map((_, index) => (index * 31) & 255);
    const expected = createHash('sha256').update(bytes).digest('hex');
    expect(await sha256OfBlob(new Blob([bytes]), new AbortController().signal)).toBe(expected);
  }
});

describe('how fast it goes', () => {
  it('is told over the last seconds only', () => {
    const rate = new Rate();
    expect(rate.add({ atMs: 0, bytes: 0 })).toBeNull();
    expect(rate.add({ atMs: 1000, bytes: 1_000_000 })).toBe(1_000_000);
    rate.add({ atMs: 20_000, bytes: 1_000_000 });
    expect(rate.add({ atMs: 21_000, bytes: 6_000_000 })).toBe(5_000_000);
  });
  it.each([
    [0.2, '1 s'],
    [59, '59 s'],
    [61, '2 min'],
    [3600, '1 h'],
    [4_900, '1 h 22 min'],
  ])('%s s is %s', (seconds, words) => expect(aboutInWords(seconds)).toBe(words));
});

describe('names of received recordings', () => {
  it('hold no path, no end, no device and no more bytes than a file system takes, whatever is given', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (given) => {
        const name = receivedName(given);
        expect(name).not.toBe('');
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there.
        expect(name).not.toMatch(/[\u0000-\u001f/\\<>:"|?*]|^\.|[. ]$/);
        expect(Buffer.byteLength(numberedName(name, 1000))).toBeLessThanOrEqual(255);
        expect(receivedName(name)).toBe(name);
      }),
    );
  });
  it('keep their ending where they are numbered', () => {
    expect(numberedName('take.mp4', 2)).toBe('take (2).mp4');
    expect(numberedName('recording', 3)).toBe('recording (3)');
  });
});

describe('the watchdog', () => {
  afterEach(() => void vi.useRealTimers());

  it('ends what has gone silent, and nothing that is heard of', async () => {
    vi.useFakeTimers();
    const watch = new Watchdog(new AbortController().signal);
    const silent = watch.over(new Promise<never>(() => {}), 30_000).catch((error: unknown) => error);
    await vi.advanceTimersByTimeAsync(29_000);
    watch.alive();
    await vi.advanceTimersByTimeAsync(29_000);
    expect(await Promise.race([silent, Promise.resolve('working')])).toBe('working');
    await vi.advanceTimersByTimeAsync(1_000);
    expect(await silent).toMatchObject({ message: expect.stringContaining('for 30 s') });
    expect(await watch.over(Promise.resolve('done'), 1)).toBe('done');
  });

  it('ends what is not wanted any more', async () => {
    const leaving = new AbortController();
    const watch = new Watchdog(leaving.signal);
    const work = watch.over(new Promise<never>(() => {}), 30_000);
    leaving.abort(new Error('left'));
    await expect(work).rejects.toThrow('left');
    await expect(watch.over(Promise.resolve('late'), 1)).rejects.toThrow('left');
  });
});
