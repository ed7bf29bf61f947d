import { asc, eq } from 'drizzle-orm';
import type { Database } from '@/db/open';
import { narrationLines } from '@/db/schema';
import { filmTimeOf, layOut } from '@/lib/film';
import { onClock } from '@/lib/film/store';
import type { Cell } from '@/lib/handover';
import { bundleRecordOf } from '@/lib/handover/store';
import {
  type ExportScope,
  type ExportTable,
  type GiveOutQuery,
  type PublicJob,
  publicArchiveFormat,
} from '@/shared/archive-exports';
import { type ChosenJob, chosenJobs, Teller } from './jobs-store';
import { momentLine, tableHead, tableLines } from './tables';

/** Written piece by piece while it is read. */
type Pieces = AsyncGenerator<string>;

/** Columns that only stand in what is for the bench itself. */
const privateColumns = ['client', 'serial'] as const;

/** A table of the chosen part. @see tableLines */
export async function* tableOf(
  db: Database,
  query: GiveOutQuery,
  name: ExportTable,
  scope: ExportScope,
): Pieces {
  const isWhole = scope === 'everything';
  yield tableHead(name, isWhole ? privateColumns : []);
  for await (const { job, told } of jobsOf(db, query, scope)) {
    if (!isWhole) yield tableLines(name, told);
    else yield wholeLines(db, name, job, told);
  }
}

function wholeLines(db: Database, name: ExportTable, job: ChosenJob, told: PublicJob): string {
  const more: Cell[] = [job.told.client?.name ?? null, job.told.instrument.serial];
  const lines = tableLines(name, told, more);
  return name === 'moments' ? lines + saidLines(db, job, told, more) : lines;
}

function saidLines(
  db: Database,
  { told: { job }, takes }: ChosenJob,
  told: PublicJob,
  more: readonly Cell[],
): string {
  const film = layOut(takes.map(onClock));
  return db
    .select()
    .from(narrationLines)
    .where(eq(narrationLines.jobId, job.id))
    .orderBy(asc(narrationLines.startMs), asc(narrationLines.id))
    .all()
    .map(({ takeId, startMs, text }) => {
      const atMs = filmTimeOf(film, { takeId, ms: startMs })?.filmMs ?? null;
      return momentLine(told, { atMs, kind: 'narration', what: text }, more);
    })
    .join('');
}

/** The public jobs of the chosen part as JSON, by `publicArchiveSchema`. */
export async function* publicJsonOf(db: Database, query: GiveOutQuery): Pieces {
  yield* asJson(publicArchiveFormat, db, query, 'public', ({ told }) => told);
}

/** The chosen part as JSON with all that is on the record. */
export async function* wholeJsonOf(db: Database, query: GiveOutQuery): Pieces {
  yield* asJson('benchtake whole archive', db, query, 'everything', ({ job }) =>
    bundleRecordOf(db, job.told.job.id, () => null, new Date()),
  );
}

async function* asJson(
  format: string,
  db: Database,
  query: GiveOutQuery,
  scope: ExportScope,
  tell: (each: Told) => unknown,
): Pieces {
  yield jsonHead(format);
  let between = '';
  for await (const each of jobsOf(db, query, scope)) {
    yield between + JSON.stringify(tell(each));
    between = ',\n';
  }
  yield jsonEnd;
}

export const jsonHead = (format: string): string =>
  `{"format":${JSON.stringify(format)},"version":1,"jobs":[\n`;
export const jsonEnd = '\n]}\n';

interface Told {
  job: ChosenJob;
  told: PublicJob;
}

async function* jobsOf(db: Database, query: GiveOutQuery, scope: ExportScope): AsyncGenerator<Told> {
  const teller = new Teller(db);
  const without = new Set(query.without);
  for await (const job of chosenJobs(db, query)) {
    if (without.has(job.told.job.number)) continue;
    const told = scope === 'everything' ? teller.whole(job) : teller.inPublic(job);
    if (told) yield { job, told };
  }
}
