import { basesSaid, hints } from '../lexicon/hints';
import type { MakePart } from './part-ids';
import type { Finding } from './question';
import { lowered, type Rest, spend } from './rest';

/** What kind of moment the question is after: a marker's kind, a reading, a joint. */
export function hintsIn(rest: Rest, makePart: MakePart): Finding[] {
  const text = lowered(rest.left);
  const said = hints.flatMap((hint) => {
    const match = hint.says.exec(text);
    return match ? [{ hint, start: match.index, end: match.index + match[0].length }] : [];
  });
  const findings: Finding[] = [];
  for (const { hint, start, end } of said) {
    const { marker, kinds, isSpent } = hint;
    const isKnown = marker !== null && findings.some(({ markerKinds }) => markerKinds?.includes(marker));
    if (isSpent) spend(rest, start, end);
    if (isKnown) continue;
    const means = marker === null ? kinds.join(' or ') : `marker: ${marker}`;
    const part = makePart('marker', rest.text.slice(start, end), means);
    findings.push({ part, kinds, ...(marker === null ? {} : { markerKinds: [marker] }) });
  }
  return findings;
}

/** How the question wants it known: measured, assumed. */
export function basisIn(rest: Rest, makePart: MakePart): Finding[] {
  const text = lowered(rest.left);
  for (const { says, basis } of basesSaid) {
    const match = says.exec(text);
    if (!match) continue;
    const said = spend(rest, match.index, match.index + match[0].length);
    return [{ part: makePart('basis', said, `basis: ${basis}`), basis }];
  }
  return [];
}
