import type { FindableKind } from '@/shared/archive';
import type { MarkerKind } from '@/shared/markers';
import type { Basis } from '@/shared/readings';

export interface Hint {
  says: RegExp;
  marker: MarkerKind | null;
  kinds: readonly FindableKind[];
  /** The words say only this, and are not looked for. */
  isSpent?: true;
}

/** What kind of moment a question is after, by its words. */
export const hints: readonly Hint[] = [
  {
    says: /\b(?:trac(?:e|ed|ing)|figured? out the (?:wires|colou?rs))\b/,
    marker: 'measurement',
    kinds: ['trace', 'joint'],
  },
  {
    says: /\b(?:did (?:i|it|we|that|they) (?:measure|read|come out at)|(?:i|we) measured?|what (?:did|does) .{0,40}\b(?:measure|read)\b(?=\W*$))/,
    marker: 'measurement',
    kinds: ['reading'],
    isSpent: true,
  },
  {
    says: /\b(?:readings?|measurements?|measured|measuring|ohms)\b/,
    marker: 'measurement',
    kinds: ['reading'],
  },
  {
    says: /\b(?:wir(?:ed|ing)|solder(?:ed)? (?:to|together)|joined|hooked up)\b/,
    marker: null,
    kinds: ['joint', 'trace'],
  },
  {
    says: /\b(?:diagnos\w+|culprit|caus(?:e|ed|ing)|what was wrong|fault ?finding|why (?:did|was|is|does))\b/,
    marker: 'diagnosis',
    kinds: ['marker'],
  },
  {
    says: /\b(?:intake|(?:when|as|how) it (?:came in|arrived)|came in with|came in as|brought in)\b/,
    marker: 'intake',
    kinds: ['marker'],
    isSpent: true,
  },
  {
    says: /\b(?:end result|final (?:test|result|sound)|sound test|play test|turn(?:ed)? out|sounded (?:after|at the end))\b/,
    marker: 'result',
    kinds: ['marker'],
    isSpent: true,
  },
  {
    says: /\b(?:did (?:i|we) (?:fix|repair|mend|cure|sort|do|replace|make|set)|fixed|repaired|mended|cured)\b/,
    marker: 'work',
    kinds: ['work', 'marker'],
  },
  {
    says: /\b(?:(?:which|what) parts?|spare|part number|did (?:i|we) fit|(?:i|we) fitted)\b/,
    marker: null,
    kinds: ['part'],
  },
  {
    says: /\b(?:serials?|genuine|fake|what year|how old|dated)\b/,
    marker: null,
    kinds: ['claim', 'instrument'],
  },
];

interface BasisSaid {
  says: RegExp;
  basis: Basis;
}

/** How a question names the way in which something is known; the first that fits counts. */
export const basesSaid: readonly BasisSaid[] = [
  {
    says: /\b(?:measured,? (?:and )?not (?:assumed|guessed)|not (?:assumed|guessed)|(?:only|actually|really) measured|measured (?:values?|readings?|ones|only|conductors?)|basis measured)\b/,
    basis: 'measured',
  },
  {
    says: /\b(?:not (?:yet )?(?:measured|verified|confirmed|checked)|never (?:measured|verified|confirmed)|unmeasured|unverified|unconfirmed|assum(?:ed|ption)s?|guessed|presumed)\b/,
    basis: 'assumed',
  },
  { says: /\b(?:implied|inferred|deduced)\b/, basis: 'implied' },
  { says: /\b(?:stated|claimed|hearsay)\b/, basis: 'stated' },
];
