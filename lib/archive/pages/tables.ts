import { exactTime } from '@/lib/film';
import { type Cell, csvLine, writeCsv } from '@/lib/handover';
import { kindOf } from '@/lib/readings';
import type { ExportTable, PublicJob } from '@/shared/archive-exports';
import type { PlanLine } from '@/shared/wiring';
import { anchors, pageOf } from './job-page';

/** What became of one conductor of a pickup. */
export interface ConductorRow extends Pick<PlanLine, 'role' | 'goesTo' | 'basis'> {
  pickup: string;
  conductors: readonly string[];
  shield: boolean;
  conductor: string;
  /** The others at the same point. */
  joinedWith: readonly string[];
  /** How the whole was joined: "in series, humbucking". */
  joint: string;
  page: string;
  anchor: string;
  /** Of the job. */
  title: string;
}

/** Every conductor of what was joined last. */
export function conductorRows(job: PublicJob): ConductorRow[] {
  return job.traces.flatMap(({ subject, conductors, shield, joined }, nth) => {
    const [newest] = joined;
    const where = { page: pageOf(job.number), anchor: anchors.trace(nth), title: job.title };
    return (newest?.lines ?? []).flatMap(({ role, ends, goesTo, basis }) =>
      ends.map((conductor) => ({
        ...{ pickup: subject, conductors, shield, conductor, role, goesTo, basis, ...where },
        joinedWith: ends.filter((end) => end !== conductor),
        joint: newest?.title ?? '',
      })),
    );
  });
}

interface Table {
  columns: readonly string[];
  rows(job: PublicJob): Cell[][];
}

const jobColumns = ['job', 'title', 'instrument', 'maker', 'model', 'day'] as const;

function jobCells({ number, title, instrument, day }: PublicJob): Cell[] {
  return [number, title, instrument.type, instrument.maker, instrument.model, day];
}

const timeColumns = ['time', 'at ms'] as const;
const timeCells = (atMs: number | null): Cell[] => [atMs === null ? null : exactTime(atMs), atMs];

/** The tables that go out, each with a line a moment, a reading or a conductor. */
const tables: Readonly<Record<ExportTable, Table>> = {
  moments: {
    columns: [...jobColumns, ...timeColumns, 'kind', 'what', 'note', 'basis'],
    rows: (job) => [
      ...job.chapters.map(({ atMs, kind, title, note }) => [...timeCells(atMs), kind, title, note, null]),
      ...job.traces.flatMap(({ subject, joined }) =>
        joined.map(({ atMs, title, basis }) => [
          ...timeCells(atMs),
          'joint',
          `${subject}: ${title}`,
          null,
          basis,
        ]),
      ),
      ...job.done.map(({ atMs, what }) => [...timeCells(atMs), 'done', what, null, null]),
    ],
  },
  readings: {
    columns: [
      ...[...jobColumns, ...timeColumns, 'kind', 'subject', 'where', 'between', 'and'],
      ...['digits', 'unit', 'open', 'in base unit', 'base unit', 'basis', 'note'],
    ],
    rows: (job) =>
      job.readings.map(
        ({ atMs, kind, subject, place, between, digits, unit, open, baseValue, basis, note }) => [
          ...[...timeCells(atMs), kind, subject, place, ...(between ?? [null, null])],
          ...[digits, unit, open, baseValue, kindOf(kind).baseUnit, basis, note],
        ],
      ),
  },
  conductors: {
    columns: [
      ...[
        ...jobColumns,
        'pickup',
        'cable',
        'shield',
        'conductor',
        'role',
        'joined with',
        'where to',
        'basis',
      ],
      'joint',
    ],
    rows: (job) =>
      conductorRows(job).map(
        ({ pickup, conductors, shield, conductor, role, joinedWith, goesTo, basis, joint }) => [
          ...[pickup, conductors.join(' '), shield, conductor, role, joinedWith.join(' '), goesTo, basis],
          joint,
        ],
      ),
  },
};

/** A line of the table of moments for something else than a job tells in public. */
export function momentLine(
  job: PublicJob,
  { atMs, kind, what }: { atMs: number | null; kind: string; what: string },
  more: readonly Cell[],
): string {
  return csvLine([...jobCells(job), ...timeCells(atMs), kind, what, null, null, ...more]);
}

/** The head of a table; `more` columns stand at its end. */
export function tableHead(name: ExportTable, more: readonly string[] = []): string {
  return writeCsv([...tables[name].columns, ...more], []);
}

/** The lines of a job, each with the same cells at its end. */
export function tableLines(name: ExportTable, job: PublicJob, more: readonly Cell[] = []): string {
  return tables[name]
    .rows(job)
    .map((cells) => csvLine([...jobCells(job), ...cells, ...more]))
    .join('');
}
