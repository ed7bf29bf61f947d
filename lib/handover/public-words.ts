import type { PrivateWords } from '@/lib/narration';
import {
  clientTellerFor,
  finderFor,
  knownFinderFor,
  type PrivateRecord,
  wordsOfName,
} from './public-words/findings';
import { named } from './public-words/named';
import { type Draft, everywhere, holds, replaced, type Span } from './public-words/spans';

export type { PrivateRecord } from './public-words/findings';

/** What stands in a public text for private words that have no other name. */
export const heldBack = '(held back)';
const nameless = 'the client';

/**
 * A text of the record made public: the client goes by the alias, what else is private is held back. A part of the
 * name that is an everyday word too stays where it is not meant as a name.
 */
export function publicWords(text: string, record: PrivateRecord): string {
  return publicWordsFor(record)(text);
}

/** The same for many texts of one job: what is known is made ready once. */
export function publicWordsFor(record: PrivateRecord): (text: string) => string {
  const find = finderFor(record);
  const isClientIn = clientTellerFor(record);
  const client = { name: record.client?.name ?? '', alias: publicAlias(record) };
  const cleared = (draft: Draft): string => {
    const left = find(draft.text).filter((finding) => !draft.given.some((span) => holds(span, finding)));
    if (left.length === 0) return draft.text;
    const isClient = isClientIn(draft.text);
    const names = asOne(draft.text, left.filter(isClient));
    const others = left.filter((finding) => !isClient(finding));
    const replacements = [
      ...names.map((name) => named(draft.text, name, client)),
      ...others.map((finding) => ({ ...finding, with: heldBack })),
    ].sort((a, b) => a.from - b.from);
    // What is put in is public by choice. Each round takes some of the original away, so there is a last one.
    return cleared(replaced(draft, replacements));
  };
  return (text) => cleared({ text, given: [] });
}

/** Private words in a text that was edited by hand. The alias is none, nor is what stands for words held back. */
export function privateLeft(text: string, record: PrivateRecord): PrivateWords[] {
  return privateLeftFor(record)(text);
}

/** The same for many texts of one job. */
export function privateLeftFor(record: PrivateRecord): (text: string) => PrivateWords[] {
  const find = finderFor(record);
  const given = [heldBack, publicAlias(record).replace(/^(?:an?|the)\s+/i, '')];
  return (text) => {
    const allowed = given.flatMap((words) => everywhere(text, words));
    return find(text).filter((finding) => !allowed.some((span) => holds(span, finding)));
  };
}

/** How the client is called in public. An alias that gives the client away is not used. */
export function publicAlias(record: PrivateRecord): string {
  const alias = record.client?.alias.trim() ?? '';
  const parts = new Set(wordsOfName(record.client?.name ?? ''));
  const capitals = alias.match(/\p{Lu}[\p{L}\p{M}]+/gu) ?? [];
  const isTelling =
    capitals.flatMap(wordsOfName).some((word) => parts.has(word)) || knownFinderFor(record)(alias).length > 0;
  return alias === '' || isTelling ? nameless : alias;
}

/** "Quillfeather, Marla" is one person. */
function asOne(text: string, names: readonly Span[]): Span[] {
  const joined: Span[] = [];
  for (const name of names) {
    const last = joined.at(-1);
    if (last && /^,\s*$/.test(text.slice(last.to, name.from)))
      joined.splice(-1, 1, { from: last.from, to: name.to });
    else joined.push(name);
  }
  return joined;
}
