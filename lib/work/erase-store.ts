import type { Database } from '@/db/open';
import type { Erased } from '@/shared/clients';
import type { ClientId } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import { clientRow } from './client-store';
import { sameName } from './erase/person';
import { scrubberFor } from './erase/scrub';
import { whoseRows } from './erase/whose';
import { clearFreedPages, renewBackups } from './erase-disk-store';
import { belongingsOf, namesakesOf, personOf, recordingsTelling } from './erase-person-store';
import { scrubEverything } from './erase-rows-store';
import { keepTicketsAtLeisure } from './rack-store';

/**
 * Takes a person out of the record for good: jobs and instruments stay, and tell of "a client". No copy is left in
 * the database file or in the backups that this program made; file names of recordings stay as their owner gave them.
 * @param typed the name, typed again by whoever means it
 * @param forgetWords takes what other subjects keep of the changed words away, before the freed pages are cleared
 * @throws DomainError where the name is another one, or another entry bears the same
 */
export function eraseClient(
  db: Database,
  id: ClientId,
  typed: string,
  forgetWords: (db: Database) => void,
): Erased {
  const { name } = clientRow(db, id);
  if (written(typed) !== written(name)) {
    throw new DomainError(
      'invalid',
      'That is not the name of this client.',
      'Type the name as it stands in the entry: erasing cannot be undone.',
      { field: 'name' },
    );
  }
  const person = personOf(db, id);
  const namesakes = namesakesOf(db, person);
  const twin = namesakes.find((other) => sameName(other.name, name));
  if (twin) throw new NamesakeError(twin.id);
  const scrubber = scrubberFor(person);
  const own = belongingsOf(db, person.ids);
  const whose = whoseRows(own, belongingsOf(db, new Set(namesakes.map((other) => other.id))));
  const recordings = recordingsTelling(db, scrubber, own);
  // Zeroes over what is deleted, from before the first row is touched.
  db.$client.pragma('secure_delete = on');
  const texts = db.transaction(() => scrubEverything(db, { clientIds: person.ids, scrubber, whose }));
  forgetWords(db);
  clearFreedPages(db);
  renewBackups(db);
  keepTicketsAtLeisure(db);
  return { texts, recordings };
}

/** Recordings whose file names tell of the client: they keep them when the client is erased. */
export function recordingsNaming(db: Database, id: ClientId): string[] {
  const person = personOf(db, id);
  return recordingsTelling(db, scrubberFor(person), belongingsOf(db, person.ids));
}

class NamesakeError extends DomainError {
  constructor(other: ClientId) {
    super(
      'conflict',
      'Another entry bears the same name.',
      'If it is the same person, make one entry of the two first. If not, give the other entry something that tells them apart, such as a second name.',
      { other },
    );
  }
}

/** A name as it is compared: spaces and ways to write an accent do not count. */
function written(name: string): string {
  return name.normalize('NFC').trim().replace(/\s+/g, ' ');
}
