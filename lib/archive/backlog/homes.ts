import { ownWords, titleFrom } from './names';

/** The folder that a recording's job is named by. */
export interface Home {
  /** Below the recordings folder, with forward slashes; empty for that itself. */
  path: string;
  /** Its name has words of its own. */
  named: boolean;
}

/**
 * The nearest folder above a recording, below the folder that was chosen, whose name has words of its own; otherwise
 * the folder that it lies in. "Bass rewire/Day 2/clip.mp4" is at home in "Bass rewire".
 * @param under the folder that was chosen, below the recordings folder
 */
export function homeOf(path: string, under: string): Home {
  const own = path.split('/').slice(0, -1);
  const chosen = under === '' ? 0 : under.split('/').length;
  for (let length = own.length; length > chosen; length--)
    if (ownWords(own[length - 1] ?? '').length > 0)
      return { path: own.slice(0, length).join('/'), named: true };
  return { path: own.join('/'), named: false };
}

/** Title by the nearest folder with words of its own, the chosen one too; empty where none has. */
export function titleOfHome({ path, named }: Home): string {
  return named ? titleFrom(path.split('/').at(-1) ?? '') : '';
}
