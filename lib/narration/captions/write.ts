import type { NarrationLine } from '@/shared/narration';
import { formatTimestamp } from './timestamps';

const escapeMarkup = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** SubRip knows no escapes; players show them. So only what would be read back as markup is escaped. */
const escapeLookalikes = (text: string): string =>
  text
    .replace(/&(?=[#a-z])/gi, '&amp;')
    .replace(/<(?=[/a-z\d])/gi, '&lt;')
    .replaceAll('{\\', '&#123;\\')
    .replaceAll('-->', '--&gt;');

/** WebVTT (W3C), one cue a line, voices kept. Times in milliseconds from the start of the file. */
export function writeWebVtt(lines: readonly NarrationLine[]): string {
  const cues = lines.map((line) => {
    const timing = `${formatTimestamp(line.startMs, '.')} --> ${formatTimestamp(line.endMs, '.')}`;
    const voice = line.voice === undefined ? '' : `<v ${escapeMarkup(line.voice)}>`;
    return `${timing}\n${voice}${escapeMarkup(line.text)}\n`;
  });
  return ['WEBVTT\n', ...cues].join('\n');
}

/** SubRip; it has no place for voices, so they are left out. */
export function writeSubRip(lines: readonly NarrationLine[]): string {
  return lines
    .map((line, at) => {
      const timing = `${formatTimestamp(line.startMs, ',')} --> ${formatTimestamp(line.endMs, ',')}`;
      return `${at + 1}\n${timing}\n${escapeLookalikes(line.text)}\n`;
    })
    .join('\n');
}
