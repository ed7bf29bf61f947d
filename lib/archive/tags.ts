import type { Thing } from './things';

/** Words that nobody types, put to the words of a thing so that an index can narrow by what a thing is. */

// They end in q, so that no rule of the stemmer shortens them.
const tag = (of: string, value: string) =>
  `qq${of}${Array.from(value.toLowerCase(), (letter) => letter.codePointAt(0)?.toString(16)).join('')}q`;

export const typeTag = (type: string): string => tag('t', type);
/** A kind of thing or of marker. */
export const kindTag = (kind: string): string => tag('k', kind);
export const basisTag = (basis: string): string => tag('b', basis);

export function tagsOf(type: string, { kind, markerKind, basis }: Thing): string {
  return [typeTag(type), kindTag(kind), markerKind && kindTag(markerKind), basis && basisTag(basis)]
    .filter(Boolean)
    .join(' ');
}
