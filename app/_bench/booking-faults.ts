import { z } from 'zod';
import { CallError } from '@/app/_parts/call';
import { type Booking, ownType } from './booking';

const fields = [
  'title',
  'type',
  'own',
  'client',
  'alias',
  'promisedOn',
  'asked',
  'place',
  'otherThings',
] as const;
export type BookingField = (typeof fields)[number];

/** What is wrong with the booking, by field, in words; empty where nothing is. */
export type Faults = Partial<Record<BookingField, string>>;

/** What a part of the booking sheet needs. */
export interface BookingPartProps {
  booking: Booking;
  write: (part: Partial<Booking>) => void;
  faults: Faults;
}

/** Fields below the fold. */
const folded: readonly BookingField[] = ['client', 'alias', 'promisedOn', 'asked', 'place', 'otherThings'];

/** What can be seen before anybody is asked. */
export function missingIn({ title, type, own }: Booking): Faults {
  return {
    ...(title.trim() === '' && { title: 'Give the job a title: a few words that you will know it by.' }),
    ...(type === '' && { type: 'Choose what kind of instrument it is.' }),
    ...(type === ownType &&
      own.trim() === '' && { own: 'Write what kind of instrument it is, such as “hurdy-gurdy”.' }),
  };
}

/** Where each part of a new job was written: the longest start of a JSON pointer (RFC 6901) that fits. */
const writtenIn: readonly (readonly [pointer: string, field: BookingField])[] = [
  ['/title', 'title'],
  ['/instrument', 'type'],
  ['/client/alias', 'alias'],
  ['/client', 'client'],
  ['/promisedOn', 'promisedOn'],
  ['/work', 'asked'],
  ['/place', 'place'],
  ['/cameWith', 'otherThings'],
];

const refusedSchema = z.union([
  z.object({ errors: z.array(z.object({ pointer: z.string(), detail: z.string() })).min(1) }),
  z.object({ field: z.string(), title: z.string() }).transform(({ field, title }) => ({
    errors: [{ pointer: `/${field}`, detail: title }],
  })),
]);

/** What the server refused, by field; empty where it refused the whole. */
export function refusedIn(error: unknown): Faults {
  if (!(error instanceof CallError)) return {};
  const refused = refusedSchema.safeParse(error.problem);
  const faults: Faults = {};
  for (const { pointer, detail } of refused.data?.errors ?? []) {
    const field = writtenIn.find(([start]) => `${pointer}/`.startsWith(`${start}/`))?.[1];
    if (field) faults[field] ??= detail;
  }
  return faults;
}

/** The field to go to first; undefined where nothing is wrong. */
export function firstFault(faults: Faults): BookingField | undefined {
  return fields.find((field) => faults[field] !== undefined);
}

/** Whether something is wrong below the fold. */
export function isFaultFolded(faults: Faults): boolean {
  return folded.some((field) => faults[field] !== undefined);
}
