import { headOf } from './file';
import type { Input } from './input';

/** Short words for FFmpeg's format names where they differ. */
const words: Readonly<Record<string, string>> = { mpeg: 'mpeg', asf: 'wmv', w64: 'wav' };

/** One short word for the container of a recording. */
export function containerOf(input: Input, path: string): string {
  const format = input.format.iformat?.name ?? 'unknown';
  if (format.startsWith('mov,'))
    return input.format.metadata?.get('major_brand')?.startsWith('qt') ? 'mov' : 'mp4';
  // RFC 8794: the DocType lies near the start of the EBML header.
  if (format.startsWith('matroska')) return headOf(path, 64).includes('webm') ? 'webm' : 'matroska';
  const first = format.split(',')[0] ?? format;
  return words[first] ?? first;
}
