import { inArray } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { clients } from '@/db/schema';
import type { ArchiveAnswer } from '@/shared/archive';
import { readingKindIdSchema } from '@/shared/readings';
import { jobOfThingSql, thingsOfKind } from './numbers';
import { countsOf, type RankedJob } from './rank/jobs';
import { listed, readyOnce } from './ready-store';

type Filters = ArchiveAnswer['filters'];

/** What these jobs can be narrowed by. */
export function filtersOf(db: Database, jobs: readonly RankedJob[]): Filters {
  const counts = countsOf(jobs);
  return { ...counts, clients: named(db, counts.clients), readings: readingsIn(db, jobs) };
}

function named(db: Database, counts: ReturnType<typeof countsOf>['clients']): Filters['clients'] {
  const rows = statements(db).names.all({ ids: JSON.stringify(counts.map(({ id }) => id)) });
  const names = new Map(rows.map(({ id, name }) => [id, name]));
  return counts.flatMap(({ id, count }) => {
    const name = names.get(id);
    return name === undefined ? [] : [{ id, name, count }];
  });
}

const readingsSchema = z.array(
  z.object({ kind: readingKindIdSchema, count: z.int(), low: z.number(), high: z.number() }),
);

function readingsIn(db: Database, jobs: readonly RankedJob[]): Filters['readings'] {
  const ranges = jobs.map(({ job }) => thingsOfKind(job, 'reading'));
  return readingsSchema.parse(statements(db).readings.all(JSON.stringify(ranges)));
}

/** Asked for each question: made ready once for each database. */
const statements = readyOnce((db) => ({
  names: db
    .select({ id: clients.id, name: clients.name })
    .from(clients)
    .where(inArray(clients.id, listed('ids')))
    .prepare(),
  // Crossed and without the index of values, so that the few ranges come first.
  readings: db.$client.prepare(
    `SELECT reading_kind AS kind, count(DISTINCT ${jobOfThingSql('archive_things.id')}) AS count,
      min(base_value) AS low, max(base_value) AS high
      FROM json_each(?) CROSS JOIN archive_things NOT INDEXED ON archive_things.id BETWEEN value ->> 0 AND value ->> 1
      WHERE base_value IS NOT NULL GROUP BY reading_kind ORDER BY count DESC, kind`,
  ),
}));
