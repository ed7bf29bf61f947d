import type { z } from 'zod';
import { type Problem, problemSchema } from '@/shared/problem';

/** What the server refused, in words for a person. */
export class CallError extends Error {
  readonly detail: string;
  readonly status: number;
  /** The whole problem, where the server told one. */
  readonly problem: Problem | null;
  constructor(title: string, detail: string, status: number, problem: Problem | null = null) {
    super(title);
    this.name = 'CallError';
    this.detail = detail;
    this.status = status;
    this.problem = problem;
  }
}

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/** Calls a route of our own and checks the answer against its contract. Throws CallError. */
export async function call<T>(
  method: Method,
  path: string,
  schema: z.ZodType<T>,
  body?: unknown,
): Promise<T> {
  const response = await send(method, path, body);
  const answer: unknown = await response.json().catch(() => null);
  if (response.ok) return schema.parse(answer);
  const problem = problemSchema.safeParse(answer);
  if (problem.success)
    throw new CallError(problem.data.title, problem.data.detail, response.status, problem.data);
  throw new CallError(
    'Benchtake answered in a way this page does not know.',
    'Load the page again.',
    response.status,
  );
}

async function send(method: Method, path: string, body: unknown): Promise<Response> {
  try {
    return await fetch(path, { method, ...asBody(body) });
  } catch {
    throw new CallError(
      'Benchtake does not answer.',
      'Is it still running on the bench machine? What you last did was not saved.',
      0,
    );
  }
}

/** A file goes as it is, anything else as JSON. */
function asBody(body: unknown): RequestInit {
  if (body === undefined) return {};
  if (body instanceof Blob) return { body };
  return { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
}

/** Any error as a title and what to do next. */
export function inWords(error: unknown): { title: string; detail: string } {
  if (error instanceof CallError) return { title: error.message, detail: error.detail };
  return {
    title: 'Something went wrong on this page.',
    detail: error instanceof Error ? error.message : String(error),
  };
}
