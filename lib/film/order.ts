/** What ordering needs of a take. */
export interface Ordered {
  /** Given by hand; null while the film follows the recorded-at times. */
  position: number | null;
  recordedAt: number | null;
  name: string;
}

/**
 * Takes in film order: by hand where a hand has ordered them, otherwise by recorded-at; takes without a date
 * come last; then by name as people count (take 2 before take 10).
 */
export function inFilmOrder<T extends Ordered>(takes: readonly T[]): T[] {
  return [...takes].sort(
    (a, b) => last(a.position) - last(b.position) || last(a.recordedAt) - last(b.recordedAt) || byName(a, b),
  );
}

/** The same list with one item moved to another place, counted from 0. */
export function moved<T>(items: readonly T[], from: number, to: number): T[] {
  const rest = items.filter((_, index) => index !== from);
  return [...rest.slice(0, to), ...items.slice(from, from + 1), ...rest.slice(to)];
}

function last(value: number | null): number {
  return value ?? Number.MAX_SAFE_INTEGER;
}

function byName(a: Ordered, b: Ordered): number {
  return a.name.localeCompare(b.name, 'en', { numeric: true });
}
