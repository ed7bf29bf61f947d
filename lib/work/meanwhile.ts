import { DomainError } from '@/shared/problem';

/** Somebody changed the same thing in another window; nothing was written over. */
export class ChangedMeanwhileError extends DomainError {
  /** @param now what stands there now, by field */
  constructor(now: Record<string, unknown>) {
    super(
      'conflict',
      'It was changed in another window meanwhile.',
      'Nothing was written over. Look at what stands there now, then keep yours or take that one.',
      { now },
    );
  }
}

/**
 * Refuses a change where something else stands now than what the person saw when writing it. What stands there
 * already as wanted is no clash.
 * @param now the row as it stands
 * @param wanted the fields to be changed
 * @param was the fields as they were seen; those that are not named are not held against
 * @throws ChangedMeanwhileError
 */
export function refuseIfChanged(
  now: Readonly<Record<string, unknown>>,
  wanted: Readonly<Record<string, unknown>>,
  was: Readonly<Record<string, unknown>> | undefined,
): void {
  const clashing = Object.entries(was ?? {}).filter(
    ([field, seen]) => field in wanted && !same(now[field], seen) && !same(now[field], wanted[field]),
  );
  if (clashing.length === 0) return;
  throw new ChangedMeanwhileError(Object.fromEntries(clashing.map(([field]) => [field, now[field] ?? null])));
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}
