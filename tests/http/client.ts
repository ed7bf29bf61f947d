import { z } from 'zod';
import { type JobRecord, jobRecordSchema } from '@/shared/jobs';
import { type Folder, folderSchema, takeSchema } from '@/shared/takes';
import type { App } from '../app';

export interface Answer {
  status: number;
  headers: Headers;
  body: unknown;
}

/** Asks a route as another program would: JSON out, JSON or text back. */
export async function ask(
  app: App,
  method: string,
  path: string,
  body?: unknown,
  headers: Record<string, string> = {},
): Promise<Answer> {
  const response = await fetch(app.url + path, {
    method,
    headers: { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
    ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
  });
  const text = await response.text();
  const isJson = response.headers.get('content-type')?.includes('json') ?? false;
  return { status: response.status, headers: response.headers, body: isJson ? JSON.parse(text) : text };
}

export async function makeJob(
  app: App,
  title = 'Four-string bass, crackles on the neck pickup',
): Promise<JobRecord> {
  const { body } = await ask(app, 'POST', '/api/jobs', { title, instrument: { type: 'bass guitar' } });
  return jobRecordSchema.parse(body);
}

export async function getJob(app: App, id: string): Promise<JobRecord> {
  return jobRecordSchema.parse((await ask(app, 'GET', `/api/jobs/${id}`)).body);
}

export async function nameFolder(app: App, path: string): Promise<Folder> {
  return folderSchema.parse((await ask(app, 'POST', '/api/folders', { path })).body);
}

export async function addTake(app: App, jobId: string, path: string) {
  return z
    .looseObject({ take: takeSchema })
    .parse((await ask(app, 'POST', `/api/jobs/${jobId}/takes`, { path })).body).take;
}

/** Asks again until it is as wanted; fails with what it last was. */
export async function until<T>(
  get: () => Promise<T>,
  wanted: (value: T) => boolean,
  forMs = 60_000,
): Promise<T> {
  const end = Date.now() + forMs;
  for (;;) {
    const value = await get();
    if (wanted(value)) return value;
    if (Date.now() > end)
      throw new Error(`It never came about; last: ${JSON.stringify(value).slice(0, 2000)}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** The record of a job once nothing is being worked out any more. */
export function settled(app: App, jobId: string): Promise<JobRecord> {
  return until(
    () => getJob(app, jobId),
    (record) => record.tasks.length === 0 && record.takes.every((take) => take.state !== 'new'),
  );
}
