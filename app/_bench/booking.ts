import type { NewJob } from '@/shared/jobs';

/** What is written on the booking sheet. */
export interface Booking {
  title: string;
  /** A type from the list, `ownType`, or empty while none is chosen. */
  type: string;
  /** A type of the repairer's own, where `type` is `ownType`. */
  own: string;
  client: string;
  alias: string;
}

/** The choice that opens a line for a type that is not on the list. No instrument type has it as its name. */
export const ownType = ' own';
export const emptyBooking: Booking = { title: '', type: '', own: '', client: '', alias: '' };

/** What is still missing, by field, in words; empty where the job can be booked in. */
export type Missing = Partial<Record<'title' | 'type' | 'own', string>>;

export function missingIn({ title, type, own }: Booking): Missing {
  return {
    ...(title.trim() === '' && { title: 'Give the job a title: a few words that you will know it by.' }),
    ...(type === '' && { type: 'Choose what kind of instrument it is.' }),
    ...(type === ownType &&
      own.trim() === '' && { own: 'Write what kind of instrument it is, such as “hurdy-gurdy”.' }),
  };
}

export function asNewJob({ title, type, own, client, alias }: Booking): NewJob {
  const name = client.trim();
  const publicName = alias.trim();
  return {
    title: title.trim(),
    instrument: { type: type === ownType ? own.trim() : type },
    ...(name !== '' && { client: { name, ...(publicName !== '' && { alias: publicName }) } }),
  };
}
