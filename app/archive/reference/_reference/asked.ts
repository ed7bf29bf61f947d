import type { z } from 'zod';

export type SearchParams = Promise<Record<string, string | string[] | undefined>>;

/** What an address asks of the reference; where it asks for something that there is not, the whole table. */
export async function askedOf<T>(searchParams: SearchParams, schema: z.ZodType<T>): Promise<T> {
  const told = Object.entries(await searchParams).flatMap(([name, value]) => {
    const [first] = [value].flat();
    return first === undefined ? [] : [[name, first]];
  });
  const asked = schema.safeParse(Object.fromEntries(told));
  return asked.success ? asked.data : schema.parse({});
}

/** An address with what is asked for; empty parts are left out. */
export function addressWith(path: string, parts: Readonly<Record<string, string | number | null>>): string {
  const told = Object.entries(parts).flatMap(([name, value]) =>
    value === null || value === '' ? [] : [[name, String(value)]],
  );
  return told.length === 0 ? path : `${path}?${new URLSearchParams(told)}`;
}
