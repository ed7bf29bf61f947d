import type { Reading } from '@/shared/readings';
import type { TraceInput, TraceReading, WiringMoment } from '@/shared/wiring';
import { isConductorColour, letterCode, readMetal } from '../colours';

/** What a trace keeps of its own; its readings are the job's, found by subject and terminals. */
export interface Worksheet {
  subject: string;
  conductors: readonly string[];
  shield: boolean;
  frame: boolean;
  rows: readonly string[];
  assumed: NonNullable<TraceInput['assumed']>;
  /** The plan that was chosen for joining; totals are held against it. */
  planId: string | null;
}

/** Words for the two ends of a finished pickup: a resistance between them is its total. */
const totalEnds = new Set(['hot', 'ground', 'earth', 'lead', 'output', 'total']);

/**
 * The trace that a job's readings make of a worksheet. A reading belongs when its subject is the worksheet's
 * and its terminals are on it; the rest are passed over, they speak of other things.
 * @param expandedOhms the expanded uncertainty (k = 2) of a reading by its meter; undefined without one
 */
export function traceOf(
  sheet: Worksheet,
  readings: readonly Reading[],
  expandedOhms: (reading: Reading) => number | undefined,
): TraceInput {
  const own = readings.filter((reading) => sameSubject(reading.subject, sheet.subject));
  return {
    subject: sheet.subject,
    conductors: [...sheet.conductors],
    shield: sheet.shield,
    frame: sheet.frame,
    rows: [...sheet.rows],
    assumed: sheet.assumed,
    readings: own.flatMap((reading) => traceReading(sheet, reading, expandedOhms(reading)) ?? []),
  };
}

/** "Neck pickup" and "neck" are the same pickup. */
export function sameSubject(a: string, b: string): boolean {
  return plainSubject(a) === plainSubject(b);
}

function plainSubject(subject: string): string {
  return subject
    .toLowerCase()
    .replace(/\bpickup\b/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

function traceReading(
  sheet: Worksheet,
  reading: Reading,
  uncertaintyOhms: number | undefined,
): TraceReading | null {
  const known = { id: reading.id, basis: reading.basis, ...moment(reading) };
  if (reading.kind === 'polarity-kick') return kick(sheet, reading, known);
  if (reading.kind !== 'resistance') return null;
  const value = { ohms: reading.baseValue, ...(uncertaintyOhms === undefined ? {} : { uncertaintyOhms }) };
  const { between } = reading;
  if (!between || between.every((end) => totalEnds.has(end.toLowerCase()))) {
    return { kind: 'total', ...known, ...value, ...(sheet.planId === null ? {} : { plan: sheet.planId }) };
  }
  return between.every((end) => isOn(sheet, end)) ? { kind: 'pair', ...known, between, ...value } : null;
}

type Known = Pick<TraceReading, 'id' | 'basis'> & { moment?: WiringMoment };

function kick(sheet: Worksheet, reading: Reading, known: Known): TraceReading | null {
  const { leads, steel, row, sign, size } = reading.details;
  if (!leads || !steel || !row || !sign) return null;
  if (!isOn(sheet, leads.red) || !isOn(sheet, leads.black)) return null;
  return { kind: 'kick', ...known, leads, steel, row, sign, ...(size ? { size } : {}) };
}

function moment(reading: Reading): { moment?: WiringMoment } {
  return reading.takeId !== null && reading.ms !== null
    ? { moment: { takeId: reading.takeId, ms: reading.ms } }
    : {};
}

function isOn(sheet: Worksheet, terminal: string): boolean {
  const metal = readMetal(terminal);
  if (metal) return metal === 'shield' ? sheet.shield : sheet.frame;
  return sheet.conductors.some((conductor) => codeOf(conductor) === codeOf(terminal));
}

/** "lug 3" is no colour: it stands for itself. */
function codeOf(text: string): string {
  return isConductorColour(text) ? letterCode(text) : text.toLowerCase();
}
