import { setImmediate as turn } from 'node:timers/promises';
import { and, asc, eq, inArray, isNotNull, isNull } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { clients, handOvers, instruments, jobs } from '@/db/schema';
import { layOut } from '@/lib/film';
import { onClock, takesOfJobs } from '@/lib/film/store';
import { publishedFilm } from '@/lib/handover';
import { listMeters } from '@/lib/readings/store';
import { getTraceView } from '@/lib/wiring/store';
import type { GiveOutQuery, PublicJob } from '@/shared/archive-exports';
import { type CutSettings, cutSettingsSchema } from '@/shared/cut';
import type { JobId } from '@/shared/ids';
import type { Meter } from '@/shared/readings';
import type { Take } from '@/shared/takes';
import { toldJobs } from '../told-store';
import { isChosen } from './gives';
import { type WithoutOthers, withoutOthers } from './others';
import { type KnownJob, publicJobOf } from './public-job';
import { type GivenJob, tellJob } from './told-public';

/** Jobs that are read in one go. Other requests get their turn after each. */
const atOnce = 20;

/** A job of the chosen part, with what its hand-over keeps. */
export interface ChosenJob {
  told: KnownJob;
  takes: readonly Take[];
  allowed: readonly string[];
  cutAway: CutSettings['cutAway'];
}

/** Jobs of the chosen part by their numbers, those left out by hand too; never all of them in memory. */
export async function* chosenJobs(db: Database, query: GiveOutQuery): AsyncGenerator<ChosenJob> {
  const rows = db
    .select({ id: jobs.id })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(
      and(
        isNull(jobs.deletedAt),
        query.instrument === undefined ? undefined : eq(instruments.type, query.instrument),
      ),
    )
    .orderBy(asc(jobs.number))
    .all();
  for (let at = 0; at < rows.length; at += atOnce) {
    const ids = rows.slice(at, at + atOnce).map(({ id }) => id);
    for (const job of readJobs(db, ids)) {
      if (isChosen(job.told, query)) yield job;
      await turn();
    }
  }
}

/** Jobs in the order of their ids here; one that has gone meanwhile is left out. */
export function readJobs(db: Database, ids: readonly JobId[]): ChosenJob[] {
  const told = toldJobs(db, ids);
  const takes = takesOfJobs(db, ids);
  const kept = keptByJob(db, ids);
  const reach = reachOf(
    db,
    [...told.values()].flatMap(({ client }) => client?.id ?? []),
  );
  return ids.flatMap((id) => {
    const job = told.get(id);
    if (!job) return [];
    const client = job.client && { ...job.client, reach: reach.get(job.client.id) ?? null };
    const { allowed = [], cutAway = [] } = kept.get(id) ?? {};
    return [{ told: { ...job, client }, takes: takes.get(id) ?? [], allowed, cutAway }];
  });
}

/** What the hand-overs keep that counts here too. */
function keptByJob(db: Database, ids: readonly JobId[]): Map<JobId, Pick<ChosenJob, 'allowed' | 'cutAway'>> {
  const rows = db
    .select({ jobId: handOvers.jobId, cut: handOvers.cut, allowed: handOvers.allowed })
    .from(handOvers)
    .where(inArray(handOvers.jobId, [...ids]))
    .all();
  return new Map(
    rows.map(({ jobId, cut, allowed }) => [
      jobId,
      { allowed, cutAway: cutSettingsSchema.parse(cut).cutAway },
    ]),
  );
}

function reachOf(db: Database, ids: readonly (typeof clients.$inferSelect.id)[]) {
  const rows = db
    .select({ id: clients.id, reach: clients.reach })
    .from(clients)
    .where(inArray(clients.id, [...ids]))
    .all();
  return new Map(rows.map(({ id, reach }) => [id, reach]));
}

/** Makes jobs ready to go out; what is known of the whole shop is read once. */
export class Teller {
  private readonly meters: readonly Meter[];
  private readonly withoutOthers: WithoutOthers;

  constructor(private readonly db: Database) {
    this.meters = listMeters(db);
    const names = db.select({ name: clients.name }).from(clients).all();
    const serials = db
      .select({ serial: instruments.serial })
      .from(instruments)
      .where(isNotNull(instruments.serial))
      .all();
    this.withoutOthers = withoutOthers({
      names: names.map(({ name }) => name),
      serials: serials.map(({ serial }) => serial ?? ''),
    });
  }

  /** As anybody may see it; null where something private stands in the way. */
  inPublic(job: ChosenJob): PublicJob | null {
    const { told, allowed } = job;
    return publicJobOf(
      { ...this.given(job, job.cutAway), told },
      { allowed, withoutOthers: this.withoutOthers },
    );
  }

  /** With all that stands on the record, on the clock of the whole film. */
  whole(job: ChosenJob): PublicJob {
    return tellJob(this.given(job, []), job.told.markers);
  }

  private given({ told, takes }: ChosenJob, cutAway: ChosenJob['cutAway']): GivenJob {
    return {
      told,
      published: publishedFilm(layOut(takes.map(onClock)), cutAway),
      traces: told.traces.map(({ id }) => getTraceView(this.db, id)),
      meters: this.meters,
    };
  }
}
