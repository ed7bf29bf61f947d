import { statSync } from 'node:fs';
import { join } from 'node:path';
import { and, eq, isNotNull, isNull } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { backlogResults, folders, jobs } from '@/db/schema';
import { type OwnRunner, wakeTasks } from '@/lib/tasks/store';
import { type BacklogProblem, backlogIdSchema, type Choice, type ProposedJob } from '@/shared/backlog';
import { DomainError } from '@/shared/problem';
import {
  type BacklogFileRow,
  type BacklogRow,
  backlogRow,
  fileRowsOf,
  isTake,
  planOf,
} from './backlog-facts-store';
import { bookIn, fill, folderWords, type Ready, settle } from './backlog-fill-store';

const payloadSchema = z.object({ backlog: backlogIdSchema });

/**
 * Makes the jobs that were ordered, each with all its takes in one transaction: what is there is whole, whenever the
 * work is called off or the plug is pulled, and the next time it goes on with the rest.
 */
export function importBacklog(db: Database): OwnRunner {
  return async (payload, { signal, report }) => {
    const row = backlogRow(db, payloadSchema.parse(payload).backlog);
    const { rule, choices } = row.wanted ?? { rule: 'usual', choices: [] };
    const chosen = new Map(choices.map((choice) => [choice.key, choice]));
    const wanted = planOf(db, row, rule).jobs.filter(({ key }) => chosen.get(key)?.leftOut !== true);
    const files = new Map(fileRowsOf(db, row).map((file) => [file.path, file]));
    forgetProblems(db, row);
    try {
      for (const [index, proposal] of wanted.entries()) {
        report(index / wanted.length, `Job ${index + 1} of ${wanted.length}: ${proposal.title}`);
        // Other requests get their turn between two jobs.
        await new Promise((resolve) => setImmediate(resolve));
        signal.throwIfAborted();
        const folder = db.select().from(folders).where(eq(folders.id, row.folderId)).get();
        if (!folder)
          throw new DomainError('gone', 'The recordings folder is no longer named.', 'Name it again.');
        try {
          importJob(db, { row, top: folder.path, files }, proposal, chosen.get(proposal.key));
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          const { message: title, detail } = error;
          noteProblem(db, row, proposal, { file: proposal.home || proposal.title, title, detail });
        }
      }
    } finally {
      wakeTasks();
    }
    return sayMade(db, row);
  };
}

interface Import {
  row: BacklogRow;
  /** The recordings folder. */
  top: string;
  files: ReadonlyMap<string, BacklogFileRow>;
}

function importJob(
  db: Database,
  { row, top, files }: Import,
  proposal: ProposedJob,
  choice: Choice | undefined,
): void {
  const problems: BacklogProblem[] = [];
  const ready = proposal.takes.flatMap((planned): Ready[] => {
    const file = files.get(planned.path);
    const path = join(top, planned.path);
    const problem = file ? whyNot(file, path) : { file: planned.path, ...changedMeanwhile };
    if (problem) problems.push(problem);
    return file && !problem ? [{ planned, file, path }] : [];
  });
  db.transaction(() => {
    const fresh = ready.filter(({ planned, file }) => planned.captionsOnly || !isTake(db, file));
    if (fresh.length > 0) make(db, { row, top, files }, proposal, choice, fresh, problems);
    for (const problem of problems) noteProblem(db, row, proposal, problem);
  });
}

function make(
  db: Database,
  { row, top }: Import,
  proposal: ProposedJob,
  choice: Choice | undefined,
  fresh: readonly Ready[],
  problems: BacklogProblem[],
): void {
  const { joins, home, wholeFolder, day } = proposal;
  const jobId = joins?.id ?? bookIn(db, proposal, choice, folderWords(row, top, proposal));
  const { takes, lines, changes } = fill(db, jobId, top, fresh, problems);
  if (!joins) settle(db, jobId, proposal);
  // Captions that could not be read have brought nothing to a job that was there before.
  if (takes + lines === 0) return;
  const told = { takes, lines, home, day: wholeFolder ? null : (day ?? '') };
  db.insert(backlogResults)
    .values({ ...told, backlogId: row.id, jobId, joined: joins !== null, changes: joins ? changes : [] })
    .run();
}

function noteProblem(db: Database, { id }: BacklogRow, { home }: ProposedJob, problem: BacklogProblem): void {
  db.insert(backlogResults).values({ backlogId: id, home, problem }).run();
}

const changedMeanwhile = {
  title: 'It is not as it was when it was looked at.',
  detail: 'It was moved, deleted or written to since. Look through the folder again, then import the rest.',
};

function whyNot(file: BacklogFileRow, path: string): BacklogProblem | null {
  const info = statSync(path, { throwIfNoEntry: false });
  const same = info?.size === file.sizeBytes && Math.round(info.mtimeMs) === file.modifiedAt;
  return same ? null : { file: file.path, ...changedMeanwhile };
}

function forgetProblems(db: Database, { id }: BacklogRow): void {
  db.delete(backlogResults)
    .where(and(eq(backlogResults.backlogId, id), isNotNull(backlogResults.problem)))
    .run();
}

function sayMade(db: Database, { id }: BacklogRow): string {
  const rows = db
    .select({ jobId: jobs.id, problem: backlogResults.problem })
    .from(backlogResults)
    .leftJoin(jobs, and(eq(jobs.id, backlogResults.jobId), isNull(jobs.deletedAt)))
    .where(eq(backlogResults.backlogId, id))
    .all();
  const made = new Set(rows.flatMap(({ jobId }) => jobId ?? [])).size;
  const amiss = rows.filter(({ problem }) => problem !== null).length;
  const said = made === 1 ? 'One job is in the archive' : `${made} jobs are in the archive`;
  return amiss === 0 ? `${said}.` : `${said}; ${amiss === 1 ? 'one file' : `${amiss} files`} to look at.`;
}
