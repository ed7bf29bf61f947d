import type { HeardProposal } from '@/shared/narration';
import type { TokenSpan } from '../words/token';
import { type Talk, timesOf, wordsIn } from './talk';

type Distribute<T> = T extends HeardProposal
  ? Omit<T, 'key' | 'startMs' | 'endMs' | 'words'> & TokenSpan
  : never;
/** A proposal whose place is still in tokens. */
export type Draft = Distribute<HeardProposal>;

/** FNV-1a, 32 bit: short, and the same everywhere. */
function hash(text: string): string {
  let value = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193);
  return (value >>> 0).toString(36);
}

/** Gives a draft its times, its words and a key that comes out the same whenever the same words are read again. */
export function finishDraft(talk: Talk, draft: Draft): HeardProposal {
  const { from, to, ...rest } = draft;
  const times = timesOf(talk, { from, to });
  const words = wordsIn(talk, { from, to });
  const key = `${draft.type}:${times.startMs}:${hash(`${words}|${JSON.stringify(draft.payload)}`)}`;
  return { ...rest, ...times, words, key };
}
