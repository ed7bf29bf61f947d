import { NAMES_THAT_ARE_WORDS } from '@/lib/narration';
import { conceptOf } from '../lexicon/phrase-book';
import { folded } from '../lexicon/simple-words';
import { fillerWords, smallWords, weakWords } from '../lexicon/small-words';
import { tradeBook } from '../lexicon/trade';
import type { MakePart } from './part-ids';
import type { Finding, QuestionContext } from './question';
import { type Rest, spend } from './rest';

interface NameWord {
  name: string;
  start: number;
  end: number;
  isMarked: boolean;
}

const nameWord = /\p{L}[\p{L}\p{M}-]*(?:['’](?!s\b)\p{L}+)*/gu;
const titles = /\b(?:mr|mrs|ms|miss|dr)\.?\s*$/i;
const shortestName = 3;

type Clients = QuestionContext['clients'];

/** Clients by their whole name, or by one word of it where it can be nothing else. */
export function clientsIn(rest: Rest, clients: Clients, makePart: MakePart): Finding[] {
  const byWord = nameIndex(clients);
  const words = [...rest.left.matchAll(nameWord)].map((match) => asNameWord(rest.left, match));
  const findings: Finding[] = [];
  for (let at = 0; at < words.length; ) {
    const found = clientsAt(words, at, byWord);
    const first = words[at];
    const last = words[at + found.length - 1];
    if (found.clients.length > 0 && first && last) {
      const said = spend(rest, first.start, last.end);
      const names = found.clients.map(({ name }) => name).join(' or ');
      const ids = found.clients.map(({ id }) => id);
      findings.push({ part: makePart('client', said, `client: ${names}`), clients: ids });
    }
    at += Math.max(found.length, 1);
  }
  return findings;
}

interface NamedClient {
  client: Clients[number];
  words: string[];
}

function nameIndex(clients: Clients): ReadonlyMap<string, NamedClient[]> {
  const index = new Map<string, NamedClient[]>();
  for (const client of clients) {
    const words = [...client.name.matchAll(nameWord)].map(([word]) => folded(word));
    for (const word of new Set(words)) index.set(word, [...(index.get(word) ?? []), { client, words }]);
  }
  return index;
}

function asNameWord(text: string, match: RegExpMatchArray): NameWord {
  const start = match.index ?? 0;
  const end = start + match[0].length;
  const isPossessive = /^['’]s\b/.test(text.slice(end));
  const isCapital = start > 0 && /^\p{Lu}/u.test(match[0]);
  const isMarked = isPossessive || isCapital || titles.test(text.slice(0, start));
  return { name: folded(match[0]), start, end, isMarked };
}

/** As many words of one name as stand here; else those that one word of the name may mean. */
function clientsAt(words: readonly NameWord[], at: number, byWord: ReadonlyMap<string, NamedClient[]>) {
  const first = words[at];
  const named = (first && byWord.get(first.name)) ?? [];
  const nothing = { clients: [], length: 0 };
  if (!first || named.length === 0) return nothing;
  const second = words[at + 1]?.name ?? '';
  const both = named.filter((each) => each.words.includes(second) && second !== first.name);
  if (both.length > 0) return { clients: both.map(({ client }) => client), length: 2 };
  return isNameAlone(first) ? { clients: named.map(({ client }) => client), length: 1 } : nothing;
}

function isNameAlone({ name, isMarked }: NameWord): boolean {
  if (name.length < shortestName || smallWords.has(name)) return false;
  const isWord =
    NAMES_THAT_ARE_WORDS.has(name) ||
    fillerWords.has(name) ||
    weakWords.has(name) ||
    conceptOf(tradeBook, name) !== null;
  return isMarked || !isWord;
}
