import type { Claim } from '@/shared/claims';
import { folded } from './findable';
import { yearSpans } from './year-spans';

type Comparable = Pick<Claim, 'kind' | 'subject' | 'value'>;

/** Claims about the same thing. */
export interface ClaimGroup<C extends Comparable = Claim> {
  kind: Claim['kind'];
  /** As it was first written. */
  subject: string | null;
  /** Claims that can be true together stand on one side; more than one side is a contradiction. */
  sides: C[][];
}

/** Claims by what they are about, in the order in which it first came up. */
export function groupClaims<C extends Comparable>(claims: readonly C[]): ClaimGroup<C>[] {
  const groups = new Map<string, C[]>();
  claims.forEach((claim, index) => {
    const about = aboutOf(claim) ?? `alone ${index}`;
    groups.set(about, [...(groups.get(about) ?? []), claim]);
  });
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first ? [{ kind: first.kind, subject: first.subject, sides: sidesOf(group) }] : [];
  });
}

/** The groups in which claims disagree. */
export function contradictions<C extends Comparable>(claims: readonly C[]): ClaimGroup<C>[] {
  return groupClaims(claims).filter(({ sides }) => sides.length > 1);
}

/**
 * Whether both can be true of the same thing. Years are held against each other as numbers: "1978" and "late 70s" can
 * both be true. Other values agree where they are the same words, whatever their case, accents and punctuation.
 */
export function canBothBeTrue(a: Comparable, b: Comparable): boolean {
  if (plainWords(a.value) === plainWords(b.value)) return true;
  if (a.kind !== 'year') return false;
  const [first, second] = [yearSpans(a.value), yearSpans(b.value)];
  if (!first || !second) return false;
  return first.some(([from, to]) => second.some(([start, end]) => from <= end && start <= to));
}

/** Null where it cannot be told what the claim is about: such a claim stands alone. */
function aboutOf({ kind, subject }: Comparable): string | null {
  const words = subject === null ? '' : plainWords(subject);
  if (words === '' && (kind === 'other' || kind === 'original part')) return null;
  return `${kind} ${words}`;
}

function plainWords(text: string): string {
  return folded(text)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^(?:the|an?) /, '');
}

/** Each claim joins the first side with all of which it can be true. */
function sidesOf<C extends Comparable>(claims: readonly C[]): C[][] {
  const sides: C[][] = [];
  for (const claim of claims) {
    const side = sides.find((others) => others.every((other) => canBothBeTrue(claim, other)));
    if (side) side.push(claim);
    else sides.push([claim]);
  }
  return sides;
}
