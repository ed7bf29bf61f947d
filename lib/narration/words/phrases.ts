import type { Token } from './token';

/**
 * Phrases as they are written in the lexicons:
 * `word`, `(one|other)`, `[may|be|left|out]`, `_` any one word, `..3` up to three words that end no sentence.
 */
type Part =
  | { readonly form: 'one'; readonly words: ReadonlySet<string>; readonly optional: boolean }
  | { readonly form: 'any' }
  | { readonly form: 'gap'; readonly most: number };

export interface PhraseEntry {
  readonly say: string;
}

export interface PhraseMatch<Entry> {
  readonly entry: Entry;
  readonly from: number;
  readonly to: number;
}

function parsePart(text: string): Part {
  if (text === '_') return { form: 'any' };
  const gap = /^\.\.(\d)$/.exec(text);
  if (gap) return { form: 'gap', most: Number(gap[1]) };
  const group = /^[([](.*)[)\]]$/.exec(text);
  return { form: 'one', words: new Set((group?.[1] ?? text).split('|')), optional: text.startsWith('[') };
}

/**
 * The phrase without groups that hold more than single words: "(be|been done)" becomes two phrases, and
 * "[a|free of]" three.
 */
function variants(say: string): string[] {
  const group = [...say.matchAll(/[([]([^)\]]*)[)\]]/g)].find((match) => match[1]?.includes(' '));
  if (!group) return [say];
  const optional = group[0].startsWith('[');
  const choices = [...(group[1] ?? '').split('|'), ...(optional ? [''] : [])];
  const [before, behind] = [say.slice(0, group.index), say.slice(group.index + group[0].length)];
  return choices.flatMap((choice) => variants(`${before}${choice}${behind}`.replace(/\s+/g, ' ').trim()));
}

const FULL_STOP = 3;

/** Where a match of `parts` ends, or -1. No word of a match but the last may end a sentence. */
function matchEnd(parts: readonly Part[], part: number, tokens: readonly Token[], at: number): number {
  const wanted = parts[part];
  if (!wanted) return at;
  if (part > 0 && at > 0 && (tokens[at - 1]?.stop ?? 0) >= FULL_STOP)
    return parts.slice(part).every((rest) => rest.form === 'gap' || (rest.form === 'one' && rest.optional))
      ? at
      : -1;
  const token = tokens[at];
  if (wanted.form === 'gap') return matchGap(parts, part, wanted.most, tokens, at);
  if (token && (wanted.form === 'any' || wanted.words.has(token.word))) {
    const end = matchEnd(parts, part + 1, tokens, at + 1);
    if (end >= 0) return end;
  }
  return wanted.form === 'one' && wanted.optional ? matchEnd(parts, part + 1, tokens, at) : -1;
}

function matchGap(
  parts: readonly Part[],
  part: number,
  most: number,
  tokens: readonly Token[],
  at: number,
): number {
  for (let skip = 0; skip <= most; skip++) {
    const end = matchEnd(parts, part + 1, tokens, at + skip);
    if (end >= 0) return end;
    if ((tokens[at + skip]?.stop ?? FULL_STOP) >= FULL_STOP) return -1;
  }
  return -1;
}

function firstWords(parts: readonly Part[]): string[] {
  const words: string[] = [];
  for (const part of parts) {
    if (part.form !== 'one') throw new Error('a phrase must begin with a word');
    words.push(...part.words);
    if (!part.optional) break;
  }
  return words;
}

/** A lexicon made ready: finds its phrases in the talk by their first word. Longest match wins, then the earlier entry. */
export class PhraseBook<Entry extends PhraseEntry> {
  readonly #byFirst = new Map<string, { entry: Entry; parts: readonly Part[] }[]>();

  constructor(entries: readonly Entry[]) {
    for (const entry of entries) this.#add(entry);
  }

  #add(entry: Entry): void {
    for (const say of variants(entry.say)) {
      const parts = say.split(' ').map(parsePart);
      for (const word of new Set(firstWords(parts))) {
        const list = this.#byFirst.get(word) ?? [];
        list.push({ entry, parts });
        this.#byFirst.set(word, list);
      }
    }
  }

  matchAt(tokens: readonly Token[], at: number): PhraseMatch<Entry> | null {
    const word = tokens[at]?.word;
    const candidates = word === undefined ? undefined : this.#byFirst.get(word);
    let best: PhraseMatch<Entry> | null = null;
    for (const { entry, parts } of candidates ?? []) {
      const to = matchEnd(parts, 0, tokens, at);
      if (to > at && to > (best?.to ?? at)) best = { entry, from: at, to };
    }
    return best;
  }

  /** All matches in order, none overlapping another. `places` tells where each word was said. */
  all(tokens: readonly Token[], places: ReadonlyMap<string, readonly number[]>): PhraseMatch<Entry>[] {
    const starts = [...this.#byFirst.keys()].flatMap((word) => places.get(word) ?? []).sort((a, b) => a - b);
    const found: PhraseMatch<Entry>[] = [];
    let free = 0;
    for (const at of starts) {
      const match = at < free ? null : this.matchAt(tokens, at);
      if (!match) continue;
      found.push(match);
      free = match.to;
    }
    return found;
  }
}

/** A lexicon of phrases that carry nothing but themselves. */
export const phraseBook = (phrases: readonly string[]): PhraseBook<PhraseEntry> =>
  new PhraseBook(phrases.map((say) => ({ say })));
