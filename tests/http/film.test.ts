import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, readlinkSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, startApp } from '../app';
import { makeRecording } from '../recordings';
import { addTake, makeJob, nameFolder, settled, until } from './client';

let app: App;
let folder: string;
let address: string;
let bytes: Buffer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchtake-films-'));
  const path = makeRecording(folder, 'take 1.mp4', {
    seconds: 20,
    extra: [
      '-b:v',
      '3M',
      '-minrate',
      '3M',
      '-maxrate',
      '3M',
      '-bufsize',
      '1M',
      '-x264-params',
      'nal-hrd=cbr',
    ],
  });
  bytes = readFileSync(path);
  app = await startApp();
  await nameFolder(app, folder);
  const { job } = await makeJob(app);
  const take = await addTake(app, job.id, path);
  await settled(app, job.id);
  address = `${app.url}/api/takes/${take.id}/film`;
});
afterAll(async () => {
  await app.clear();
  rmSync(folder, { recursive: true });
});

/** Outside check: curl, an independent HTTP client, reads status, headers and body. */
function curl(...options: string[]): { status: number; headers: string; body: Buffer } {
  const head = join(folder, 'head.txt');
  const body = execFileSync('curl', ['-sS', '-D', head, ...options, address], { maxBuffer: 1 << 28 });
  const headers = readFileSync(head, 'utf8').toLowerCase();
  return { status: Number(/^http\/1\.1 (\d+)/.exec(headers)?.[1]), headers, body };
}
const hash = (data: Buffer) => createHash('sha256').update(data).digest('hex');

// RFC 9110, section 14 (range requests) and 13.1.5 (If-Range).
describe('a film over HTTP', () => {
  it('comes whole, saying that ranges are served', () => {
    const { status, headers, body } = curl();
    expect(status).toBe(200);
    expect(headers).toContain('accept-ranges: bytes');
    expect(headers).toContain(`content-length: ${bytes.length}`);
    expect(headers).toContain('content-type: video/mp4');
    expect(hash(body)).toBe(hash(bytes));
  });

  it('comes in parts: from the start, the middle, the end, clamped', () => {
    const size = bytes.length;
    for (const [range, first, last] of [
      ['0-99', 0, 99],
      ['1000-', 1000, size - 1],
      ['-500', size - 500, size - 1],
      [`${size - 10}-${size + 5000}`, size - 10, size - 1],
    ] as const) {
      const { status, headers, body } = curl('-r', range);
      expect(status, range).toBe(206);
      expect(headers).toContain(`content-range: bytes ${first}-${last}/${size}`);
      expect(hash(body)).toBe(hash(bytes.subarray(first, last + 1)));
    }
  });

  it('answers 416 with the length where nothing lies', () => {
    const { status, headers } = curl('-H', `Range: bytes=${bytes.length}-`);
    expect(status).toBe(416);
    expect(headers).toContain(`content-range: bytes */${bytes.length}`);
  });

  it('tells its headers alone on HEAD, Range or not', () => {
    const { status, headers, body } = curl('-I', '-H', 'Range: bytes=0-9');
    expect(status).toBe(200);
    expect(headers).toContain(`content-length: ${bytes.length}`);
    expect(body.toString()).not.toContain('ftyp');
  });

  it('honours If-Range and If-None-Match', () => {
    const tag = /etag: ("[^"]+")/.exec(curl('-I').headers)?.[1] ?? '';
    expect(curl('-r', '0-9', '-H', `If-Range: ${tag}`).status).toBe(206);
    expect(curl('-r', '0-9', '-H', 'If-Range: "other"').status).toBe(200);
    expect(curl('-H', `If-None-Match: ${tag}`).status).toBe(304);
  });

  it('closes its file when the client goes away', async () => {
    const open = () =>
      readdirSync(`/proc/${app.pid()}/fd`).filter((fd) => {
        try {
          return readlinkSync(`/proc/${app.pid()}/fd/${fd}`).endsWith('take 1.mp4');
        } catch {
          return false; // Closed between the listing and the look.
        }
      }).length;
    for (let index = 0; index < 40; index++) {
      const leaving = new AbortController();
      const response = await fetch(address, {
        headers: { range: `bytes=${index * 1000}-` },
        signal: leaving.signal,
      });
      await response.body?.getReader().read();
      leaving.abort();
    }
    expect(
      await until(
        async () => open(),
        (count) => count === 0,
        10_000,
      ),
    ).toBe(0);
  });
});
