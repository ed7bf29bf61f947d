import { and, count, countDistinct, desc, eq, isNotNull, isNull, max, min } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { instruments, jobs, readings } from '@/db/schema';
import { layOut } from '@/lib/film';
import { onClock } from '@/lib/film/store';
import { publishedFilm } from '@/lib/handover';
import type { GiveOutJob, GiveOutPreview, GiveOutQuery } from '@/shared/archive-exports';
import { type ChosenJob, chosenJobs } from './jobs-store';
import { findingsOfTold, shownMarkers } from './public-job';
import { dayOf, sayInstrument } from './told-public';

/** What of the chosen part would go out, and what stands in the way. */
export async function previewGiveOut(db: Database, query: GiveOutQuery): Promise<GiveOutPreview> {
  const without = new Set(query.without);
  const all: GiveOutJob[] = [];
  const counts = { jobs: 0, chapters: 0, readings: 0, traces: 0, inTheWay: 0, leftOut: 0 };
  for await (const job of chosenJobs(db, query)) {
    const previewed = preview(job, without);
    all.push(previewed);
    if (previewed.state === 'in the way') counts.inTheWay += 1;
    if (previewed.state === 'left out') counts.leftOut += 1;
    if (previewed.state !== 'goes out') continue;
    counts.jobs += 1;
    counts.chapters += shownCount(job);
    counts.readings += job.told.readings.length;
    counts.traces += job.told.traces.length;
  }
  return { counts, instruments: instrumentCounts(db), readings: readingCounts(db), jobs: all.reverse() };
}

function preview({ told, allowed }: ChosenJob, without: ReadonlySet<number>): GiveOutJob {
  const findings = findingsOfTold(told, allowed);
  const isOpen = findings.some(({ decision }) => decision === 'open');
  const { id, number, title } = told.job;
  return {
    ...{ id, number, title, instrument: sayInstrument(told.instrument), day: dayOf(told), findings },
    state: without.has(number) ? 'left out' : isOpen ? 'in the way' : 'goes out',
  };
}

function shownCount({ told, takes, cutAway }: ChosenJob): number {
  return shownMarkers(told.markers, publishedFilm(layOut(takes.map(onClock)), cutAway)).length;
}

function instrumentCounts(db: Database): GiveOutPreview['instruments'] {
  return db
    .select({ value: instruments.type, count: count() })
    .from(jobs)
    .innerJoin(instruments, eq(instruments.id, jobs.instrumentId))
    .where(isNull(jobs.deletedAt))
    .groupBy(instruments.type)
    .orderBy(desc(count()), instruments.type)
    .all();
}

function readingCounts(db: Database): GiveOutPreview['readings'] {
  const jobCount = countDistinct(readings.jobId);
  return db
    .select({
      kind: readings.kind,
      count: jobCount,
      low: min(readings.baseValue),
      high: max(readings.baseValue),
    })
    .from(readings)
    .innerJoin(jobs, eq(jobs.id, readings.jobId))
    .where(and(isNull(jobs.deletedAt), isNotNull(readings.baseValue)))
    .groupBy(readings.kind)
    .orderBy(desc(jobCount), readings.kind)
    .all()
    .flatMap(({ low, high, ...row }) => (low === null || high === null ? [] : [{ ...row, low, high }]));
}
