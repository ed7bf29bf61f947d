import { exactTime, type Film, filmTimeOf, layOut } from '@/lib/film';
import { minorDigits } from '@/lib/work';
import type { BundleRecord } from '@/shared/bundle';
import type { TakeId } from '@/shared/ids';
import { type Cell, writeCsv } from './csv';

/** The record as tables for a spreadsheet, by file name. Moments stand as film time, and as the take and its own time. */
export function tablesOf(record: BundleRecord): Map<string, string> {
  const on = filmOf(record);
  return new Map([
    ['markers.csv', markersTable(record, on)],
    ['readings.csv', readingsTable(record, on)],
    ['work.csv', workTable(record, on)],
    ['parts.csv', partsTable(record, on)],
    ['narration.csv', narrationTable(record, on)],
  ]);
}

/** Film time, take and take time of a moment, as cells. */
type OnFilm = (moment: { takeId: TakeId | null; ms: number | null } | null) => [Cell, Cell, Cell];
const momentColumns = ['film time', 'take', 'take time'] as const;

function filmOf(record: BundleRecord): OnFilm {
  const takes = new Map(record.takes.map((take) => [take.id, take]));
  const film: Film = layOut(
    record.film.flatMap((id) => {
      const take = takes.get(id);
      if (!take) return [];
      const { trimStartMs, trimEndMs, reachMs, recording } = take;
      return [{ id, trimStartMs, trimEndMs, durationMs: recording.probe?.durationMs ?? reachMs }];
    }),
  );
  return (moment) => {
    if (moment === null || moment.takeId === null || moment.ms === null) return [null, null, null];
    const { takeId, ms } = moment;
    const at = filmTimeOf(film, { takeId, ms });
    const name = takes.get(takeId)?.recording.name ?? null;
    return [at?.shown ? exactTime(at.filmMs) : null, name, exactTime(ms)];
  };
}

function markersTable({ markers }: BundleRecord, on: OnFilm): string {
  return writeCsv(
    [...momentColumns, 'to take time', 'kind', 'title', 'note', 'public'],
    markers.map((marker) => [
      ...on(marker),
      marker.endMs === null ? null : exactTime(marker.endMs),
      marker.kind,
      marker.title,
      marker.note,
      marker.public,
    ]),
  );
}

function readingsTable({ readings, meters }: BundleRecord, on: OnFilm): string {
  const meterNames = new Map(meters.map(({ id, name }) => [id, name]));
  return writeCsv(
    [
      ...momentColumns,
      ...[
        'subject',
        'kind',
        'between',
        'and',
        'value',
        'unit',
        'open',
        'in base unit',
        'basis',
        'meter',
        'note',
      ],
    ],
    readings.map((reading) => [
      ...on(reading),
      reading.subject,
      reading.kind,
      ...(reading.between ?? [null, null]),
      reading.valueText,
      reading.unit,
      reading.open,
      reading.baseValue,
      reading.basis,
      reading.meterId === null ? null : (meterNames.get(reading.meterId) ?? null),
      reading.note,
    ]),
  );
}

function workTable({ work }: BundleRecord, on: OnFilm): string {
  return writeCsv(
    [
      ...['what', 'origin', 'charge', 'price', 'currency', 'outcome', 'why'],
      ...momentColumns.map((column) => `begun: ${column}`),
      ...momentColumns.map((column) => `ended: ${column}`),
    ],
    work.map((item) => [
      ...[item.what, item.origin, item.charge, priceOf(item.priceMinor, item.currency), item.currency],
      ...[item.outcome, item.why],
      ...on(item.begun),
      ...on(item.ended),
    ]),
  );
}

function partsTable({ parts }: BundleRecord, on: OnFilm): string {
  return writeCsv(
    [...['what', 'deed', 'source', 'fate', 'doubt', 'basis of the doubt', 'evidence'], ...momentColumns],
    parts.map(({ what, deed, source, fate, doubt, doubtBasis, evidence, moment }) => [
      ...[what, deed, source, fate, doubt, doubtBasis, evidence],
      ...on(moment),
    ]),
  );
}

function narrationTable({ lines }: BundleRecord, on: OnFilm): string {
  return writeCsv(
    [...momentColumns, 'to take time', 'voice', 'words', 'heard at first'],
    lines.map(({ takeId, startMs, endMs, voice, text, heardText }) => [
      ...on({ takeId, ms: startMs }),
      exactTime(endMs),
      voice,
      text,
      heardText,
    ]),
  );
}

/** "45.50", with the digits of the currency. */
function priceOf(minor: number | null, currency: string | null): string | null {
  if (minor === null) return null;
  const digits = currency === null ? 0 : minorDigits(currency);
  const all = String(minor).padStart(digits + 1, '0');
  return digits === 0 ? all : `${all.slice(0, -digits)}.${all.slice(-digits)}`;
}
