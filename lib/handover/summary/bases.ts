import type { Basis } from '@/shared/readings';

/** How a thing is known, for somebody who is no repairer. */
export const basisWords: Readonly<Record<Basis, string>> = {
  measured: 'measured',
  implied: 'follows from what was measured',
  assumed: 'taken over, not measured',
  stated: 'as told to us, not measured',
};

const list = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** "red, white and green" */
export function sayList(words: readonly string[]): string {
  return list.format(words);
}

export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** With a full stop, unless it ends with a sign of its own. */
export function stopped(text: string): string {
  return /[.!?…:]$/.test(text) ? text : `${text}.`;
}
