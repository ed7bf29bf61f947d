import type { Claim } from '@/shared/claims';
import type { LooseEnd } from '@/shared/loose-ends';
import { type ClaimGroup, contradictions } from '../claims';
import type { LooseEndFacts, TraceFacts } from './facts';
import { quoted, sayList, sayPickup } from './say';

/** Readings of a pickup that cannot all be right, and certain claims that cannot all be true. */
export function contradictionEnds(facts: LooseEndFacts): LooseEnd[] {
  return [...facts.traces.flatMap((trace) => traceContradictions(trace, facts)), ...claimEnds(facts)];
}

function traceContradictions(trace: TraceFacts, { readings }: LooseEndFacts): LooseEnd[] {
  const { id, subject } = trace.worksheet;
  return trace.analysis.contradictions.map((contradiction) => {
    const named = readings.filter((reading) => contradiction.readings.includes(reading.id));
    return {
      id: `contradiction:${id}:${hash(contradiction.key)}`,
      kind: 'contradiction',
      sentence: `On ${sayPickup(subject)}, ${midSentence(contradiction.text)}`,
      since: Math.max(trace.createdAt, ...named.map(({ createdAt }) => createdAt)),
      place: { on: 'trace', traceId: id },
    };
  });
}

/** A sentence as it goes on behind a comma: its capital is only that of a beginning. */
function midSentence(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** FNV-1a, 32 bit: keys name terminals at any length, ids are short. */
function hash(text: string): string {
  let value = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193);
  return (value >>> 0).toString(36);
}

type ClaimFacts = LooseEndFacts['claims'][number];

function claimEnds({ claims }: LooseEndFacts): LooseEnd[] {
  const certain = claims
    .filter(({ sure }) => sure === 'certain')
    .sort((a, b) => a.createdAt - b.createdAt || (a.id < b.id ? -1 : 1));
  return contradictions(certain).flatMap((group): LooseEnd[] => {
    const all = group.sides.flat();
    const [first] = all;
    if (!first) return [];
    return [
      {
        id: `contradiction:${first.id}`,
        kind: 'contradiction',
        sentence: sayClaims(group),
        since: Math.max(...all.map(({ createdAt }) => createdAt)),
        place: { on: 'ticket', anchor: first.id },
      },
    ];
  });
}

function sayClaims({ kind, subject, sides }: ClaimGroup<ClaimFacts>): string {
  const values = sides.flatMap(([first]) => (first ? [quoted(first.value)] : []));
  const all = values.length === 2 ? 'both' : 'all';
  return `What is called certain about ${sayAbout(kind, subject)} cannot ${all} be true: ${sayList(values)}.`;
}

function sayAbout(kind: Claim['kind'], subject: string | null): string {
  const named = subject?.trim() ? quoted(subject) : null;
  if (kind === 'other') return named ?? 'the instrument';
  const what = kind === 'original part' ? 'the origin' : `the ${kind}`;
  return named ? `${what} of ${named}` : what;
}
