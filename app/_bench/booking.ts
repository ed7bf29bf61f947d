import type { ClientId, InstrumentId } from '@/shared/ids';
import type { NewJob } from '@/shared/jobs';

/** What is written on the booking sheet. */
export interface Booking {
  title: string;
  /** A type from the list, `ownType`, or empty while none is chosen. */
  type: string;
  /** A type of the repairer's own, where `type` is `ownType`. */
  own: string;
  /** Name of the client as it was typed or chosen. */
  client: string;
  /** The known client that was chosen; null where the name is a new one. */
  clientId: ClientId | null;
  /** What to call a new client in public. */
  alias: string;
  /** The known client's instrument that came back; null where it is another one. */
  instrumentId: InstrumentId | null;
  /** ISO 8601 day, or empty. */
  promisedOn: string;
  /** What was asked for, a thing a line. */
  asked: string;
  place: string;
  /** Which of `usualThings` it came with. */
  cameWith: readonly string[];
  /** What else it came with, parted by commas or lines. */
  otherThings: string;
}

/** The choice that opens a line for a type that is not on the list. No instrument type has it as its name. */
export const ownType = ' own';
export const usualThings = ['case', 'strap', 'cable'] as const;

export const emptyBooking: Booking = {
  title: '',
  type: '',
  own: '',
  client: '',
  clientId: null,
  alias: '',
  instrumentId: null,
  promisedOn: '',
  asked: '',
  place: '',
  cameWith: [],
  otherThings: '',
};

export function asNewJob(booking: Booking): NewJob {
  const { title, promisedOn, place, cameWith, otherThings } = booking;
  const client = clientOf(booking);
  const things = [...cameWith, ...partsOf(otherThings, /[,\n]/)];
  const work = partsOf(booking.asked, /\n/).map((what) => ({ what, origin: 'asked' as const }));
  return {
    title: title.trim(),
    instrument: instrumentOf(booking),
    ...(client && { client }),
    ...(promisedOn !== '' && { promisedOn }),
    ...(place.trim() !== '' && { place: place.trim() }),
    ...(things.length > 0 && { cameWith: things }),
    ...(work.length > 0 && { work }),
  };
}

function instrumentOf({ instrumentId, type, own }: Booking): NewJob['instrument'] {
  if (instrumentId !== null) return { id: instrumentId };
  return { type: type === ownType ? own.trim() : type };
}

function clientOf({ clientId, client, alias }: Booking): NewJob['client'] {
  if (clientId !== null) return { id: clientId };
  const name = client.trim();
  const publicName = alias.trim();
  return name === '' ? undefined : { name, ...(publicName !== '' && { alias: publicName }) };
}

function partsOf(text: string, border: RegExp): string[] {
  return text
    .split(border)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}
