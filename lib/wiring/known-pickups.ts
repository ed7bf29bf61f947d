import { type HarnessPickup, usualTolerancePercent } from '@/shared/jack';
import type { Reading } from '@/shared/readings';
import type { Conclusion } from '@/shared/wiring';
import { sameSubject, traceOf, type Worksheet } from './record/worksheet';
import { analyseTrace } from './trace';

type Coil = HarnessPickup['coils'][number];

/** From the neck on, as they sit under the strings. */
const places = ['neck', 'middle', 'bridge'];
const longestId = 40;
const longestName = 60;
const mostCoils = 4;

/**
 * The pickups whose resistance a job has measured: by the coils of their traces, or else by their totals.
 * Nothing that is only assumed of another pickup is in them.
 */
export function knownPickups(sheets: readonly Worksheet[], readings: readonly Reading[]): HarnessPickup[] {
  const traced = sheets.map((sheet) => pickupOf(sheet, readings));
  const others = [...new Set(readings.map(({ subject }) => subject))]
    .filter((subject) => /\bpickup\b/i.test(subject))
    .filter((subject) => !sheets.some((sheet) => sameSubject(sheet.subject, subject)))
    .map((subject) => pickupOf(untraced(subject), readings));
  const found = [...traced, ...others].filter((pickup) => pickup.coils.length > 0);
  return found
    .filter(({ id }, at) => found.findIndex((other) => other.id === id) === at)
    .sort((a, b) => orderOf(a.id, places) - orderOf(b.id, places));
}

/** A pickup that nobody traces: its totals can still be read off the record. */
function untraced(subject: string): Worksheet {
  return {
    subject,
    conductors: ['red', 'black'],
    shield: false,
    frame: false,
    rows: ['coil'],
    assumed: [],
    planId: null,
  };
}

function pickupOf(sheet: Worksheet, readings: readonly Reading[]): HarnessPickup {
  const measured = readings.filter(({ basis }) => basis === 'measured');
  const trace = traceOf({ ...sheet, assumed: [] }, measured, () => undefined);
  const total = trace.readings?.flatMap((one) => (one.kind === 'total' && one.ohms ? [one.ohms] : [])).at(-1);
  const coils = coilsOf(analyseTrace(trace).conclusions, sheet.rows).slice(0, mostCoils);
  const whole = total === undefined ? [] : [coil('whole', total)];
  // One coil of a pickup with two rows is not the pickup: its total says more.
  const isWhole = coils.length >= Math.min(sheet.rows.length, sheet.conductors.length / 2);
  return {
    id: idOf(sheet.subject),
    subject: sheet.subject.slice(0, longestName),
    joined: sheet.planId === 'parallel' ? 'parallel' : 'series',
    coils: coils.length > 0 && (isWhole || total === undefined) ? coils : whole,
  };
}

/** In the order of the rows, as the repairer names them; coils of no known row last. */
function coilsOf(conclusions: readonly Conclusion[], rows: readonly string[]): Coil[] {
  const rowOf = (about: readonly string[]) =>
    conclusions.find((one) => one.kind === 'row' && one.about.join() === about.join())?.row;
  // A tapped coil is also seen whole, from end to end.
  const whole = conclusions.flatMap(({ kind, about }) =>
    kind === 'tapped coil' ? [`${about[0]},${about[2]}`] : [],
  );
  return conclusions
    .filter((one) => one.kind === 'coil' && !whole.includes(one.about.join()))
    .flatMap(({ ohms, about }) =>
      ohms === undefined ? [] : [coil(rowOf(about) ?? about.join('–').slice(0, longestName), ohms)],
    )
    .sort((a, b) => orderOf(a.name, rows) - orderOf(b.name, rows));
}

function coil(name: string, ohms: number): Coil {
  return { name, ohms, tolerancePercent: usualTolerancePercent.coil };
}

/** "Neck pickup" → "neck" */
function idOf(subject: string): string {
  const plain = subject
    .toLowerCase()
    .replace(/\bpickup\b/g, ' ')
    .replace(/[^a-z0-9 _-]+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[ _-]+/, '')
    .slice(0, longestId)
    .trim();
  return plain === '' ? 'pickup' : plain;
}

function orderOf(name: string, names: readonly string[]): number {
  const at = names.indexOf(name);
  return at < 0 ? names.length : at;
}
