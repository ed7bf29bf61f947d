import { z } from 'zod';
import { type BundleRecord, bundleFormat, bundleRecordSchema, bundleVersion } from '@/shared/bundle';
import { pinnedIn } from './moments';
import { BundleError } from './problems';

/** What every version of a bundle has. */
const headSchema = z.looseObject({ format: z.literal(bundleFormat), version: z.int() });
/** No text of a job is longer; the episode notes come nearest. */
const mostLetters = 600_000;

/**
 * Reads the record of a bundle, made by whomever.
 * @param text the JSON as it lies in the archive
 * @throws BundleError where it is not one, of another version, or does not hold together
 */
export function readRecord(text: string): BundleRecord {
  const value = parseJson(text);
  const head = headSchema.safeParse(value);
  if (!head.success) throw new BundleError('no bundle', 'The record in that ZIP is not that of a job.');
  const { version } = head.data;
  if (version !== bundleVersion) {
    throw new BundleError(
      'version',
      version > bundleVersion
        ? `The bundle was made by a newer Benchtake: its record has version ${version}, this one knows ${bundleVersion}.`
        : `The bundle has a version that there never was: ${version}.`,
    );
  }
  const record = bundleRecordSchema.safeParse(value);
  if (!record.success) throw notInOrder(record.error);
  checkLengths(value);
  checkRecord(record.data);
  return record.data;
}

/** Holds the parts of a record against each other. @throws BundleError */
export function checkRecord(record: BundleRecord): void {
  checkIds(record);
  checkReferences(record);
  checkSpans(record);
  const reach = new Map(record.takes.map(({ id, reachMs }) => [id, reachMs]));
  for (const { where, takeId, ms } of pinnedIn(record)) {
    const reachMs = reach.get(takeId);
    if (reachMs === undefined) throw broken('A moment names a take that is not in the record.', where);
    if (ms !== null && ms > reachMs) throw broken('A moment lies outside its take.', where);
  }
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new BundleError('damaged', 'The record in the bundle cannot be read: it is no JSON.');
  }
}

function notInOrder(error: z.ZodError): BundleError {
  const [first] = error.issues;
  return broken(
    `The record in the bundle is not in order: ${first?.message ?? 'it does not fit'}.`,
    first?.path.map(String).join('/') ?? '',
  );
}

function checkLengths(value: unknown): void {
  const waiting = [value];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next === 'string' && next.length > mostLetters)
      throw broken('A text in the record is longer than any job has.', '');
    if (typeof next === 'object' && next !== null)
      for (const inner of Object.values(next)) if (inner !== null) waiting.push(inner);
  }
}

/** The lists of rows that have ids of their own. */
export function idsOf(record: BundleRecord) {
  const ids = <T>(rows: readonly { id: T }[]): T[] => rows.map(({ id }) => id);
  return {
    job: [record.job.id],
    clients: ids(record.clients),
    instrument: [record.instrument.id],
    claims: ids(record.claims),
    meters: ids(record.meters),
    takes: ids(record.takes),
    markers: ids(record.markers),
    readings: ids(record.readings),
    traces: ids(record.traces),
    outcomes: ids(record.outcomes),
    lines: ids(record.lines),
    proposals: ids(record.proposals),
    work: ids(record.work),
    parts: ids(record.parts),
  };
}

function checkIds(record: BundleRecord): void {
  const seen = new Set<string>();
  for (const [part, ids] of Object.entries(idsOf(record))) {
    for (const id of ids) {
      if (seen.has(id)) throw broken('Two things in the record have the same id.', part);
      seen.add(id);
    }
  }
  const keys = new Set(record.proposals.map(({ key }) => key));
  if (keys.size < record.proposals.length) throw broken('Two proposals have the same key.', 'proposals');
  const files = record.takes.flatMap(({ recording: { file } }) => file ?? []);
  if (new Set(files).size < files.length) throw broken('Two takes have the same recording.', 'takes');
}

function checkReferences(record: BundleRecord): void {
  const has = idsOf(record);
  const check = (known: Iterable<string>, part: string, wanted: readonly (string | null)[]) => {
    const set = new Set(known);
    const at = wanted.findIndex((id) => id !== null && !set.has(id));
    if (at >= 0) throw broken('Something in the record names what is not in it.', `${part}/${at}`);
  };
  check(has.clients, 'job', [record.job.clientId]);
  check(has.instrument, 'job', [record.job.instrumentId]);
  check(has.clients, 'instrument', [record.instrument.clientId]);
  check(
    has.meters,
    'readings',
    record.readings.map(({ meterId }) => meterId),
  );
  check(
    has.readings,
    'claims',
    record.claims.map(({ readingId }) => readingId),
  );
  check(
    has.traces,
    'outcomes',
    record.outcomes.map(({ traceId }) => traceId),
  );
  check(
    [...has.markers, ...has.readings, ...has.work],
    'proposals',
    record.proposals.map(({ recordId }) => recordId),
  );
  check(
    has.takes,
    'outcomes',
    record.outcomes.map(({ outcome }) => outcome.moment?.takeId ?? null),
  );
  const film = new Set(record.film);
  if (
    film.size !== record.film.length ||
    film.size !== has.takes.length ||
    !has.takes.every((id) => film.has(id))
  )
    throw broken('The film does not hold every take once.', 'film');
}

function checkSpans(record: BundleRecord): void {
  const backwards =
    find('markers', record.markers, ({ ms, endMs }) => endMs !== null && endMs <= ms) ??
    find(
      'takes',
      record.takes,
      ({ trimStartMs, trimEndMs }) => trimEndMs !== null && trimEndMs <= trimStartMs,
    ) ??
    find('lines', record.lines, ({ startMs, endMs }) => endMs < startMs) ??
    find('proposals', record.proposals, ({ startMs, endMs }) => endMs < startMs);
  if (backwards) throw broken('A span ends before it begins.', backwards);
  const half =
    find('readings', record.readings, ({ takeId, ms }) => (takeId === null) !== (ms === null)) ??
    find('outcomes', record.outcomes, ({ takeId, ms }) => (takeId === null) !== (ms === null));
  if (half) throw broken('A moment is a take and a time in it: one of the two is missing.', half);
}

function find<T>(part: string, rows: readonly T[], isWrong: (row: T) => boolean): string | undefined {
  const at = rows.findIndex(isWrong);
  return at < 0 ? undefined : `${part}/${at}`;
}

function broken(title: string, where: string): BundleError {
  return new BundleError('record', title, where);
}
