import type { Whereabouts } from './person';

/** Jobs, instruments and recordings, by their ids. */
export interface Belongings {
  clients: ReadonlySet<string>;
  jobs: ReadonlySet<string>;
  instruments: ReadonlySet<string>;
  recordings: ReadonlySet<string>;
}

/** Whose a row is, by its table and its columns as the schema names them in code. */
export type Whose = (table: string, row: Readonly<Record<string, unknown>>) => Whereabouts | 'leave';

/**
 * Tells whose the rows of the record are.
 * @param own what is the client's
 * @param namesakes what belongs to others whose names hold the client's: there the name tells of them
 */
export function whoseRows(own: Belongings, namesakes: Belongings): Whose {
  return (table, row) => {
    if (hangsOn(own, table, row)) return 'own';
    return hangsOn(namesakes, table, row) ? 'leave' : 'elsewhere';
  };
}

/** Another person's name is their own, and so is a number that they share. */
export function fieldWhose(whose: ReturnType<Whose>, table: string, field: string): ReturnType<Whose> {
  if (table !== 'clients' || whose === 'leave') return whose;
  if (field === 'name') return 'leave';
  return field === 'reach' ? 'reach of another' : whose;
}

function hangsOn(things: Belongings, table: string, row: Readonly<Record<string, unknown>>): boolean {
  const has = (ids: ReadonlySet<string>, id: unknown) => typeof id === 'string' && ids.has(id);
  // A job on somebody else's instrument is the job of whoever brought it.
  const instrumentCounts = table !== 'jobs';
  return (
    (table === 'clients' && has(things.clients, row.id)) ||
    (table === 'jobs' && has(things.jobs, row.id)) ||
    (table === 'instruments' && has(things.instruments, row.id)) ||
    (table === 'recordings' && has(things.recordings, row.id)) ||
    has(things.jobs, row.jobId) ||
    has(things.recordings, row.recordingId) ||
    (instrumentCounts && has(things.instruments, row.instrumentId))
  );
}
