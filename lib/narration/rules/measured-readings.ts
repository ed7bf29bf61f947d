import type { Quantity } from '../lexicon/unit-words';
import { STOP } from '../words/token';
import { bareReading } from './bare-readings';
import type { Measured } from './measured';
import { emptyReading, type ReadingCandidate } from './reading-candidate';
import { isStrung, type KindFound, kindFor, plausibleLength } from './reading-kind';
import { subjectFor, type Window } from './reading-subject';
import type { Scene } from './scene';
import { gapMs, stopAt, wordAt } from './talk';

const HUMIDITY_LASTS_MS = 90_000;
const CONFIDENCE = { said: 0.95, carried: 0.85, default: 0.75 } as const;
const HOT_THINGS = new Set(['iron', 'soldering', 'glue', 'oven', 'gun', 'hotplate', 'pot']);

/** Whether one of these kinds was named in the sentence, or not long before. */
function topicNear(scene: Scene, at: number, kinds: readonly string[], withinMs: number): boolean {
  const sentence = scene.talk.sentenceOf[at];
  const near = scene.topics
    .within(sentence?.from ?? 0, sentence?.to ?? at)
    .some((topic) => kinds.includes(topic.entry.kind));
  if (near) return true;
  const last = scene.topics.index.lastUpTo(at, (topic) => kinds.includes(topic.entry.kind));
  return last !== undefined && gapMs(scene.talk, last.to - 1, at) <= withinMs;
}

function inSentence(scene: Scene, at: number, words: ReadonlySet<string>): boolean {
  const sentence = scene.talk.sentenceOf[at];
  return scene.talk.tokens.slice(sentence?.from, sentence?.to).some((token) => words.has(token.word));
}

/** Units that mean a reading only in the right company. */
function unitFits(scene: Scene, measured: Measured): boolean {
  const { from, quantity, value } = measured;
  switch (quantity) {
    case 'humidity':
      return topicNear(scene, from, ['humidity'], HUMIDITY_LASTS_MS) && value <= 100;
    case 'temperature':
      return temperatureFits(scene, measured);
    case 'force':
      return topicNear(scene, from, ['string-tension', 'mass'], 0);
    case 'mass':
      return wordAt(scene.talk, measured.unitFrom) !== 'g' || topicNear(scene, from, ['mass'], 0);
    case 'cents':
      return wordAt(scene.talk, measured.to) !== 'each' && isStrung(scene.talk.context.instrumentType);
    case 'frequency':
      return !(
        wordAt(scene.talk, from - 1) === 'at' && topicNear(scene, from, ['inductance', 'capacitance'], 5000)
      );
    default:
      return true;
  }
}

function temperatureFits(scene: Scene, { from, unitFrom, to, value }: Measured): boolean {
  if (inSentence(scene, from, HOT_THINGS)) return false;
  const here = wordAt(scene.talk, to) === 'in' && ['here', 'the'].includes(wordAt(scene.talk, to + 1));
  return (
    here ||
    to - unitFrom > 1 ||
    (topicNear(scene, from, ['humidity', 'temperature'], HUMIDITY_LASTS_MS) && value < 120)
  );
}

/** "forty-seven microfarads at five hundred volts": what a capacitor is made for. */
function isRating(scene: Scene, measured: Measured, index: number): boolean {
  const next = scene.measured.list[index + 1];
  const before = scene.measured.list[index - 1];
  const rated = (cap: Measured | undefined, volts: Measured | undefined): boolean =>
    cap?.quantity === 'capacitance' && volts?.quantity === 'voltage' && volts.from - cap.to <= 1;
  return rated(measured, next) || rated(before, measured);
}

/** "about", "roughly" take a little away from how sure it is. */
const isRough = (scene: Scene, from: number): boolean =>
  /^(?:about|around|roughly|nearly|maybe|almost)$/.test(wordAt(scene.talk, from - 1));

function finish(
  scene: Scene,
  measured: Measured,
  quantity: Quantity,
  found: KindFound,
  window: Window,
): ReadingCandidate {
  const length =
    quantity === 'length'
      ? plausibleLength(found.kind, measured)
      : { kind: atAPlate(scene, found.kind, measured, window), unit: measured.unit };
  const { subject, between, own, about } = subjectFor(scene, length.kind, measured, window);
  const flat = quantity === 'cents' && wordAt(scene.talk, measured.to) === 'flat' && measured.value > 0;
  const value = flat ? -measured.value : measured.value;
  return {
    from: measured.from,
    to: measured.to,
    confidence: CONFIDENCE[found.by] - (isRough(scene, measured.from) ? 0.05 : 0),
    ownSubject: own,
    about,
    payload: {
      ...emptyReading,
      kind: length.kind,
      value,
      digits: flat ? `-${measured.digits}` : measured.digits,
      unit: quantity === 'temperature' && measured.value > 45 ? '°F' : length.unit,
      between: between ? [between[0], between[1]] : null,
      subject,
    },
  };
}

