import { and, eq, inArray } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { claims, instruments, jobs, parts } from '@/db/schema';
import type { JobId } from '@/shared/ids';
import type { TracedPickup } from '@/shared/reference';

type SaidOf = TracedPickup['said'];

/** What a job's record says of maker and model, by the pickup it is said of. */
export interface Said {
  of: (subject: string) => SaidOf;
}

/** Lines that are told of one pickup. */
const mostSaid = 6;

/**
 * What the record says of pickups, as it was written down: the instrument's maker and model, claims that name the
 * pickup, parts that were fitted or taken out.
 */
export function saidOfPickups(db: Database, jobIds: readonly JobId[]): Map<JobId, Said> {
  const said = new Map<JobId, { whole: SaidOf; named: { about: string; line: SaidOf[number] }[] }>();
  for (const { jobId, instrument } of instrumentRows(db, jobIds)) {
    const words = [instrument.maker, instrument.model].filter(Boolean).join(', ');
    said.set(jobId, { whole: words === '' ? [] : [{ text: words, basis: 'stated' }], named: [] });
  }
  for (const { jobId, subject, value, basis } of claimRows(db, jobIds))
    said.get(jobId)?.named.push({
      about: subject ?? value,
      line: { text: subject ? `${subject}: ${value}` : value, basis },
    });
  for (const { jobId, what, deed, doubt, doubtBasis } of partRows(db, jobIds)) {
    const text = `${what}, ${deed}${doubt ? ` (in doubt: ${doubt})` : ''}`;
    said.get(jobId)?.named.push({ about: what, line: { text, basis: doubtBasis ?? 'stated' } });
  }
  return new Map(
    [...said].map(([jobId, { whole, named }]) => [
      jobId,
      {
        of: (subject) =>
          [...whole, ...named.filter(({ about }) => isAbout(about, subject)).map(({ line }) => line)].slice(
            0,
            mostSaid,
          ),
      },
    ]),
  );
}

const places = ['neck', 'middle', 'bridge'];

/** Words about a pickup, and not about one in another place. */
function isAbout(words: string, subject: string): boolean {
  const told = words.toLowerCase();
  if (!/\b(?:pick-?ups?|humbuckers?|single coils?)\b/.test(told)) return false;
  const named = places.filter((place) => told.includes(place));
  return named.length === 0 || named.some((place) => subject.toLowerCase().includes(place));
}

function instrumentRows(db: Database, jobIds: readonly JobId[]) {
  return db
    .select({ jobId: jobs.id, instrument: { maker: instruments.maker, model: instruments.model } })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(inArray(jobs.id, [...jobIds]))
    .all();
}

/** What is claimed about the instrument, in whichever job it came up. */
function claimRows(db: Database, jobIds: readonly JobId[]) {
  const { subject, value, basis } = claims;
  return db
    .select({ jobId: jobs.id, subject, value, basis })
    .from(jobs)
    .innerJoin(claims, eq(claims.instrumentId, jobs.instrumentId))
    .where(and(inArray(jobs.id, [...jobIds]), inArray(claims.kind, ['original part', 'other'])))
    .all();
}

function partRows(db: Database, jobIds: readonly JobId[]) {
  return db
    .select()
    .from(parts)
    .where(inArray(parts.jobId, [...jobIds]))
    .all();
}
