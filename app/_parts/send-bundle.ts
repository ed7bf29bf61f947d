import { type BroughtIn, broughtInSchema } from '@/shared/bundle';
import { problemSchema } from '@/shared/problem';
import { CallError } from './call';

/**
 * Sends a bundle to the bench machine. Only XMLHttpRequest tells a page how much of a body has gone.
 * @param onProgress part that has gone, 0 to 1
 * @throws CallError
 */
export function sendBundle(
  file: File,
  onProgress: (part: number) => void,
  signal: AbortSignal,
): Promise<BroughtIn> {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open('POST', '/api/bundles');
    request.setRequestHeader('content-type', 'application/zip');
    request.upload.addEventListener('progress', ({ loaded, total }) =>
      onProgress(loaded / Math.max(1, total)),
    );
    request.addEventListener('load', () => {
      try {
        resolve(answerOf(request));
      } catch (error) {
        reject(error);
      }
    });
    request.addEventListener('error', () => reject(new CallError(...goneWords, 0)));
    request.addEventListener('abort', () => reject(new CallError(...stoppedWords, 0)));
    signal.addEventListener('abort', () => request.abort(), { once: true });
    request.send(file);
  });
}

const goneWords = [
  'The bundle could not be sent.',
  'Is Benchtake still running on the bench machine? Nothing was kept; send it once more.',
] as const;
const stoppedWords = ['Stopped.', 'Nothing of the bundle was kept.'] as const;

function answerOf({ responseText, status }: XMLHttpRequest): BroughtIn {
  const answer = readJson(responseText);
  const brought = broughtInSchema.safeParse(answer);
  if (brought.success) return brought.data;
  const problem = problemSchema.safeParse(answer);
  if (problem.success) throw new CallError(problem.data.title, problem.data.detail, status, problem.data);
  throw new CallError('Benchtake answered in a way this page does not know.', 'Load the page again.', status);
}

/** An answer that is no JSON is one that this page does not know. */
function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
