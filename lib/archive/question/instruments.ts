import { instrumentTypes } from '@/shared/instruments';
import { instrumentsSaid } from '../lexicon/instruments-said';
import type { MakePart } from './part-ids';
import type { Finding } from './question';
import { lowered, type Rest, spend } from './rest';

interface Said {
  start: number;
  end: number;
  types: readonly string[];
  isWordToo: boolean;
}

const started: ReadonlySet<string> = new Set(instrumentTypes);

/** Instrument types that a question names. A word that says more than its type ("cello") is left to be looked for. */
export function instrumentsIn(rest: Rest, own: readonly string[], makePart: MakePart): Finding[] {
  const findings: Finding[] = [];
  for (const find of [ownTypeIn(own), knownTypeIn]) {
    for (let said = find(rest.left, 0); said; said = find(rest.left, said.end)) {
      const words = rest.text.slice(said.start, said.end);
      if (!said.isWordToo) spend(rest, said.start, said.end);
      findings.push({
        part: makePart('instrument', words, said.types.join(' or ')),
        instruments: said.types,
      });
    }
  }
  return findings;
}

function knownTypeIn(left: string, from: number): Said | null {
  const text = lowered(left);
  const found = instrumentsSaid.flatMap(({ says, types, isWordToo = false }) =>
    [...text.matchAll(new RegExp(says, 'g'))]
      .filter(({ index }) => index >= from)
      .map((match) => ({ start: match.index, end: match.index + match[0].length, types, isWordToo })),
  );
  // The first in the text; of those that begin there, the first of the list, which is the longest way to say it.
  return found.reduce<Said | null>((best, each) => (best && best.start <= each.start ? best : each), null);
}

/** The workshop's own types, as they are written or with an s. */
function ownTypeIn(own: readonly string[]) {
  const types = own.filter((type) => !started.has(type) && type.trim() !== '');
  return (left: string, from: number): Said | null => {
    const text = lowered(left);
    for (const type of types) {
      const start = text.indexOf(type.toLowerCase(), from);
      const end = start + type.length;
      const isWhole =
        start >= 0 &&
        !/[\p{L}\d]$/u.test(text.slice(0, start)) &&
        !/^(?!s?(?![\p{L}\d]))/u.test(text.slice(end));
      if (isWhole) return { start, end, types: [type], isWordToo: false };
    }
    return null;
  };
}
