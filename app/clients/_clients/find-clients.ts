import { folded, holdsEveryWord } from '@/app/_parts/words';
import type { ClientLine } from '@/shared/clients';

/** A client in the card index, with when a job of theirs was last touched in words. */
export type IndexCard = ClientLine & { touched: string | null };

/** Cards behind one letter. */
export interface Tab {
  letter: string;
  cards: IndexCard[];
}

/** The text that a client is found by, folded. */
export function findableText({ name, alias, reach, notes }: IndexCard): string {
  return folded([name, alias, reach, notes].filter(Boolean).join(' '));
}

/** The cards that hold every word of the question, in the order given. */
export function findCards<T extends { text: string }>(cards: readonly T[], question: string): readonly T[] {
  const wanted = folded(question).trim();
  return wanted === '' ? cards : cards.filter(({ text }) => holdsEveryWord(text, wanted));
}

/** Cards in the order given, behind the letter that each name begins with. */
export function behindLetters(cards: readonly IndexCard[]): Tab[] {
  const tabs: Tab[] = [];
  for (const card of cards) {
    const letter = letterOf(card.name);
    const last = tabs.at(-1);
    if (last?.letter === letter) last.cards.push(card);
    else tabs.push({ letter, cards: [card] });
  }
  return tabs;
}

function letterOf(name: string): string {
  const first = Array.from(folded(name).trim())[0] ?? '';
  return /\p{L}/u.test(first) ? first.toUpperCase() : '0–9';
}
