import type { Harness, JackSetting } from '@/shared/jack';
import { sayList, sayOhms } from '../trace/say';
import { positionOf } from './elements';
import { jackSleeve, jackTip } from './places';
import { atJack, type Model, predict, type Range, shapeBetween, sound, wiringOf } from './predict';

type Term = {
  a: number;
  b: number;
  ohms: number;
  words: string;
  shape: 'part' | 'series' | 'parallel';
  pickup: string | null;
};

/** One plain line that says where a number comes from: "neck 8.05 kΩ beside neck volume 500 kΩ". */
export function explainSetting(model: Model, setting: JackSetting, range: Range): string {
  if (range.ohms === 0) return explainShort(model, setting);
  const wiring = wiringOf(model, setting, {});
  const shape = shapeBetween(model, wiring, [jackTip, jackSleeve]);
  if (shape.state === 'open') return 'Nothing joins tip and sleeve here: open.';
  const terms = shape.branches.map(({ a, b, at }): Term => {
    const element = wiring[at];
    return { a, b, ohms: element?.ohms ?? 0, shape: 'part', ...nameOf(model.harness, element?.id ?? '') };
  });
  return `${sayTerms(reduceTerms(terms))}${silentPickups(model.harness, setting, terms)}`;
}

function explainShort(model: Model, setting: JackSetting): string {
  const guilty = model.harness.volumes.filter(
    ({ id }) =>
      setting.down.includes(id) && predict(model, atJack({ ...setting, down: [id] }), sound).ohms === 0,
  );
  const names = guilty.map(({ name }) => name);
  if (!names.length) return 'Tip and sleeve are one point here.';
  const [is, wiper, takes] = names.length > 1 ? ['are', 'wipers', 'take'] : ['is', 'wiper', 'takes'];
  return `${sayList(names)} ${is} down: the ${wiper} ${takes} the jack's tip to ground.`;
}

function nameOf(harness: Harness, id: string): { words: string; pickup: string | null } {
  for (const { id: pickup, subject, coils } of harness.pickups) {
    const coil = coils.findIndex((_, i) => id === `${pickup}.coil${i}`);
    if (coil < 0) continue;
    return { words: coils.length === 1 ? subject : `${subject}'s ${coils[coil]?.name} coil`, pickup };
  }
  const pot = [...harness.volumes, ...harness.tones].find((one) => id === `${one.id}.track`);
  return { words: (pot ?? harness.resistors.find((one) => one.id === id))?.name ?? id, pickup: null };
}

/** Series and parallel pairs become one term, until a single one is left or only a bridge. */
function reduceTerms(all: readonly Term[]): Term[] {
  let terms = [...all];
  for (let pair = pairIn(terms); pair; pair = pairIn(terms)) {
    const { first, second, merged } = pair;
    terms = terms.filter((term) => term !== second).map((term) => (term === first ? merged : term));
  }
  return terms;
}

function pairIn(terms: readonly Term[]): { first: Term; second: Term; merged: Term } | null {
  for (const [i, first] of terms.entries()) {
    for (const second of terms.slice(i + 1)) {
      const merged = mergedParallel(first, second) ?? mergedSeries(terms, first, second);
      if (merged) return { first, second, merged };
    }
  }
  return null;
}

function mergedParallel(first: Term, second: Term): Term | null {
  if (Math.min(first.a, first.b) !== Math.min(second.a, second.b)) return null;
  if (Math.max(first.a, first.b) !== Math.max(second.a, second.b)) return null;
  const ohms = (first.ohms * second.ohms) / (first.ohms + second.ohms);
  const words = [first, second].map((term) => inside(term, 'parallel')).join(' beside ');
  return { a: first.a, b: first.b, ohms, words, shape: 'parallel', pickup: null };
}

function mergedSeries(terms: readonly Term[], first: Term, second: Term): Term | null {
  const shared = [first.a, first.b].find((node) => node > 1 && (node === second.a || node === second.b));
  if (shared === undefined) return null;
  if (terms.filter(({ a, b }) => a === shared || b === shared).length !== 2) return null;
  const [a, b] = [first, second].map((term) => (term.a === shared ? term.b : term.a));
  if (a === undefined || b === undefined) return null;
  const ohms = first.ohms + second.ohms;
  if (first.pickup !== null && first.pickup === second.pickup) {
    return { a, b, ohms, words: pickupWords(first.words), shape: 'part', pickup: first.pickup };
  }
  const words = [first, second].map((term) => inside(term, 'series')).join(' in series with ');
  return { a, b, ohms, words, shape: 'series', pickup: null };
}

/** "neck's slug coil" with another of its coils is "neck". */
const pickupWords = (words: string) => words.replace(/'s .* coil$/, '');

/** A composite in another composite is put in brackets; alike ones read on. */
function inside(term: Term, within: 'series' | 'parallel'): string {
  if (term.shape === 'part') return `${term.words} ${sayOhms(term.ohms)}`;
  return term.shape === within ? term.words : `(${term.words})`;
}

function sayTerms(terms: readonly Term[]): string {
  const [only, ...others] = terms;
  if (!only) return '';
  if (others.length === 0) return inside(only, only.shape === 'parallel' ? 'parallel' : 'series');
  return `a bridge of ${terms.map((term) => inside(term, 'series')).join(', ')}`;
}

/** A pickup that is on and yet carries nothing is worth a word. */
function silentPickups(harness: Harness, setting: JackSetting, terms: readonly Term[]): string {
  const silent = harness.pickups.filter(
    ({ id }) => positionOf(harness, setting).on.includes(id) && !terms.some(({ pickup }) => pickup === id),
  );
  if (!silent.length) return '';
  return `; ${sayList(silent.map(({ subject }) => subject))} shorted, carrying nothing`;
}
