import { isConductorColour, letterCode } from '@/lib/wiring';
import type { CableLikeness, ColoursAsked } from '@/shared/reference';
import { Memory } from '../memory';

/** Cables name the same few colours again and again. */
const codes = new Memory<string>(2000);

function codeOf(text: string): string {
  return codes.of(text, () =>
    isConductorColour(text) ? letterCode(text).replace(/\d+$/, '') : text.toLowerCase(),
  );
}

/** A cable by its colours: letter codes without the numbers that tell two of one colour apart, sorted. */
export function cableKey(conductors: readonly string[]): string[] {
  return conductors.map(codeOf).sort();
}

/**
 * How a cable goes with the colours that were asked for. A shield that was not named is passed over: it often hides
 * under the outer insulation. Null where each has a colour that the other lacks.
 */
export function likenessOf(
  cable: { key: readonly string[]; shield: boolean },
  asked: { key: readonly string[]; shield: boolean },
): { likeness: CableLikeness; apart: number } | null {
  const wanted = asked.shield ? [...asked.key, 'shield'] : [...asked.key];
  const has = asked.shield && cable.shield ? [...cable.key, 'shield'] : [...cable.key];
  const missing = without(wanted, has).length;
  const over = without(has, wanted).length;
  if (missing > 0 && over > 0) return null;
  if (missing === 0 && over === 0) return { likeness: 'same', apart: 0 };
  return { likeness: over > 0 ? 'more' : 'fewer', apart: over + missing };
}

/** What is left of a list when each of the others has taken one like itself away. */
function without(list: readonly string[], others: readonly string[]): string[] {
  const left = [...list];
  for (const other of others) {
    const at = left.indexOf(other);
    if (at >= 0) left.splice(at, 1);
  }
  return left;
}

export function askedKey({ conductors, shield }: ColoursAsked): { key: string[]; shield: boolean } {
  return { key: cableKey(conductors.map(({ name }) => name)), shield };
}
