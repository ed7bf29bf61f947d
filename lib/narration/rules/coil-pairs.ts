import { ROW_WORDS } from '../lexicon/conductors';
import { STOP, type TokenSpan } from '../words/token';
import type { ConductorPair } from './conductors';
import type { Draft } from './proposal';
import { pairBefore, type Scene } from './scene';
import { gapMs, stopAt, wordAt } from './talk';

const COIL_WORDS = new Set(['coil', 'coils', 'winding', 'windings', 'bobbin', 'bobbins']);
const COPULA = new Set([
  'is',
  "'s",
  'are',
  'were',
  'was',
  'makes',
  'make',
  "they're",
  "that's",
  'being',
  'equals',
  'goes',
  'belong',
  'belongs',
  'form',
  'have',
  'has',
  'be',
]);
const FURTHEST_WORDS = 9;
const ECHO_MS = 15_000;
const ANAPHOR_LASTS_MS = 15_000;
const NEGATED = new Set(["isn't", "aren't", 'not', "can't", 'never', "wasn't"]);

interface CoilWord extends TokenSpan {
  readonly row: string | null;
  /** "the other": a coil only shortly after one. */
  readonly echo?: true;
}

/** "coil", "slug coil", "the slugs": a coil, and its row where that is said. "screw" alone may be hardware. */
function coilWords(scene: Scene): CoilWord[] {
  const found: CoilWord[] = [];
  for (let at = 0; at < scene.talk.tokens.length; at++) {
    const word = wordAt(scene.talk, at);
    const row = ROW_WORDS[word] ?? rowName(word);
    const coilNext = COIL_WORDS.has(wordAt(scene.talk, at + 1)) || wordAt(scene.talk, at + 1) === 'side';
    if (row && coilNext) found.push({ from: at, to: at + 2, row });
    else if (COIL_WORDS.has(word)) found.push({ from: at, to: at + 1, row: null });
    else if (ROW_WORDS[word] && word.endsWith('s'))
      found.push({ from: at, to: at + 1, row: ROW_WORDS[word] ?? null });
    else if (isTheOther(scene, at)) found.push({ from: at, to: at + 1, row: null, echo: true });
    if (row && coilNext) at++;
  }
  return found;
}

const isTheOther = (scene: Scene, at: number): boolean =>
  wordAt(scene.talk, at) === 'other' &&
  wordAt(scene.talk, at - 1) === 'the' &&
  !COIL_WORDS.has(wordAt(scene.talk, at + 1)) &&
  (stopAt(scene.talk, at) >= STOP.soft || ['one', 'two', 'pair'].includes(wordAt(scene.talk, at + 1)));

const ROW_NAMES = new Set([
  'north',
  'south',
  'upper',
  'lower',
  'top',
  'bottom',
  'inner',
  'outer',
  'left',
  'right',
  'adjustable',
]);
const rowName = (word: string): string | null =>
  word === 'adjustable' ? 'screw' : ROW_NAMES.has(word) ? word : null;

const words = (scene: Scene, from: number, to: number): string[] =>
  scene.talk.tokens.slice(from, to).map((token) => token.word);

const says = (scene: Scene, from: number, to: number, set: ReadonlySet<string>): boolean =>
  words(scene, from, to).some((word) => set.has(word));

/** "red and white (are|is) one coil": the pair, a copula, the coil, in one sentence and without a number between. */
function pairThenCoil(scene: Scene, coil: CoilWord): ConductorPair[] {
  const sentence = scene.talk.sentenceOf[coil.from];
  const pair = scene.pairs.lastUpTo(coil.from);
  if (
    !pair ||
    pair.from < (sentence?.from ?? 0) ||
    coil.from - pair.to > FURTHEST_WORDS ||
    !says(scene, pair.to, coil.from, COPULA)
  )
    return [];
  const measuredBetween = decimalBetween(scene, pair.to, coil.from);
  return measuredBetween ? [] : [pair];
}

function decimalBetween(scene: Scene, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (scene.talk.numberFrom.get(at)?.shape === 'decimal') return true;
  return false;
}

/** "one coil is red and white", "our two coils, red green and white black". */
function coilThenPairs(scene: Scene, coil: CoilWord): ConductorPair[] {
  const sentence = scene.talk.sentenceOf[coil.from];
  const end = Math.min(sentence?.to ?? coil.to, coil.to + 14);
  const behind = scene.pairs.within(coil.to, end).filter((pair) => pair.to <= end && pair.wires);
  const first = behind[0];
  if (!first || first.from - coil.to > 4) return [];
  const plural = wordAt(scene.talk, coil.to - 1) === 'coils';
  const linked = says(scene, coil.to, first.from, COPULA) || plural;
  if (!linked) return [];
  return plural ? behind : [first];
}

/** "…and they're the slugs", "that's the screw coil": the pair that was talked about last. */
function anaphor(scene: Scene, coil: CoilWord): ConductorPair[] {
  const before = words(scene, Math.max(0, coil.from - 4), coil.from);
  const points =
    /(?:they're|that's|(?:that|this|it) (?:'s|is|must be)|(?:these|those|they) (?:are|must be)) (?:the|my|our|one|a|one of the)?\s*$/.test(
      before.join(' '),
    );
  if (!points) return [];
  const pair = pairBefore(scene, coil.from, 0, ANAPHOR_LASTS_MS);
  return pair && !coil.echo ? [pair] : [];
}

function draft(scene: Scene, pair: ConductorPair, coil: CoilWord): Draft {
  return {
    type: 'coil-pair',
    from: Math.min(pair.from, coil.from),
    to: Math.max(pair.to, coil.to),
    confidence: coil.row ? 0.9 : 0.85,
    about: scene.subjects.pickup(coil.from)?.name ?? null,
    payload: { conductors: [pair.names[0], pair.names[1]], row: coil.row },
  };
}

const keyOf = (pair: ConductorPair, about: string | null): string =>
  `${about}:${[...pair.names].sort().join('+')}`;

/** Which two conductors are the ends of one coil, and under which row it sits. Said again, it stays one. */
export function findCoilPairs(scene: Scene): Draft[] {
  const known = new Map<string, Set<string | null>>();
  const drafts: Draft[] = [];
  let lastAt = -1;
  for (const coil of coilWords(scene)) {
    const from = scene.talk.sentenceOf[coil.from]?.from ?? 0;
    if (
      says(scene, Math.max(from, coil.from - FURTHEST_WORDS), coil.from, NEGATED) ||
      scene.noReading.supposed(coil.from)
    )
      continue;
    if (coil.echo && !(lastAt >= 0 && gapMs(scene.talk, lastAt, coil.from) < ECHO_MS)) continue;
    const [direct, behind] = [pairThenCoil(scene, coil), coilThenPairs(scene, coil)];
    const pairs = direct.length > 0 ? direct : behind.length > 0 ? behind : anaphor(scene, coil);
    for (const pair of pairs.filter((one) => one.wires)) {
      const about = scene.subjects.pickup(coil.from)?.name ?? null;
      const rows = known.get(keyOf(pair, about)) ?? new Set();
      known.set(keyOf(pair, about), rows);
      if (rows.has(coil.row) || (coil.row === null && rows.size > 0)) continue;
      rows.add(coil.row);
      lastAt = coil.from;
      drafts.push(draft(scene, pair, coil));
    }
  }
  return drafts;
}
