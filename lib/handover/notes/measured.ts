import { filmTimeOf } from '@/lib/film';
import { asSayable, kindOf, sayPlace, sayUncertainty, sayValue } from '@/lib/readings';
import type { Reading } from '@/shared/readings';
import { type Block, type Inline, paragraph, table, told, words } from './blocks';
import type { Making, SectionMaker } from './making';
import { onFilm } from './on-film';
import { capital, explained, sentence } from './say';

export const measured: SectionMaker = (making) => {
  const readings = inFilmOrder(making);
  const blocks = [
    ...(readings.length === 0 ? [] : readingTable(making, readings)),
    ...atTheJack(making),
    ...told('More on the measuring:', onFilm(making, 'measurement', 'with a note')),
  ];
  return blocks.length === 0 ? null : { blocks };
};

interface Column {
  head: string;
  cell(making: Making, reading: Reading): Inline[];
  /** Left out where no reading has anything in it. */
  isOptional: boolean;
}

const columns: readonly Column[] = [
  { head: 'What', cell: (making, reading) => [words(whatOf(making, reading))], isOptional: false },
  { head: 'Value', cell: (making, reading) => [words(shownValue(making, reading))], isOptional: false },
  { head: 'Basis', cell: (_making, { basis }) => [words(basis)], isOptional: false },
  { head: 'Time', cell: ({ time }, reading) => [time(reading) ?? []].flat(), isOptional: true },
  {
    head: 'Note',
    cell: ({ say }, { note }) => (note === null || note.trim() === '' ? [] : [words(say(note))]),
    isOptional: true,
  },
];

function readingTable(making: Making, readings: readonly Reading[]): Block[] {
  const filled = columns.map((column) => ({
    ...column,
    cells: readings.map((reading) => column.cell(making, reading)),
  }));
  const shown = filled.filter(
    ({ isOptional, cells }) => !isOptional || cells.some((cell) => cell.length > 0),
  );
  const rows = readings.map((_, at) => shown.map(({ cells }) => cells[at] ?? []));
  const meaning = explained(readings.map(({ basis }) => basis));
  return [
    paragraph(words(opening(readings))),
    table(
      shown.map(({ head }) => head),
      rows,
    ),
    ...(meaning.length === 0 ? [] : [paragraph(words(meaning.join(' ')))]),
  ];
}

function opening(readings: readonly Reading[]): string {
  const areRead = readings.every(({ basis }) => basis === 'measured');
  return areRead
    ? 'These are the values as I read them.'
    : 'These are the values, and how I know each of them.';
}

function inFilmOrder({ facts: { record, published } }: Making): Reading[] {
  const filmMs = ({ takeId, ms }: Reading) =>
    (takeId !== null && ms !== null ? filmTimeOf(published.film, { takeId, ms })?.filmMs : undefined) ??
    published.film.durationMs;
  return record.readings.toSorted((a, b) => filmMs(a) - filmMs(b));
}

/** "Neck pickup, red – white"; the kind is left out where the value tells it. */
function whatOf({ say }: Making, reading: Reading): string {
  const label = kindOf(reading.kind).label;
  const isTold = reading.kind === 'resistance' || reading.kind === 'polarity-kick';
  const parts = [reading.subject, isTold ? '' : label.toLowerCase(), sayPlace(asSayable(reading))];
  return capital(say(parts.filter(Boolean).join(', '))) || label;
}

/** The digits are the meter's: they pass as they are. */
function shownValue({ facts }: Making, reading: Reading): string {
  const meter = facts.record.meters.find(({ id }) => id === reading.meterId);
  return sayUncertainty(reading, meter?.ranges ?? []) ?? sayValue(asSayable(reading));
}

function atTheJack({ facts, say }: Making): Block[] {
  const { judgement } = facts.jack;
  if (!judgement || judgement.checks.length === 0) return [];
  const sentences = [
    'I checked the whole at the jack.',
    say(judgement.text),
    ...judgement.assumptions.map(say),
  ];
  return [paragraph(words(sentences.map(sentence).join(' ')))];
}
