import { CORRECTING } from '../lexicon/reading-cues';
import { MM_PER } from '../lexicon/reading-topics';
import { PhraseBook } from '../words/phrases';
import type { ReadingCandidate } from './reading-candidate';
import { gapMs, type Talk, wordAt } from './talk';

const CORRECTION = new PhraseBook(CORRECTING);
const CORRECTION_WITHIN_MS = 6000;
const CORRECTION_WITHIN_WORDS = 9;
const REFINEMENT_WITHIN_MS = 8000;
/** A value with two digits may well be measured twice; with three or more it is being repeated. */
const SHORT_REPEAT_MS = 45_000;

const FACTOR: Readonly<Record<string, number>> = {
  kΩ: 1e3,
  MΩ: 1e6,
  mV: 1e-3,
  mA: 1e-3,
  µA: 1e-6,
  µF: 1e-6,
  nF: 1e-9,
  pF: 1e-12,
  mH: 1e-3,
  kg: 1000,
  oz: 28.349523125,
  ...MM_PER,
};
const base = ({ payload }: ReadingCandidate): number => (payload.value ?? 0) * (FACTOR[payload.unit] ?? 1);

const places = (digits: string): number => digits.split('.')[1]?.length ?? 0;
const significant = (digits: string): number => digits.replace(/^-?0*\.?0*/, '').replace('.', '').length;

/** Whether the later one may be about the same thing: nothing said of both differs. */
function compatible(a: ReadingCandidate, b: ReadingCandidate): boolean {
  const [p, q] = [a.payload, b.payload];
  if (p.kind !== q.kind || p.open !== q.open) return false;
  const pairs = !p.between || !q.between || p.between.every((name) => q.between?.includes(name));
  const subjects =
    p.subject === '' ||
    q.subject === '' ||
    p.subject.includes(q.subject) ||
    q.subject.includes(p.subject) ||
    !b.ownSubject;
  return pairs && subjects;
}

/** "no", "sorry", "or rather" between two values, or "rather", "I should say" behind the later one. */
function isCorrected(talk: Talk, before: ReadingCandidate, later: ReadingCandidate): boolean {
  if (before.payload.kind !== later.payload.kind || before.payload.open || later.payload.open) return false;
  if (
    later.from - before.to > CORRECTION_WITHIN_WORDS ||
    gapMs(talk, before.to - 1, later.from) > CORRECTION_WITHIN_MS
  )
    return false;
  for (let at = before.to; at < later.from; at++) {
    if (wordAt(talk, at) === 'or' && later.from - at > 3) continue;
    if (CORRECTION.matchAt(talk.tokens, at)) return true;
  }
  return later.from - before.to <= 2 && wordAt(talk, later.to) === 'rather';
}

/** "fifty… fifty-one thou": the round number right before was only begun. */
function isHesitation(before: ReadingCandidate, later: ReadingCandidate): boolean {
  const [a, b] = [before.payload.value ?? 0, later.payload.value ?? 0];
  return later.from - before.to <= 1 && a >= 20 && a % 10 === 0 && b > a && b < a + 10;
}

/** "three point nine, three point nine seven one": the later value only says more digits of the one before. */
function isRefined(talk: Talk, before: ReadingCandidate, later: ReadingCandidate): boolean {
  const [a, b] = [before.payload, later.payload];
  if (a.value === null || b.value === null || a.unit !== b.unit || a.digits === null || b.digits === null)
    return false;
  if (!compatible(before, later) || gapMs(talk, before.to - 1, later.from) > REFINEMENT_WITHIN_MS)
    return false;
  if (later.ownSubject && before.ownSubject && a.subject !== b.subject) return false;
  if (isHesitation(before, later)) return true;
  const rounded = Math.abs(a.value - b.value) < 10 ** -places(a.digits);
  return rounded && places(b.digits) > places(a.digits);
}

/** "a hundred and ten thou, which is two point eight millimetres": the same length in another unit. */
function isConverted(talk: Talk, before: ReadingCandidate, later: ReadingCandidate): boolean {
  const [a, b] = [before.payload, later.payload];
  if (a.unit === b.unit || a.value === null || b.value === null || b.digits === null) return false;
  if (gapMs(talk, before.to - 1, later.from) > 5000 || !compatible(before, later)) return false;
  const step = 10 ** -places(b.digits) * (FACTOR[b.unit] ?? 1);
  return Math.abs(base(before) - base(later)) <= Math.max(step / 2, Math.abs(base(later)) * 0.02);
}

function isRepeat(talk: Talk, before: ReadingCandidate, later: ReadingCandidate): boolean {
  if (!compatible(before, later)) return false;
  const gap = gapMs(talk, before.to - 1, later.from);
  if (before.payload.open) return gap <= SHORT_REPEAT_MS * 2;
  if (before.payload.kind === 'polarity-kick')
    return (
      gap <= SHORT_REPEAT_MS &&
      before.payload.sign === later.payload.sign &&
      before.payload.subject === later.payload.subject
    );
  if (Math.abs(base(before) - base(later)) > 1e-9 + Math.abs(base(before)) * 1e-6) return false;
  if (later.ownSubject && before.ownSubject && before.payload.subject !== later.payload.subject) return false;
  return gap <= SHORT_REPEAT_MS || significant(before.payload.digits ?? '') >= 3;
}

/** What was said of the earlier value holds for the one that takes its place. */
function takingOver(before: ReadingCandidate, later: ReadingCandidate): ReadingCandidate {
  return {
    ...later,
    from: before.from,
    ownSubject: before.ownSubject || later.ownSubject,
    about: later.about ?? before.about,
    payload: {
      ...later.payload,
      between: later.payload.between ?? before.payload.between,
      subject: later.ownSubject ? later.payload.subject : before.payload.subject || later.payload.subject,
    },
  };
}

/** Sorts out corrections, refinements and repeats: each measurement stays once, as it was last said. */
export function settleReadings(talk: Talk, candidates: readonly ReadingCandidate[]): ReadingCandidate[] {
  const kept: ReadingCandidate[] = [];
  for (const candidate of [...candidates].sort((a, b) => a.from - b.from)) {
    const before = kept.at(-1);
    const replaces = before && (isCorrected(talk, before, candidate) || isRefined(talk, before, candidate));
    if (before && replaces) kept[kept.length - 1] = takingOver(before, candidate);
    else if (
      !kept.some(
        (one) => isRepeat(talk, one, candidate) || (one === before && isConverted(talk, one, candidate)),
      )
    )
      kept.push(candidate);
  }
  return kept;
}
