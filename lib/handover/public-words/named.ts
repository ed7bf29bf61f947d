import { wordsOfName } from './findings';
import type { Replacement, Span } from './spans';

const title = /(?:^|(?<=[^\p{L}]))(?:mr|mrs|ms|miss|mx|dr|sir)\.?\s+$/iu;
const noun = /(?<=\b(?:client|customer|owner))(,?)\s+$/i;
const determiner = /\b(a|an|the|my|our|his|her|their|your|this|that)\s+$/i;
const article = /^(?:an?|the|my|our)\s+/i;

/**
 * What comes in the place of the client's name at `span`: the alias with the ending of the name, without a second
 * article, with a capital where a sentence begins. "Mr" goes with the name; "my client Ann" needs no second word.
 */
export function named(text: string, span: Span, client: { name: string; alias: string }): Replacement {
  const { from, to, isOwner } = withEnding(text, span, client.name);
  const start = from - (title.exec(text.slice(0, from))?.[0].length ?? 0);
  const before = text.slice(0, start);
  const apposed = noun.exec(before);
  if (apposed) {
    const isCommaDue = apposed[1] !== '' && text.startsWith(',', to);
    return { from: start - apposed[0].length, to: isCommaDue ? to + 1 : to, with: isOwner ? '’s' : '' };
  }
  const words = isOwner ? owning(client.alias) : client.alias;
  const determined = determiner.exec(before);
  if (!determined || !article.test(words)) return { from: start, to, with: begun(words, before) };
  const areBothIndefinite = /^an?$/i.test(determined[1] ?? '') && /^an?\s/i.test(words);
  if (!areBothIndefinite) return { from: start, to, with: words.replace(article, '') };
  const first = start - determined[0].length;
  return { from: first, to, with: begun(words, text.slice(0, first)) };
}

/** With what makes the name an owner: "Ann's", "James'", and "Anns", where the ending was found with the name. */
function withEnding(text: string, { from, to }: Span, name: string): Span & { isOwner: boolean } {
  const words = text.slice(from, to);
  const rest = text.slice(to);
  const sign = /^['’]s(?![\p{L}\p{N}])/iu.test(rest) ? 2 : 0;
  const bare = sign === 0 && /s$/i.test(words) && /^['’](?![\p{L}\p{N}])/u.test(rest) ? 1 : 0;
  const last = wordsOfName(words).at(-1) ?? '';
  const parts = wordsOfName(name);
  const isWithin = /s$/.test(last) && !parts.includes(last) && parts.includes(last.slice(0, -1));
  return { from, to: to + sign + bare, isOwner: sign + bare > 0 || isWithin };
}

function owning(alias: string): string {
  return /s$/i.test(alias) ? `${alias}’` : `${alias}’s`;
}

function begun(words: string, before: string): string {
  const isBeginning = /(?:^|[.!?…]\s|\n)["“‘(]?$/u.test(before);
  return isBeginning ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}
