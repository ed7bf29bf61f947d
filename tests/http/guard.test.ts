import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type App, startApp } from '../app';
import { ask, makeJob } from './client';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.clear());

/** `fetch` will not let a Host be forged; a plain request does. */
function raw(headers: Record<string, string>, method = 'GET', path = '/api/jobs'): Promise<number> {
  return new Promise((resolve, reject) => {
    const call = request({ host: '127.0.0.1', port: app.port, path, method, headers }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    call.on('error', reject);
    call.end();
  });
}

describe('who may call', () => {
  it('our own names, on our own port', async () => {
    for (const host of ['127.0.0.1', 'localhost', 'LOCALHOST'])
      expect(await raw({ host: `${host}:${app.port}` })).toBe(200);
  });

  it('no rebound name, no missing name', async () => {
    for (const host of [
      'evil.example',
      `evil.example:${app.port}`,
      '127.0.0.1.evil.example',
      '192.168.0.9',
      '0.0.0.0',
    ]) {
      expect(await raw({ host }), host).toBe(421);
      expect(await raw({ host }, 'GET', '/'), host).toBe(421);
      expect(await raw({ host }, 'GET', '/api/takes/00000000000000000000/film'), host).toBe(421);
    }
  });

  it('no page from elsewhere, whatever it does', async () => {
    const host = `127.0.0.1:${app.port}`;
    expect(await raw({ host, origin: 'http://evil.example' }, 'POST')).toBe(403);
    expect(await raw({ host, origin: 'null' }, 'DELETE', '/api/jobs/00000000000000000000')).toBe(403);
    expect(await raw({ host, origin: `http://127.0.0.1:${app.port + 1}` }, 'POST')).toBe(403);
    expect(await raw({ host, 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' })).toBe(403);
    expect(await raw({ host, 'sec-fetch-site': 'same-site', 'sec-fetch-mode': 'cors' })).toBe(403);
    expect(
      await raw({ host, 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'navigate' }, 'GET', '/'),
    ).toBe(200);
    expect(await raw({ host, origin: `http://${host}`, 'sec-fetch-site': 'same-origin' })).toBe(200);
  });
});

describe('the content security policy', () => {
  it('allows ourselves only, with a nonce of each answer’s own that the page’s scripts carry', async () => {
    const first = await fetch(app.url);
    const policy = first.headers.get('content-security-policy') ?? '';
    const nonce = /'nonce-([^']+)'/.exec(policy)?.[1];
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy.match(/script-src[^;]*/)?.[0]).not.toContain('unsafe');
    expect(policy).not.toMatch(/https?:/);
    const html = await first.text();
    const scripts = html.match(/<script[^>]*>/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    for (const script of scripts) expect(script).toContain(`nonce="${nonce}"`);
    const second = await fetch(app.url);
    expect(second.headers.get('content-security-policy')).not.toBe(policy);
  });
});

// Outside check: RFC 9457 (problem details), section 3.1: type, title, status, detail.
describe('problems', () => {
  const expectProblem = ({ status, headers, body }: Awaited<ReturnType<typeof ask>>, wanted: number) => {
    expect(status).toBe(wanted);
    expect(headers.get('content-type')).toBe('application/problem+json');
    expect(body).toMatchObject({
      type: expect.any(String),
      title: expect.any(String),
      status: wanted,
      detail: expect.any(String),
    });
  };

  it('tell what is wrong and what to do', async () => {
    const { job } = await makeJob(app);
    expectProblem(await ask(app, 'POST', '/api/jobs', { title: '' }), 422);
    expectProblem(
      await ask(app, 'POST', '/api/jobs', { title: 'x', instrument: { type: 'lute' }, colour: 'red' }),
      422,
    );
    expectProblem(await ask(app, 'POST', '/api/jobs', '{"title":'), 400);
    expectProblem(await ask(app, 'GET', '/api/jobs/00000000000000000000'), 404);
    expectProblem(await ask(app, 'GET', '/api/jobs/not-an-id'), 422);
    expectProblem(await ask(app, 'POST', `/api/jobs/${job.id}/takes`, { path: 'relative.mp4' }), 422);
    expectProblem(await ask(app, 'POST', `/api/jobs/${job.id}/takes`, { path: '/etc/hostname' }), 403);
    expectProblem(await ask(app, 'POST', '/api/folders', { path: '/no/such/folder' }), 422);
    expectProblem(await ask(app, 'GET', `/api/jobs/${job.id}/exports/chapters?as=pdf`), 422);
    expectProblem(await ask(app, 'POST', '/api/jobs', { title: 'x'.repeat(2_100_000) }), 413);
    expectProblem(await ask(app, 'GET', '/api/takes/00000000000000000000/film'), 404);
    expectProblem(await ask(app, 'POST', '/api/takes/00000000000000000000/film', {}), 405);
  });

  it('name the field', async () => {
    const { body } = await ask(app, 'POST', '/api/jobs', { title: 'x' });
    expect(body).toMatchObject({ errors: [{ pointer: '/instrument' }] });
  });
});
