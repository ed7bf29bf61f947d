import { strungTypes } from '@/shared/instruments';
import { KINDS_OF_QUANTITY, MM_PER, PLAUSIBLE_MM } from '../lexicon/reading-topics';
import type { Quantity } from '../lexicon/unit-words';
import type { Measured } from './measured';
import type { Scene } from './scene';
import { gapMs, wordAt } from './talk';

const TOPIC_LASTS_MS = 30_000;
const TOPIC_BEHIND_WORDS = 8;
const STRUNG: ReadonlySet<string> = new Set(strungTypes);
/** "three point two millimetres wide": right behind the unit. */
const SIZE_WORDS = new Set(['wide', 'long', 'thick', 'across', 'apart', 'diameter', 'square', 'round']);

export interface KindFound {
  readonly kind: string;
  /** How it was found: said in the same sentence, carried on from before, or only by default. */
  readonly by: 'said' | 'carried' | 'default';
}

const VALVE_KINDS = new Set(['plate-voltage', 'bias-current']);

/** Plates and bias only where there are valves. */
function kindsFor(scene: Scene, quantity: Quantity): readonly string[] {
  const valves = ['valve amplifier', 'other'].includes(scene.talk.context.instrumentType);
  return (KINDS_OF_QUANTITY[quantity] ?? []).filter((kind) => valves || !VALVE_KINDS.has(kind));
}

/** The kind that the words near by name, among those that the quantity can be. */
export function kindFor(
  scene: Scene,
  measured: Measured,
  quantity: Quantity,
  namesString: boolean,
): KindFound {
  const kinds = kindsFor(scene, quantity);
  const first = kinds[0] ?? quantity;
  if (quantity === 'length' && SIZE_WORDS.has(wordAt(scene.talk, measured.to)))
    return { kind: 'length', by: 'said' };
  const said = saidKind(scene, measured, kinds);
  if (said) return { kind: said, by: 'said' };
  const carried = carriedKind(scene, measured, kinds);
  if (quantity === 'length' && namesString) {
    const ofStrings =
      carried === 'string-height' || carried === 'nut-slot-depth' || carried === 'pickup-height';
    return { kind: ofStrings ? carried : 'string-height', by: ofStrings ? 'carried' : 'default' };
  }
  if (carried) return { kind: carried, by: 'carried' };
  return { kind: first, by: 'default' };
}

/** The nearest topic in the same sentence: before the number first, then shortly behind it. */
function saidKind(scene: Scene, measured: Measured, kinds: readonly string[]): string | null {
  const sentence = scene.talk.sentenceOf[measured.from];
  const before = scene.topics
    .within(sentence?.from ?? 0, measured.from)
    .filter((topic) => kinds.includes(topic.entry.kind));
  const nearest = before.findLast((topic) => !isThing(topic.entry.say)) ?? before.at(-1);
  if (nearest) return nearest.entry.kind;
  const end = Math.min(sentence?.to ?? measured.to, measured.to + TOPIC_BEHIND_WORDS);
  const next = scene.measured.firstFrom(measured.to);
  const behind = scene.topics
    .within(measured.to, Math.min(end, next?.from ?? end))
    .find((topic) => kinds.includes(topic.entry.kind));
  return behind?.entry.kind ?? null;
}

function carriedKind(scene: Scene, measured: Measured, kinds: readonly string[]): string | null {
  const last = scene.topics.index.lastUpTo(
    measured.from,
    (topic) => kinds.includes(topic.entry.kind) && !isThing(topic.entry.say),
  );
  if (!last || gapMs(scene.talk, last.to - 1, measured.from) > TOPIC_LASTS_MS) return null;
  return last.entry.kind;
}

/** The lists of bare things ("saddle", "hole") say what a length is only in their own sentence. */
export const isThing = (say: string): boolean => say.startsWith('(wide|') || say.startsWith('(thinnest|');

/** Whether a bare string name may mean a height at all. */
export const isStrung = (instrumentType: string): boolean => STRUNG.has(instrumentType);

/** Brings a length into a unit and a kind that can be: ten mil of relief are ten thou. */
export function plausibleLength(kind: string, measured: Measured): { kind: string; unit: string } {
  const fits = (unit: string): boolean => {
    const [low, high] = PLAUSIBLE_MM[kind] ?? [0, Number.POSITIVE_INFINITY];
    const mm = measured.value * (MM_PER[unit] ?? 1);
    return mm >= low && mm <= high;
  };
  if (fits(measured.unit)) return { kind, unit: measured.unit };
  if (measured.orUnit !== null && fits(measured.orUnit)) return { kind, unit: measured.orUnit };
  return { kind: 'length', unit: measured.unit };
}
