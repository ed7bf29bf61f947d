import type { PhraseBook, PhraseEntry, PhraseMatch } from '../words/phrases';
import { SpanIndex } from '../words/span-index';
import type { Talk } from './talk';

/** All places where the phrases of a book were said; quick to ask for those in a window. */
export class Marks<Entry extends PhraseEntry> {
  readonly index: SpanIndex<PhraseMatch<Entry>>;
  readonly #covers = new Map<number, PhraseMatch<Entry>>();

  constructor(talk: Talk, book: PhraseBook<Entry>) {
    this.index = new SpanIndex(book.all(talk.tokens, talk.places));
    for (const match of this.index.list)
      for (let at = match.from; at < match.to; at++) this.#covers.set(at, match);
  }

  /** The phrase that this word is part of. */
  at(token: number): PhraseMatch<Entry> | undefined {
    return this.#covers.get(token);
  }

  /** The phrases that begin in `from` up to, not including, `to`. */
  within(from: number, to: number): PhraseMatch<Entry>[] {
    return this.index.within(from, to);
  }
}
