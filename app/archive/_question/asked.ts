import { z } from 'zod';
import { type ArchiveQuery, archiveQuerySchema } from '@/shared/archive';

/** A question with its filters, as it stands in the address of the page. */
const askedSchema = z.strictObject(archiveQuerySchema.shape).omit({ today: true, limit: true, after: true });
export type Asked = z.infer<typeof askedSchema>;

const empty = askedSchema.parse({});
const names = Object.keys(askedSchema.shape);

/**
 * What an address asks. What is unknown or wrong in it is left out: an address that was cut short or typed by hand
 * still asks the rest.
 * @param search what stands behind the question mark
 */
export function readAsked(search: string): Asked {
  const typed = [...new URLSearchParams(search)].filter(
    ([name, value]) => names.includes(name) && value.trim() !== '',
  );
  const whole = askedSchema.safeParse(Object.fromEntries(typed));
  if (whole.success) return withWholeRange(whole.data);
  const wrong = new Set(whole.error.issues.map(({ path }) => path[0]));
  return withWholeRange(askedSchema.parse(Object.fromEntries(typed.filter(([name]) => !wrong.has(name)))));
}

/** A range says nothing without its kind of reading. */
function withWholeRange(asked: Asked): Asked {
  if (asked.reading !== undefined) return asked;
  const { low, high, ...rest } = asked;
  return rest;
}

/** What stands behind the question mark: the same for the same question; empty where nothing is asked. */
export function searchOf(asked: Asked): string {
  const named = new Map(Object.entries(asked));
  const told = names.flatMap((name) => {
    const value = String(named.get(name) ?? '').trim();
    return value === '' ? [] : [[name, value]];
  });
  return new URLSearchParams(told).toString();
}

/** The page on which a question is asked. */
export function pageOf(search: string): string {
  return search === '' ? '/archive' : `/archive?${search}`;
}

/** The route that answers it. */
export function routeOf(search: string, more: Pick<Partial<ArchiveQuery>, 'limit' | 'after'> = {}): string {
  const address = new URLSearchParams(search);
  for (const [name, value] of Object.entries(more)) address.set(name, String(value));
  return `/api/archive?${address}`;
}

export function asksNothing(asked: Asked): boolean {
  return searchOf({ ...asked, without: '' }) === '';
}

/** How many things the answers are narrowed to, beside the words of the question. */
export function countNarrowed({ instrument, kind, client, basis, from, to, reading }: Asked): number {
  const days = from ?? to;
  return [instrument, kind, client, basis, days, reading].filter((each) => each !== undefined).length;
}

/** The same words, narrowed by nothing. */
export function notNarrowed({ q, without }: Asked): Asked {
  return { ...empty, q, without };
}

/** A filter set, or taken off where the value is undefined. */
export function narrowed(asked: Asked, change: { [Name in keyof Asked]?: Asked[Name] | undefined }): Asked {
  const next = Object.entries({ ...asked, ...change }).filter(([, value]) => value !== undefined);
  return askedSchema.parse(Object.fromEntries(next));
}
