import { linesOf, listOf } from '../lexicon/lines';
import { keysOf, type Stretch } from '../lexicon/phrase-book';
import { signLines } from '../lexicon/signs';

interface Sign {
  means: string;
  things: ReadonlySet<string>;
  states: ReadonlySet<string>;
}

const signs: readonly Sign[] = linesOf(signLines).map((line) => {
  const [means = '', both = ''] = line.split(':').map((part) => part.trim());
  const [things = '', states = ''] = both.split('+');
  return { means, things: keysOfList(things), states: keysOfList(states) };
});

function keysOfList(list: string): ReadonlySet<string> {
  return new Set(listOf(list).map((entry) => keysOf(entry).join(' ')));
}

/**
 * What stretches of a question mean together, by their places: a thing here and what is the matter with it there.
 * @returns for each stretch the words of the concepts that it has a part in
 */
export function meantTogether(stretches: readonly Stretch[]): string[][] {
  const keys = stretches.map(keysIn);
  const meant = stretches.map((): string[] => []);
  for (const { means, things, states } of signs) {
    const thing = keys.findIndex((each) => each.some((key) => things.has(key)));
    const state = keys.findIndex((each, at) => at !== thing && each.some((key) => states.has(key)));
    if (thing < 0 || state < 0) continue;
    meant[thing]?.push(means);
    meant[state]?.push(means);
  }
  return meant;
}

/** The words of a stretch as phrases know them, each and all together. */
function keysIn({ words }: Stretch): string[] {
  const each = words.flatMap(({ word }) => keysOf(word));
  return [...each, each.join(' ')];
}
