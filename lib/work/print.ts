import { type CautionKey, cautions, cautionsFor } from '@/lib/safety';
import type { JobRecord } from '@/shared/jobs';
import type { LooseEnd, LooseEndKind } from '@/shared/loose-ends';
import type { Part, WorkItem } from '@/shared/work';
import { factsMm, type PrintedFacts, printedFacts } from './print-facts';
import { fitLists } from './print-fit';
import { heightOf, layout, type Paper, widthOf } from './print-paper';
import { cutTo, linesIn, type PrintedText } from './print-text';
import { sayCharge, sayDeed } from './print-words';

export { type BenchAddress, benchAddress } from './print-address';
export { qrCode } from './print-code';
export { type Paper, paperOf, papers } from './print-paper';
export type { PrintedText } from './print-text';
export { dayInWords } from './print-words';

/** A list as far as it fits; `more`: how many are left on the job's page. */
export interface PrintedList<Row> {
  rows: Row[];
  more: number;
}

export interface PrintedWork {
  what: PrintedText;
  origin: WorkItem['origin'];
  /** Null where nothing was said about it: a place to write it. */
  charge: string | null;
  outcome: WorkItem['outcome'];
}

export interface PrintedPart {
  what: PrintedText;
  deed: PrintedText;
  doubt: PrintedText | null;
}

/** What stands on the printed ticket. */
export interface PrintedTicket extends PrintedFacts {
  work: PrintedList<PrintedWork>;
  parts: PrintedList<PrintedPart>;
  looseEnds: PrintedList<PrintedText>;
  /** Never cut. */
  cautions: { key: CautionKey; words: string }[];
}

export type RecordToPrint = Pick<
  JobRecord,
  'job' | 'instrument' | 'client' | 'readings' | 'markers' | 'work' | 'parts' | 'looseEnds'
>;

/** The ticket of a job, held to one page: long texts are cut with "…", long lists to what fits. */
export function printedTicket(record: RecordToPrint, paper: Paper): PrintedTicket {
  const width = widthOf(paper);
  const facts = printedFacts(record, width);
  const toTake = takeCare(record);
  const work = openFirst(record.work).map((item) => printedWork(item, width));
  const parts = doubtfulFirst(record.parts).map((part) => printedPart(part, width));
  const looseEnds = looseBesides(record).map(({ sentence }) => line(sentence, width - layout.line * 1.5, 2));
  const heads = headsMm([work.length > 0, parts.length > 0], looseEnds.length > 0);
  const room = heightOf(paper) - factsMm(facts) - cautionsMm(toTake, width) - heads;
  const [workRows = 0, partRows = 0, looseRows = 0] = fitLists(
    [
      { rowsMm: work.map(({ what }) => rowMm(what)), turns: 2 },
      { rowsMm: parts.map(({ what, deed, doubt }) => rowMm(what, deed, doubt)), turns: 1 },
      { rowsMm: looseEnds.map((sentence) => rowMm(sentence)), turns: 1 },
    ],
    room,
  );
  return {
    ...facts,
    work: firstOf(work, workRows),
    parts: firstOf(parts, partRows),
    looseEnds: firstOf(looseEnds, looseRows),
    cautions: toTake,
  };
}

function printedWork({ what, why, origin, outcome, ...priced }: WorkItem, width: number): PrintedWork {
  const room = width - layout.outcome - layout.origin - layout.price - layout.cellGap;
  return { what: line(why ? `${what} (${why})` : what, room, 2), origin, outcome, charge: sayCharge(priced) };
}

function printedPart({ what, doubt, doubtBasis, ...part }: Part, width: number): PrintedPart {
  const inDoubt = doubt && `${doubt}${doubtBasis ? ` (${doubtBasis})` : ''}`;
  return {
    what: line(what, width - layout.deed - layout.doubt - layout.cellGap, 2),
    deed: line(sayDeed(part), layout.deed - layout.cellGap, 2),
    doubt: inDoubt ? line(inDoubt, layout.doubt - layout.cellGap, 2) : null,
  };
}

/** Open work first: it is what the paper is for. */
function openFirst(items: readonly WorkItem[]): WorkItem[] {
  return [...items].sort((a, b) => Number(a.outcome !== 'open') - Number(b.outcome !== 'open'));
}

function doubtfulFirst(parts: readonly Part[]): Part[] {
  return [...parts].sort((a, b) => Number(!a.doubt) - Number(!b.doubt));
}

const openWork: ReadonlySet<LooseEndKind> = new Set(['asked and open', 'offered and open', 'found and open']);

/** Open work is not said twice: its empty boxes say it. */
function looseBesides({ looseEnds }: RecordToPrint): LooseEnd[] {
  return looseEnds.filter(({ kind }) => !openWork.has(kind));
}

/** Wider than on the job's page: paper lies at the bench before the first marker is set. */
function takeCare({ job, instrument, readings, markers, work, parts }: RecordToPrint) {
  const words = [
    job.title,
    ...[...work, ...parts].map(({ what }) => what),
    ...markers.map((one) => one.title),
  ];
  return cautionsFor({ instrumentType: instrument.type, readings, words }).map((key) => ({
    key,
    words: cautions[key],
  }));
}

function line(text: string, widthMm: number, maxLines: number): PrintedText {
  return cutTo(text, widthMm / layout.letter, maxLines);
}

function rowMm(...texts: readonly (PrintedText | null)[]): number {
  return Math.max(...texts.map((text) => text?.lines ?? 0)) * layout.line + layout.rowGap;
}

function cautionsMm(toTake: PrintedTicket['cautions'], widthMm: number): number {
  if (toTake.length === 0) return 0;
  const lines = toTake.map(({ key, words }) => cutTo(`${key}: ${words}`, widthMm / layout.smallLetter, 9));
  return layout.heading + linesIn(lines) * layout.smallLine;
}

/** What stands on every ticket, and the heads of the lists that are there. */
function headsMm(tables: readonly boolean[], list: boolean): number {
  const { head, days, heading, columns, notes } = layout;
  return (
    head +
    days +
    tables.filter(Boolean).length * (heading + columns) +
    Number(list) * heading +
    heading +
    notes
  );
}

function firstOf<Row>(rows: readonly Row[], count: number): PrintedList<Row> {
  return { rows: rows.slice(0, count), more: rows.length - count };
}
