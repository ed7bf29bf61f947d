import { ABOUT } from '../lexicon/reading-cues';
import { KINDS_OF_QUANTITY } from '../lexicon/reading-topics';
import { STOP } from '../words/token';
import type { Measured } from './measured';
import { emptyReading, type ReadingCandidate } from './reading-candidate';
import { isStrung, isThing, kindFor } from './reading-kind';
import { subjectFor, type Window } from './reading-subject';
import type { Scene } from './scene';
import type { Sorts } from './subjects';
import { gapMs, stopAt, wordAt } from './talk';

/** A bare number takes over the unit of a reading no longer ago than this. */
const UNIT_LASTS_MS = 40_000;
const CHAIN_LASTS_MS = 15_000;
const LENT_WITHIN_MS = 8000;

/** A bare number is followed by the end of the thought or one of these, never by a thing that is counted. */
const MAY_FOLLOW = new Set([
  'on',
  'at',
  'for',
  'now',
  'and',
  'so',
  'which',
  "that's",
  'but',
  'there',
  'across',
  'with',
  'today',
  'okay',
  'yeah',
  'exactly',
  'from',
  'over',
  'in',
  'as',
  'when',
  'again',
  'sorry',
  'no',
  'or',
  'too',
  'flat',
  'sharp',
  'this',
  'still',
  'dead',
  'lovely',
  'perfect',
  'spot',
  'after',
  'before',
  'that',
  'because',
  'bang',
  'here',
  'it',
]);

const SHOWING = new Set([
  'is',
  "'s",
  'are',
  'was',
  'reads',
  'reading',
  'read',
  'shows',
  'showing',
  'says',
  'gives',
  'giving',
  'gave',
  'measures',
  'measured',
  'getting',
  'got',
  'get',
  'have',
  'to',
  'call',
  "that's",
  "it's",
  'makes',
  'see',
  'seeing',
  'equals',
  'became',
  'comes',
  'down',
  'up',
  'settles',
  'settling',
  'sitting',
  'sits',
  'pulls',
  'draws',
  'weighs',
  'coming',
  'hits',
]);

/** "it's now about …": a verb of showing, with small words between. */
function isShown(scene: Scene, at: number): boolean {
  let back = at - 1;
  for (let step = 0; step < 3 && ABOUT.has(wordAt(scene.talk, back)); step++) back--;
  return SHOWING.has(wordAt(scene.talk, back));
}

function introduced(scene: Scene, at: number): boolean {
  let back = at - 1;
  if (stopAt(scene.talk, back) >= STOP.soft) return true;
  for (let step = 0; step < 3 && ABOUT.has(wordAt(scene.talk, back)); step++) back--;
  if (SHOWING.has(wordAt(scene.talk, back))) return true;

  const named = scene.pairs.lastUpTo(back + 1)?.to === back + 1 || scene.subjects.endsAt(back + 1);
  return named || wordAt(scene.talk, back) === 'and';
}

const endsThought = (scene: Scene, measured: Measured): boolean =>
  stopAt(scene.talk, measured.to - 1) >= STOP.soft ||
  MAY_FOLLOW.has(wordAt(scene.talk, measured.to)) ||
  SIZES.has(wordAt(scene.talk, measured.to));

const SIZES = new Set(['wide', 'long', 'thick', 'deep', 'tall', 'high']);

interface KindAndUnit {
  readonly kind: string;
  readonly unit: string;
}

const quantityOf = (kind: string): string | undefined =>
  Object.keys(KINDS_OF_QUANTITY).find((quantity) => KINDS_OF_QUANTITY[quantity]?.includes(kind));

