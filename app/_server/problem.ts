import { STATUS_CODES } from 'node:http';
import { ZodError } from 'zod';
import { DomainError, type Problem, type ProblemKind } from '@/shared/problem';

const statusOf: Record<ProblemKind, number> = {
  invalid: 422,
  'not-found': 404,
  conflict: 409,
  gone: 410,
  forbidden: 403,
  unavailable: 503,
  'too-large': 413,
};

export const problemType = 'application/problem+json';

/** Any error as an RFC 9457 problem. What nobody foresaw is logged whole and told in plain words. */
export function asProblem(error: unknown): Problem {
  if (error instanceof ZodError) return fromZod(error);
  if (isDomainError(error)) {
    return {
      type: 'about:blank',
      title: error.message,
      status: statusOf[error.kind],
      detail: error.detail,
      ...error.extra,
    };
  }
  if (isDiskFull(error)) {
    return problem(
      507,
      'The disk is full: nothing was saved.',
      'Make room on the drive that holds the data folder, then do it again.',
    );
  }
  console.error(error);
  return problem(
    500,
    'Something went wrong that nobody foresaw.',
    'What was saved before is safe. Try again; the program’s own output tells more.',
  );
}

export function problem(status: number, title: string, detail: string): Problem {
  return { type: 'about:blank', title: title || (STATUS_CODES[status] ?? 'Error'), status, detail };
}

/** The pages and the server are bundled apart, so the class is known by its shape. */
function isDomainError(error: unknown): error is DomainError {
  return (
    error instanceof DomainError ||
    (error instanceof Error &&
      'kind' in error &&
      'detail' in error &&
      typeof error.kind === 'string' &&
      error.kind in statusOf)
  );
}

function fromZod(error: ZodError): Problem {
  const errors = error.issues.map((issue) => ({
    pointer: `/${issue.path.map(String).join('/')}`,
    detail: issue.message,
  }));
  const first = errors[0];
  const where = first && first.pointer !== '/' ? `“${first.pointer.slice(1)}”: ` : '';
  return {
    ...problem(422, 'That does not fit.', `${where}${first?.detail ?? 'Check what was sent.'}`),
    errors,
  };
}

function isDiskFull(error: unknown): boolean {
  return (
    error instanceof Error && 'code' in error && (error.code === 'SQLITE_FULL' || error.code === 'ENOSPC')
  );
}
