import type { z } from 'zod';
import { asProblem, problem, problemType } from '@/app/_server/problem';

type Params = Record<string, string | string[] | undefined>;
interface Context {
  params: Promise<Params>;
}
type Work = (request: Request, params: Params) => Promise<Response> | Response;

/** Longest JSON body: a long note fits, a film does not. */
const mostBytes = 2_000_000;

/** Wraps a route so that every error leaves it as an RFC 9457 problem. */
export function route(work: Work) {
  return async (request: Request, context: Context): Promise<Response> => {
    try {
      return await work(request, await context.params);
    } catch (error) {
      if (error instanceof BodyError)
        return problemAnswer(problem(error.status, error.message, error.detail));
      return problemAnswer(asProblem(error));
    }
  };
}

function problemAnswer(body: ReturnType<typeof problem>): Response {
  return Response.json(body, { status: body.status, headers: { 'content-type': problemType } });
}

class BodyError extends Error {
  readonly status: number;
  readonly detail: string;
  constructor(status: number, title: string, detail: string) {
    super(title);
    this.status = status;
    this.detail = detail;
  }
}

/** The JSON body, checked against its contract. */
export async function body<T>(request: Request, schema: z.ZodType<T>): Promise<T> {
  const text = await request.text();
  if (text.length > mostBytes) throw new BodyError(413, 'That is too much at once.', 'Send less than 2 MB.');
  let value: unknown;
  try {
    value = text === '' ? {} : JSON.parse(text);
  } catch {
    throw new BodyError(
      400,
      'The body is not JSON.',
      'Send one JSON object with content type application/json.',
    );
  }
  return schema.parse(value);
}

/** Longest captions file: a day of talk. */
const mostFileBytes = 20_000_000;

/** The body as it is, for a file that is no JSON. */
export async function bytes(request: Request): Promise<Uint8Array> {
  const file = new Uint8Array(await request.arrayBuffer());
  if (file.length > mostFileBytes)
    throw new BodyError(413, 'That file is too large for captions.', 'Send less than 20 MB.');
  return file;
}

/** The query of the address, checked against its contract. */
export function query<T>(request: Request, schema: z.ZodType<T>): T {
  return schema.parse(Object.fromEntries(new URL(request.url).searchParams));
}
