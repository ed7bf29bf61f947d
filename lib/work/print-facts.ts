import type { Client } from '@/shared/clients';
import type { Instrument, JobRecord } from '@/shared/jobs';
import { layout } from './print-paper';
import { cutTo, linesIn, type PrintedText } from './print-text';
import { dayInWords } from './print-words';

/** What is known before the work begins. */
export interface PrintedFacts {
  title: PrintedText;
  /** The days in words; null is a place to write it. */
  days: { received: string; promised: string | null; collected: string | null; place: PrintedText | null };
  client: { name: PrintedText; reach: PrintedText | null } | null;
  cameWith: PrintedText | null;
  instrument: {
    type: PrintedText;
    maker: PrintedText;
    model: PrintedText;
    serial: PrintedText;
    features: PrintedText | null;
  };
}

/** Title, days, client and instrument. `widthMm`: what is written on. */
export function printedFacts(
  { job, client, instrument }: Pick<JobRecord, 'job' | 'client' | 'instrument'>,
  widthMm: number,
): PrintedFacts {
  const halfMm = (widthMm - layout.columnGap) / 2;
  const titleMm = widthMm - layout.code - layout.columnGap;
  return {
    title: cutTo(job.title, titleMm / layout.titleLetter, 2),
    days: {
      received: dayInWords(job.receivedOn),
      promised: job.promisedOn && dayInWords(job.promisedOn),
      collected: job.collectedOn && dayInWords(job.collectedOn),
      place: job.place ? cutTo(job.place, layout.place / layout.letter, 2) : null,
    },
    client: client && printedClient(client, halfMm),
    cameWith: job.cameWith.length > 0 ? cutTo(job.cameWith.join(', '), halfMm / layout.letter, 2) : null,
    instrument: printedInstrument(instrument, halfMm),
  };
}

function printedClient({ name, reach }: Client, halfMm: number): NonNullable<PrintedFacts['client']> {
  return {
    name: cutTo(name, halfMm / layout.strongLetter, 1),
    reach: reach ? cutTo(reach, halfMm / layout.letter, 4) : null,
  };
}

function printedInstrument(instrument: Instrument, halfMm: number): PrintedFacts['instrument'] {
  const known = (text: string | null, lines: number) =>
    cutTo(text || 'unknown', (halfMm - layout.label) / layout.letter, lines);
  return {
    type: cutTo(instrument.type, halfMm / layout.strongLetter, 1),
    maker: known(instrument.maker, 1),
    model: known(instrument.model, 1),
    serial: known(instrument.serial, 2),
    features: instrument.features ? cutTo(instrument.features, halfMm / layout.letter, 3) : null,
  };
}

/** Height of client and instrument, side by side. */
export function factsMm({ client, cameWith, instrument }: PrintedFacts): number {
  const { type, maker, model, serial, features } = instrument;
  const left = [client?.name ?? oneLine, client?.reach, oneLine, cameWith ?? oneLine];
  const right = [type, maker, model, serial, features];
  return layout.heading + Math.max(linesIn(left), linesIn(right)) * layout.line;
}

/** Words that stand there in any case. */
const oneLine: PrintedText = { text: '', lines: 1 };
