import {
  appendFileSync,
  createReadStream,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import type { Database } from '@/db/open';
import { zipStream } from '@/lib/handover/store';
import {
  exportTables,
  type GiveOutQuery,
  type PublicJob,
  publicArchiveFormat,
} from '@/shared/archive-exports';
import type { JobId } from '@/shared/ids';
import { jobPage, leftOutPage, pageOf } from './job-page';
import { chosenJobs, readJobs, Teller } from './jobs-store';
import { conductorsPage, indexPage } from './list-pages';
import { findingsOfTold } from './public-job';
import { readmeText } from './readme';
import { SearchGatherer } from './search-data';
import { pagesStyle } from './style';
import { type ConductorRow, conductorRows, tableHead, tableLines } from './tables';
import { jsonEnd, jsonHead } from './tables-store';

/** A folder that a broken-off making has left behind goes after this. */
const keptMs = 24 * 3_600_000;

/** A file of the set, made when its turn comes. */
export interface PagesFile {
  name: string;
  open(): Readable;
  modifiedAt: Date;
}

export interface PageSet {
  /** The data folder. */
  home: string;
  /** The day that stands on the pages, by ISO 8601. */
  made: string;
  /** The script that answers on the first page. */
  searchScript: string;
}

/** The script as the build made it. */
export function builtSearchScript(): string {
  return readFileSync(join(/*turbopackIgnore: true*/ process.cwd(), 'dist', 'archive-search.js'), 'utf8');
}

/**
 * The chosen part of the archive as a set of pages in one ZIP, written while it is read: each job is read when its
 * turn comes, and the tables grow on the disk. The same archive gives the same bytes on the same day.
 */
export async function pagesOf(db: Database, query: GiveOutQuery, set: PageSet): Promise<Readable> {
  const goingOut: { id: JobId; number: number }[] = [];
  const without = new Set(query.without);
  for await (const { told, allowed } of chosenJobs(db, query)) {
    const isOpen = findingsOfTold(told, allowed).some(({ decision }) => decision === 'open');
    if (!isOpen && !without.has(told.job.number)) goingOut.push(told.job);
  }
  const spool = new Spool(set.home);
  const stream = zipStream([...jobFiles(db, goingOut, spool, set), ...otherFiles(spool, set)]);
  return stream.once('close', () => spool.clear());
}

/** What grows from job to job. */
class Spool {
  readonly folder: string;
  readonly gatherer = new SearchGatherer();
  readonly conductors: ConductorRow[] = [];
  private between = '';

  constructor(home: string) {
    this.folder = newFolder(home);
    for (const name of exportTables) this.write(`${name}.csv`, tableHead(name));
    this.write('archive.json', jsonHead(publicArchiveFormat));
  }

  add(job: PublicJob): void {
    for (const name of exportTables) this.write(`${name}.csv`, tableLines(name, job));
    this.write('archive.json', this.between + JSON.stringify(job));
    this.between = ',\n';
    this.gatherer.add(job);
    this.conductors.push(...conductorRows(job));
  }

  end(): void {
    this.write('archive.json', jsonEnd);
  }

  clear(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }

  private write(name: string, text: string): void {
    appendFileSync(join(this.folder, name), text);
  }
}

function jobFiles(
  db: Database,
  jobs: readonly { id: JobId; number: number }[],
  spool: Spool,
  { made }: PageSet,
): PagesFile[] {
  const teller = new Teller(db);
  return jobs.map(({ id, number }) =>
    file(pageOf(number), made, () => {
      // Read again: what was written since must not slip through.
      const [job] = readJobs(db, [id]);
      const told = job ? teller.inPublic(job) : null;
      if (!told) return leftOutPage(made);
      spool.add(told);
      return jobPage(told, made);
    }),
  );
}

/** Packed after all jobs, when all is gathered. */
function otherFiles(spool: Spool, { made, searchScript }: PageSet): PagesFile[] {
  const onDisk = (name: string) => packed(name, made, () => createReadStream(join(spool.folder, name)));
  return [
    file('index.html', made, () => {
      spool.end();
      return indexPage(spool.gatherer.listed(), made);
    }),
    file('conductors.html', made, () => conductorsPage(spool.conductors, made)),
    file('data.js', made, () => spool.gatherer.script()),
    file('search.js', made, () => searchScript),
    file('style.css', made, () => pagesStyle),
    file('README.txt', made, () => readmeText),
    ...exportTables.map((name) => onDisk(`${name}.csv`)),
    onDisk('archive.json'),
  ];
}

function file(name: string, made: string, make: () => string): PagesFile {
  return packed(name, made, () => Readable.from(once(make)));
}

/** What goes wrong while a file is made is an error of its stream. */
async function* once(make: () => string): AsyncGenerator<Buffer> {
  yield Buffer.from(make());
}

function packed(name: string, made: string, open: () => Readable): PagesFile {
  return { name, open, modifiedAt: new Date(`${made}T12:00:00`) };
}

function newFolder(home: string): string {
  const all = join(home, 'give-out');
  mkdirSync(all, { recursive: true });
  for (const name of readdirSync(all)) {
    const old = join(all, name);
    if (Date.now() - (statSync(old, { throwIfNoEntry: false })?.mtimeMs ?? 0) > keptMs)
      rmSync(old, { recursive: true, force: true });
  }
  return mkdtempSync(join(all, 'making-'));
}
