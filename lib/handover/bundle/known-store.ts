import { eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { clients, instruments, meters } from '@/db/schema';
import type { BundleRecord } from '@/shared/bundle';

/** Ids of entries of this workshop that are the same as those of a record, by the ids there. */
export function knownEntries(db: Database, record: BundleRecord): Map<string, string> {
  const known = new Map<string, string>();
  for (const client of record.clients) {
    const same = sameClient(db, client);
    if (same) known.set(client.id, same);
  }
  const instrument = sameInstrument(db, record.instrument, known);
  if (instrument) known.set(record.instrument.id, instrument);
  for (const meter of record.meters) {
    const same = db
      .select()
      .from(meters)
      .where(eq(meters.name, meter.name))
      .all()
      .find(({ ranges }) => JSON.stringify(ranges) === JSON.stringify(meter.ranges));
    if (same) known.set(meter.id, same.id);
  }
  return known;
}

/** The same name, public words and ways to be reached; and no note that would be lost. */
function sameClient(db: Database, client: BundleRecord['clients'][number]): string | null {
  const same = db
    .select()
    .from(clients)
    .where(eq(clients.name, client.name))
    .all()
    .find(
      ({ alias, reach, notes }) =>
        alias === client.alias && reach === client.reach && holds(notes, client.notes),
    );
  return same?.id ?? null;
}

/**
 * The same type, maker, model and serial. Without a serial two of a kind look alike: then only one of the same owner,
 * described in the same words, is the same.
 */
function sameInstrument(
  db: Database,
  { type, maker, model, serial, features, clientId }: BundleRecord['instrument'],
  known: ReadonlyMap<string, string>,
): string | null {
  const owner = clientId === null ? null : (known.get(clientId) ?? null);
  const same = db
    .select()
    .from(instruments)
    .where(eq(instruments.type, type))
    .all()
    .find(
      (row) =>
        row.maker === maker &&
        row.model === model &&
        row.serial === serial &&
        holds(row.features, features) &&
        (serial !== null || (owner !== null && row.clientId === owner && row.features === features)),
    );
  return same?.id ?? null;
}

function holds(text: string | null, part: string | null): boolean {
  return part === null || (text ?? '').includes(part);
}
