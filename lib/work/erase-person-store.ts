import { eq, like, or } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import {
  type ChangeEntry,
  changes,
  clients,
  folders,
  instruments,
  jobs,
  recordings,
  takes,
} from '@/db/schema';
import type { ClientId } from '@/shared/ids';
import { clientRow } from './client-store';
import { bearsName, type Person } from './erase/person';
import type { Scrubber } from './erase/scrub';
import type { Belongings } from './erase/whose';

/** A person with all entries that went into theirs. */
export interface ErasedPerson extends Person {
  ids: ReadonlySet<string>;
}

const entryImageSchema = z.object({ name: z.string(), alias: z.string(), reach: z.string().nullish() });
type EntryImage = z.infer<typeof entryImageSchema>;

/** All that the entry says and has said of the person, with the entries that were made one with it. */
export function personOf(db: Database, id: ClientId): ErasedPerson {
  const row = clientRow(db, id);
  const history = db.select().from(changes).where(like(changes.touched, '%"clients"%')).all();
  const ids = withMerged(db, id, history);
  const images = history
    .flatMap(({ entries }) => entries)
    .filter((entry) => entry.table === 'clients' && ids.has(entry.id))
    .flatMap(({ before, after }) => [imageOf(before), imageOf(after)].flat());
  const all: EntryImage[] = [row, ...images];
  return {
    ids,
    name: row.name,
    otherNames: unique(images.map(({ name }) => name)),
    aliases: unique(all.map(({ alias }) => alias)),
    reach: unique(all.flatMap(({ reach }) => reach ?? [])),
  };
}

/** Other people whose names hold this one. */
export function namesakesOf(db: Database, person: ErasedPerson): { id: ClientId; name: string }[] {
  return db
    .select({ id: clients.id, name: clients.name })
    .from(clients)
    .all()
    .filter((other) => !person.ids.has(other.id) && bearsName(other.name, person.name));
}

/** What belongs to these clients; what once did, too, unless somebody else has come after them. */
export function belongingsOf(db: Database, ids: ReadonlySet<string>): Belongings {
  const once = onceTheirs(db, ids);
  const isTheirs = ({ id, clientId }: { id: string; clientId: ClientId | null }) =>
    clientId === null ? once.has(id) : ids.has(clientId);
  const theirJobs = db.select().from(jobs).all().filter(isTheirs);
  const brought = new Set<string>(theirJobs.map(({ instrumentId }) => instrumentId));
  const theirInstruments = db
    .select()
    .from(instruments)
    .all()
    .filter((row) => isTheirs(row) || (row.clientId === null && brought.has(row.id)));
  const jobIds = new Set<string>(theirJobs.map(({ id }) => id));
  const filmed = db.select({ jobId: takes.jobId, id: takes.recordingId }).from(takes).all();
  return {
    clients: ids,
    jobs: jobIds,
    instruments: new Set(theirInstruments.map(({ id }) => id)),
    recordings: new Set(filmed.filter(({ jobId }) => jobIds.has(jobId)).map(({ id }) => id)),
  };
}

/** Whole paths of recordings that tell of the person. */
export function recordingsTelling(db: Database, scrubber: Scrubber, own: Belongings): string[] {
  return db
    .select({ id: recordings.id, folder: folders.path, path: recordings.path })
    .from(recordings)
    .innerJoin(folders, eq(folders.id, recordings.folderId))
    .all()
    .filter(({ id, folder, path }) => {
      const where = own.recordings.has(id) ? 'own' : 'elsewhere';
      return [...folder.split(/[\\/]/), ...path.split('/')].some((part) => scrubber.tells(part, where));
    })
    .map(({ folder, path }) => `${folder}/${path}`);
}

/** Entries that went into this one, and into those. */
function withMerged(
  db: Database,
  id: ClientId,
  history: readonly { entries: ChangeEntry[]; undoneAt: number | null }[],
): Set<string> {
  const standing = new Set<string>(
    db
      .select({ id: clients.id })
      .from(clients)
      .all()
      .map((row) => row.id),
  );
  const ids = new Set<string>([id]);
  for (let known = 0; known < ids.size; ) {
    known = ids.size;
    for (const { entries, undoneAt } of history) {
      const entryRows = entries.filter(({ table }) => table === 'clients');
      if (undoneAt !== null || !entryRows.some((entry) => ids.has(entry.id) && entry.after)) continue;
      for (const gone of entryRows) if (!gone.after && !standing.has(gone.id)) ids.add(gone.id);
    }
  }
  return ids;
}

/** Ids of rows that a change has on record with one of these clients. */
function onceTheirs(db: Database, ids: ReadonlySet<string>): Set<string> {
  const naming = [...ids].map((id) => like(changes.entries, `%"clientId":"${id}"%`));
  return new Set(
    db
      .select({ entries: changes.entries })
      .from(changes)
      .where(or(...naming))
      .all()
      .flatMap(({ entries }) => entries)
      .filter(({ before, after }) => [before, after].some((row) => row && ids.has(String(row.clientId))))
      .map(({ id }) => id),
  );
}

function imageOf(row: ChangeEntry['before']): EntryImage[] {
  const image = entryImageSchema.safeParse(row);
  return image.success ? [image.data] : [];
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
