import type { Coil, TraceAnalysis } from '@/shared/wiring';

/** A chain of coils as it leaves the pickup: `points` from one end to the other, taps between them. */
export type Leg = { points: string[][]; coils: Coil[] };

const metals = ['shield', 'frame'];

export function isMetal(name: string): boolean {
  return metals.includes(name);
}

export function reversed(leg: Leg): Leg {
  return {
    points: leg.points.toReversed(),
    coils: leg.coils.toReversed().map((coil) => ({ ...coil, ends: [coil.ends[1], coil.ends[0]] })),
  };
}

/** 1 when the coil's positive end comes first, -1 when it comes last, null when that is not known. */
export function directionOf(coil: Coil, positive: string | null): 1 | -1 | null {
  if (positive === null) return null;
  return coil.ends[0].includes(positive) ? 1 : -1;
}

export function legDirection(leg: Leg): 1 | -1 | null {
  for (const coil of leg.coils) {
    for (const { positive } of coil.rows) {
      const direction = directionOf(coil, positive);
      if (direction !== null) return direction;
    }
  }
  return null;
}

/** Plain chains with the positive end first; the leg under the first row leads unless another is asked for. */
export function legsOf(analysis: TraceAnalysis, hotCoil: string | undefined): Leg[] {
  const legs = analysis.strands
    .filter((strand) => strand.shape === 'chain')
    .map((strand): Leg => ({ points: strand.points, coils: strand.coils }))
    .map((leg) => (legDirection(leg) === -1 ? reversed(leg) : leg));
  const rank = (leg: Leg) => {
    if (leg.coils.some((coil) => coil.key === hotCoil)) return -1;
    const row = leg.coils[0]?.rows[0]?.row;
    return row === undefined ? analysis.rows.length : analysis.rows.indexOf(row);
  };
  return legs.sort((one, two) => rank(one) - rank(two));
}

/** The coils in the order of the rows, or as listed; "slug coil", "coil red/white". */
export function sayCoil(coil: Coil): string {
  const [only, more] = coil.rows;
  if (only && !more) return `${only.row} coil`;
  return `coil ${coil.ends.map((end) => end.filter((name) => !isMetal(name))[0] ?? end[0]).join('/')}`;
}