/** "…and one point eight on the high E": the reading just before lends its kind and unit. */
function fromChain(
  scene: Scene,
  measured: Measured,
  window: Window,
  last: ReadingCandidate | null,
): KindAndUnit | null {
  if (!last || last.payload.open || last.payload.value === null) return null;
  const ms = gapMs(scene.talk, last.to - 1, measured.from);
  const whole = measured.shape === 'integer';
  if (ms > (whole ? CHAIN_LASTS_MS : UNIT_LASTS_MS)) return null;
  const ratio = measured.value === 0 ? 1 : Math.abs(last.payload.value / measured.value);
  const ownPair =
    !whole &&
    last.payload.kind !== 'resistance' &&
    subjectFor(scene, last.payload.kind, measured, window).own;
  const size = SIZES.has(wordAt(scene.talk, measured.to));
  const alike = size || (ratio < 6 && ratio > 1 / 6) || last.payload.kind === 'intonation' || ownPair;
  return alike ? { kind: last.payload.kind, unit: last.payload.unit } : null;
}

/** Without a reading before: what a decimal means by its subject. Common practice, no source. */
function fromSubject(scene: Scene, measured: Measured, window: Window): KindAndUnit | null {
  const { value } = measured;
  const coil = subjectFor(scene, 'resistance', measured, window);
  if (SIZES.has(wordAt(scene.talk, measured.to))) return lengthBySize(value);
  const kind = kindFor(scene, { ...measured, quantity: 'length' }, 'length', false);
  if (kind.by !== 'default' && kind.kind !== 'length') return lengthByValue(kind.kind, value);
  if (coil.own && value >= 1 && value < 40) return { kind: 'resistance', unit: 'kΩ' };
  const string = subjectFor(scene, 'string-height', measured, window);
  return string.own && isStrung(scene.talk.context.instrumentType)
    ? lengthByValue('string-height', value)
    : null;
}

const lengthBySize = (value: number): KindAndUnit => ({ kind: 'length', unit: value < 1 ? 'in' : 'mm' });

function lengthByValue(kind: string, value: number): KindAndUnit | null {
  if (value > 0 && value < 0.13) return { kind, unit: 'in' };
  return value >= 0.13 && value < 8 ? { kind, unit: 'mm' } : null;
}

/** "five on the fourth": a whole number without a unit needs its string said with it. */
function wholeNumberFits(scene: Scene, measured: Measured, window: Window, kind: string): boolean {
  const sorts: Sorts = ['string', 'side', 'pickup', 'fret'];
  const sentence = scene.talk.sentenceOf[measured.from]?.from ?? 0;
  const ahead = scene.subjects.ahead(measured.from, Math.max(window.notBefore, sentence), sorts);
  const named = scene.subjects.behind(measured.to, window.before, sorts) ?? ahead;
  const zero = measured.value === 0 && kind === 'intonation';
  return named !== null || zero || SIZES.has(wordAt(scene.talk, measured.to));
}

/** "tuned to four forty". Concert pitch and its neighbours, ISO 16. */
function pitchReading(scene: Scene, measured: Measured): boolean {
  const inRange = measured.value >= 415 && measured.value <= 466 && measured.shape !== 'over';
  const sentence = scene.talk.sentenceOf[measured.from];
  const topic = scene.topics
    .within(sentence?.from ?? 0, measured.from)
    .some((one) => one.entry.kind === 'pitch');
  return (
    inRange &&
    (topic || isConcertA(scene, measured, sentence?.from ?? 0)) &&
    endsThought(scene, measured) &&
    !scene.noReading.expected(measured.from)
  );
}

/** "A is spot on at four forty". */
function isConcertA(scene: Scene, measured: Measured, from: number): boolean {
  const mention = scene.subjects.ahead(measured.from, from, ['string']);
  return mention?.name === 'A' && measured.value >= 432 && measured.value <= 446;
}

