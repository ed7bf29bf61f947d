import type { KickReading, PairReading, TraceInput, TraceReading } from '@/shared/wiring';

type Pair = [string, string];

export function pair(
  id: string,
  between: Pair,
  ohms: number | null,
  rest: Partial<PairReading> = {},
): PairReading {
  return { kind: 'pair', id, between, ohms, basis: 'measured', ...rest };
}

export function kick(id: string, leads: Pair, row: string, rest: Partial<KickReading> = {}): KickReading {
  const [red, black] = leads;
  return {
    kind: 'kick',
    id,
    leads: { red, black },
    steel: 'laid on',
    row,
    sign: 1,
    basis: 'measured',
    ...rest,
  };
}

/** Common practice, no source: 4.08 kΩ and 3.971 kΩ, red and green the positive ends. */
export const neckReadings: TraceReading[] = [
  pair('p1', ['red', 'white'], 4080, { moment: { takeId: 'take1', ms: 61_000 } }),
  pair('p2', ['green', 'black'], 3971, { moment: { takeId: 'take1', ms: 75_500 } }),
  pair('p3', ['red', 'green'], null),
  kick('k1', ['red', 'white'], 'slug', { size: 'large' }),
  kick('k2', ['red', 'white'], 'screw', { size: 'small' }),
  kick('k3', ['green', 'black'], 'screw'),
];

export function neck(readings: TraceReading[] = neckReadings): TraceInput & { readings: TraceReading[] } {
  return { subject: 'neck', conductors: ['red', 'white', 'green', 'black'], shield: true, readings };
}

/** Two terminals in one spelling whatever their order. */
export const together = (a: string, b: string) => [a, b].sort().join('|');
