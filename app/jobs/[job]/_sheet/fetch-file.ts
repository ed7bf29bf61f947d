import { CallError } from '@/app/_parts/call';
import { problemSchema } from '@/shared/problem';

/** Fetches a file that the server makes, under the name that the server gives it. @throws CallError with its words */
export async function fetchFile(path: string): Promise<File> {
  const response = await fetch(path).catch(() => null);
  if (!response)
    throw new CallError('Benchtake does not answer.', 'Is it still running on the bench machine?', 0);
  if (response.ok) return new File([await response.blob()], nameIn(response.headers));
  const problem = problemSchema.safeParse(await response.json().catch(() => null));
  if (problem.success)
    throw new CallError(problem.data.title, problem.data.detail, response.status, problem.data);
  throw new CallError('The file could not be made.', 'Load the page again.', response.status);
}

function nameIn(headers: Headers): string {
  return /filename="([^"]+)"/.exec(headers.get('content-disposition') ?? '')?.[1] ?? 'file';
}
