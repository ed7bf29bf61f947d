import { NOT_OPEN, OPEN_WORDS } from '../lexicon/reading-cues';
import { PhraseBook } from '../words/phrases';
import type { ConductorPair } from './conductors';
import { Marks } from './marks';
import { emptyReading, type ReadingCandidate } from './reading-candidate';
import { pairBehind, type Scene } from './scene';
import { gapMs } from './talk';

const BOOK = new PhraseBook([
  ...OPEN_WORDS.map((entry) => ({ ...entry, open: true })),
  ...NOT_OPEN.map((entry) => ({ ...entry, open: false })),
]);
const PAIR_LASTS_MS = 8000;
const FURTHEST_WORDS = 24;
const FURTHEST_SUBJECT_WORDS = 4;

function openReading(
  scene: Scene,
  span: { from: number; to: number },
  pair: ConductorPair | null,
  subject: string,
): ReadingCandidate {
  const pickup = scene.subjects.pickup(span.to)?.name ?? null;
  return {
    ...span,
    confidence: pair?.wires ? 0.95 : 0.8,
    ownSubject: true,
    about: subject || pickup,
    payload: {
      ...emptyReading,
      kind: 'resistance',
      open: true,
      unit: 'Ω',
      between: pair ? [pair.names[0], pair.names[1]] : null,
      subject: subject || (pickup ?? ''),
    },
  };
}

/** The pairs that "nothing" is about: those named since the last value, or one right behind. */
function pairsOpen(scene: Scene, from: number, to: number, notBefore: number): ConductorPair[] {
  const named = scene.pairs
    .within(notBefore, from)
    .filter(
      (pair) =>
        pair.to <= from &&
        from - pair.to <= FURTHEST_WORDS &&
        gapMs(scene.talk, pair.to - 1, from) <= PAIR_LASTS_MS,
    );
  if (named.length > 0) {
    const both = scene.talk.tokens
      .slice(named[0]?.to, to)
      .some(({ word }) => /^(?:both|all|neither|either|each)$/.test(word));
    return both ? named : named.slice(-1);
  }
  const behind = pairBehind(scene, to, scene.talk.tokens.length);
  return behind && gapMs(scene.talk, to - 1, behind.from) <= 2000 ? [behind] : [];
}

/** "nothing", "no reading", "open" between two named conductors, or at a pickup named right before. */
export function openReadings(scene: Scene, values: readonly ReadingCandidate[]): ReadingCandidate[] {
  const found: ReadingCandidate[] = [];
  for (const mark of new Marks(scene.talk, BOOK).index.list) {
    if (!mark.entry.open || scene.noReading.expected(mark.from)) continue;
    const lastValue = values.findLast((value) => value.to <= mark.from)?.to ?? 0;
    const notBefore = Math.max(lastValue, found.at(-1)?.to ?? 0);
    const pairs = pairsOpen(scene, mark.from, mark.to, notBefore);
    for (const pair of pairs)
      found.push(
        openReading(
          scene,
          { from: Math.min(pair.from, mark.from), to: Math.max(mark.to, pair.to) },
          pair,
          '',
        ),
      );
    const near = Math.max(notBefore, mark.from - FURTHEST_SUBJECT_WORDS);
    const pickup = pairs.length === 0 ? scene.subjects.ahead(mark.from, near, ['pickup']) : null;
    if (pickup) found.push(openReading(scene, { from: pickup.from, to: mark.to }, null, pickup.name));
  }
  return found;
}