/** A reading from a number without a unit, where the talk leaves no doubt what it is; else null. */
export function bareReading(
  scene: Scene,
  measured: Measured,
  window: Window,
  last: ReadingCandidate | null,
): ReadingCandidate | null {
  if (pitchReading(scene, measured)) return build(scene, measured, window, { kind: 'pitch', unit: 'Hz' });
  const room = roomReading(scene, measured);
  if (room) return build(scene, measured, window, room);
  if (measured.shape === 'row' || !introduced(scene, measured.from) || !endsThought(scene, measured))
    return null;
  if (scene.noReading.rulesOut(measured)) return null;
  const found =
    fromChain(scene, measured, window, last) ??
    (measured.shape === 'decimal' ? fromSubject(scene, measured, window) : null);
  const lent = found ?? lentUnit(scene, measured);
  if (!found && lent) return carryingSubject(build(scene, measured, window, lent), last);
  if (!found) return null;
  if (measured.shape === 'integer' && !wholeNumberFits(scene, measured, window, found.kind)) {
    const unit = lentUnit(scene, measured);
    return unit && carryingSubject(build(scene, measured, window, unit), last);
  }
  const said = saidOther(scene, measured, found);
  const reading = said && build(scene, measured, window, said);
  return reading && carryingSubject(reading, last);
}

/** "it should be five hundred k and it's actually four sixty-one": the unit is lent by the number before, reading or not. */
function lentUnit(scene: Scene, measured: Measured): KindAndUnit | null {
  const before = scene.measured.lastUpTo(measured.from, (one) => one.quantity !== null);
  if (!before || before.quantity === null || before.quantity === 'none') return null;
  const near = gapMs(scene.talk, before.to - 1, measured.from) <= LENT_WITHIN_MS;
  const ratio = before.value === 0 ? 0 : measured.value / before.value;
  const shown = isShown(scene, measured.from);
  if (!near || ratio < 0.4 || ratio > 2.5 || !shown) return null;
  return { kind: kindFor(scene, measured, before.quantity, false).kind, unit: before.unit };
}

/** "temp is sixty-eight", "humidity's forty-five": air needs no unit when it is named. */
function roomReading(scene: Scene, measured: Measured): KindAndUnit | null {
  const sentence = scene.talk.sentenceOf[measured.from]?.from ?? 0;
  const topic = scene.topics.within(Math.max(sentence, measured.from - 5), measured.from).at(-1)?.entry.kind;
  const plain =
    measured.value > 0 &&
    measured.value < 110 &&
    introduced(scene, measured.from) &&
    endsThought(scene, measured);
  if (!plain || scene.noReading.rulesOut(measured)) return null;
  if (topic === 'humidity' && measured.value <= 100) return { kind: topic, unit: '%RH' };
  return topic === 'temperature' ? { kind: topic, unit: measured.value > 45 ? '°F' : '°C' } : null;
}

/** Another topic in the number's own sentence overrules what was read before. */
function saidOther(scene: Scene, measured: Measured, found: KindAndUnit): KindAndUnit | null {
  const sentence = scene.talk.sentenceOf[measured.from];
  const said = scene.topics.within(sentence?.from ?? 0, measured.from);
  const topic = said.findLast(({ entry }) => !isThing(entry.say))?.entry.kind;
  if (topic === undefined || topic === found.kind) return found;
  if (quantityOf(topic) === quantityOf(found.kind))
    return topic === 'length' ? found : { ...found, kind: topic };
  return quantityOf(topic) === 'length' && measured.shape !== 'integer'
    ? lengthByValue(topic, measured.value)
    : null;
}

/** "and now it's zero": a bare number that names nothing is about what the reading before it was about. */
function carryingSubject(reading: ReadingCandidate, last: ReadingCandidate | null): ReadingCandidate {
  if (!last || reading.ownSubject || last.payload.kind !== reading.payload.kind) return reading;
  return { ...reading, payload: { ...reading.payload, subject: last.payload.subject } };
}

function build(scene: Scene, measured: Measured, window: Window, found: KindAndUnit): ReadingCandidate {
  const { subject, between, own, about } = subjectFor(scene, found.kind, measured, window);
  return {
    from: measured.from,
    to: measured.to,
    confidence: 0.65,
    ownSubject: own,
    about,
    payload: {
      ...emptyReading,
      kind: found.kind,
      unit: found.unit,
      value: measured.value,
      digits: measured.digits,
      between: between ? [between[0], between[1]] : null,
      subject,
    },
  };
}