/** "… and one point one on the cathode": the plate was only named before. */
function atAPlate(scene: Scene, kind: string, at: Measured, window: Window): string {
  if (kind !== 'plate-voltage') return kind;
  const { subject } = subjectFor(scene, kind, at, window);
  return subject === '' || subject === 'plate' ? kind : 'voltage';
}

/** "four oh eight k" between the ends of a coil: the point was swallowed. */
function withSwallowedPoint(scene: Scene, measured: Measured, between: boolean): Measured {
  const threeDigits = /^\d0\d$/.test(measured.digits) && wordAt(scene.talk, measured.from + 1) !== 'hundred';
  const inWords = measured.unitFrom - measured.from === 3;
  if (measured.unit !== 'kΩ' || !threeDigits || !inWords || !between) return measured;
  const digits = `${measured.digits.charAt(0)}.${measured.digits.slice(1)}`;
  return { ...measured, digits, value: Number(digits) };
}

function unitReading(
  scene: Scene,
  measured: Measured,
  window: Window,
  index: number,
): ReadingCandidate | null {
  const { quantity } = measured;
  if (quantity === null || quantity === 'none' || (measured.shape === 'row' && measured.digits.length > 4))
    return null;
  if (!unitFits(scene, measured) || isRating(scene, measured, index)) return null;
  if (scene.noReading.rulesOut(measured)) return null;
  const strings = subjectFor(scene, 'string-height', measured, window);
  const namesString = strings.own && isStrung(scene.talk.context.instrumentType);
  const found = kindFor(scene, measured, quantity, namesString);
  if (isUnfounded(scene, measured, window, found)) return null;
  const pairSaid = subjectFor(scene, 'resistance', measured, window);
  const whole = withSwallowedPoint(scene, measured, pairSaid.between !== null || pairSaid.about !== null);
  const candidate = finish(scene, whole, quantity, found, window);
  return whole === measured ? candidate : { ...candidate, confidence: 0.5 };
}

/** Kinds that need more than a number and a unit: somebody saying so, or a topic or subject to go with it. */
function isUnfounded(scene: Scene, measured: Measured, window: Window, found: KindFound): boolean {
  if (found.kind === 'length' && found.by !== 'said') return true;
  if (scene.noReading.asserted(measured.from)) return false;
  if (found.kind === 'length') return !topicBefore(scene, measured.from);
  if (found.kind !== 'voltage' && found.kind !== 'current') return false;
  const placed =
    PLACED.has(wordAt(scene.talk, measured.to)) || stopAt(scene.talk, measured.to - 1) >= STOP.full;
  return found.by !== 'said' && !placed && !subjectFor(scene, found.kind, measured, window).own;
}

const PLACED = new Set(['across', 'on', 'at', 'between', 'rms', 'ac', 'dc', 'there', 'here']);

const topicBefore = (scene: Scene, at: number): boolean =>
  scene.topics.within(scene.talk.sentenceOf[at]?.from ?? 0, at).length > 0;

/** Words right behind an apparent reading that make it a trial with a gauge: "ten thou goes, twelve doesn't". */
const TRIAL = new Set(['goes', 'fits', 'slides', 'slips', 'went', "won't", "doesn't"]);
const isTrial = (scene: Scene, measured: Measured): boolean =>
  measured.quantity === 'length' &&
  stopAt(scene.talk, measured.to - 1) < STOP.soft &&
  TRIAL.has(wordAt(scene.talk, measured.to));

/** "I've brought it down to two point two": what was measured before is measured again. */
function saysIt(scene: Scene, reading: ReadingCandidate): boolean {
  if (reading.payload.kind !== 'string-height' || reading.ownSubject) return false;
  const from = Math.max(scene.talk.sentenceOf[reading.from]?.from ?? 0, reading.from - 8);
  return scene.talk.tokens
    .slice(from, reading.from)
    .some(({ word }) => word === 'it' || word === "it's" || word === 'that');
}

function onSameString(reading: ReadingCandidate, last: ReadingCandidate): ReadingCandidate {
  if (last.payload.kind !== reading.payload.kind || last.payload.subject === '') return reading;
  return { ...reading, payload: { ...reading.payload, subject: last.payload.subject } };
}

/** Readings with a number, in order; bare numbers take kind and unit from what was read before. */
export function measuredReadings(scene: Scene): ReadingCandidate[] {
  const found: ReadingCandidate[] = [];
  scene.measured.list.forEach((measured, index) => {
    const last = found.at(-1);
    const window: Window = {
      notBefore: last?.to ?? 0,
      before:
        scene.measured.firstFrom(measured.to, (next) => next.quantity !== null)?.from ??
        scene.talk.tokens.length,
    };
    if (isTrial(scene, measured)) return;
    const reading =
      measured.quantity === null
        ? bareReading(scene, measured, window, last ?? null)
        : unitReading(scene, measured, window, index);
    if (reading) found.push(last && saysIt(scene, reading) ? onSameString(reading, last) : reading);
  });
  return found;
}
