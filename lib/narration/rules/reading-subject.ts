import type { Measured } from './measured';
import { pairBefore, pairBehind, type Scene } from './scene';
import type { Sorts, SubjectMention } from './subjects';

const PAIR_LASTS_MS = 12_000;

/** Which things a kind of reading can be about. */
const SORTS_OF_KIND: Readonly<Record<string, Sorts>> = {
  'string-height': ['string', 'side'],
  'nut-slot-depth': ['string'],
  intonation: ['string'],
  pitch: ['string'],
  'string-tension': ['string'],
  'pickup-height': ['pickup', 'side', 'string'],
  resistance: ['pickup', 'part', 'row', 'whole'],
  inductance: ['pickup', 'row', 'whole'],
  voltage: ['part', 'pickup'],
  current: ['part'],
  'plate-voltage': ['part'],
  'bias-current': ['part'],
  capacitance: ['part'],
  'fret-height': ['fret'],
};
const WITH_FRET = new Set(['string-height', 'intonation']);
const WITH_PICKUP = new Set(['resistance', 'inductance', 'polarity-kick', 'pickup-height']);
const WITH_PAIR = new Set(['resistance', 'inductance', 'capacitance', 'voltage', 'polarity-kick']);

export interface SubjectFound {
  readonly subject: string;
  readonly between: readonly [string, string] | null;
  readonly own: boolean;
  readonly about: string | null;
}

export interface Window {
  /** Nothing before this token belongs to the value. */
  readonly notBefore: number;
  /** Nor from this one on. */
  readonly before: number;
}

/** The subject and the terminals of a value, from the words near by. */
export function subjectFor(
  scene: Scene,
  kind: string,
  at: Pick<Measured, 'from' | 'to'>,
  window: Window,
): SubjectFound {
  const sorts = SORTS_OF_KIND[kind] ?? [];
  const behind = scene.subjects.behind(at.to, window.before, sorts);
  const mention = behind ?? scene.subjects.ahead(at.from, window.notBefore, sorts);
  const pair = WITH_PAIR.has(kind) && mention?.sort !== 'whole' ? pairFor(scene, at, window) : null;
  const parts = subjectParts(scene, kind, at.from, window, mention);
  const pickup = WITH_PICKUP.has(kind) ? (scene.subjects.pickup(at.from)?.name ?? null) : null;
  return {
    subject: parts.join(', '),
    between: pair,
    own: mention !== null || pair !== null,
    about: mention?.sort === 'pickup' ? mention.name : pickup,
  };
}

function pairFor(
  scene: Scene,
  at: Pick<Measured, 'from' | 'to'>,
  window: Window,
): readonly [string, string] | null {
  const pair =
    pairBehind(scene, at.to, window.before) ?? pairBefore(scene, at.from, window.notBefore, PAIR_LASTS_MS);
  return pair?.names ?? null;
}

function subjectParts(
  scene: Scene,
  kind: string,
  at: number,
  window: Window,
  mention: SubjectMention | null,
): readonly string[] {
  const parts = mention ? [mention.name] : [];
  if (WITH_FRET.has(kind)) {
    const fret = scene.subjects.fret(at);
    return fret ? [...parts, fret.name] : parts;
  }
  if (!WITH_PICKUP.has(kind) || mention?.sort === 'pickup') return withSide(scene, kind, at, window, parts);
  if (mention?.sort === 'part') return parts;
  const pickup = scene.subjects.pickup(at);
  return pickup ? [pickup.name, ...parts] : parts;
}

function withSide(
  scene: Scene,
  kind: string,
  at: number,
  window: Window,
  parts: readonly string[],
): readonly string[] {
  const side = kind === 'pickup-height' ? scene.subjects.ahead(at, window.notBefore, ['side']) : null;
  return side && !parts.includes(side.name) ? [...parts, side.name] : parts;
}
