import { type Trace, type TraceInput, type TraceReading, traceSchema } from '@/shared/wiring';
import { readConductor, readMetal, UnknownColour } from '../colours';
import { TraceProblem } from './problems';

/** No hand-held ohmmeter shows more. */
const mostOhms = 1e9;

/**
 * Checks a trace and brings every name into one spelling ("RD" → "red", "bare" → "shield").
 * Readings come back sorted by id, so that nothing depends on the order they were taken in.
 * @throws TraceProblem, UnknownColour
 */
export function prepareTrace(input: TraceInput): Trace {
  const parsed = traceSchema.safeParse(input);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const where = issue?.path.join('.') ?? '';
    throw new TraceProblem(
      `The trace cannot be read at "${where}".`,
      `${issue?.message ?? ''}. Correct it and send it again.`,
      { field: where },
    );
  }
  const trace = parsed.data;
  const rows = distinctRows(trace.rows);
  const names = terminalNames(trace);
  const settled = { ...trace, rows, conductors: trace.conductors.map((text) => readConductor(text).name) };
  return {
    ...settled,
    readings: distinctReadings(trace.readings).map((reading) => prepareReading(reading, names, rows)),
    assumed: trace.assumed.map((coil) => ({
      ...coil,
      ends: twoEnds(coil.ends, names),
      row: coil.row === null ? null : knownRow(coil.row, rows),
      positive: coil.positive === null ? null : resolve(coil.positive, names),
    })),
  };
}

/** All terminals in drawing order: conductors, then shield, then frame. */
export function terminalsOf(trace: Trace): string[] {
  return [...trace.conductors, ...(trace.shield ? ['shield'] : []), ...(trace.frame ? ['frame'] : [])];
}

function terminalNames(trace: Trace): Map<string, string> {
  const names = new Map<string, string>();
  for (const text of trace.conductors) {
    const { code, name } = readConductor(text);
    if (names.has(code)) {
      throw new TraceProblem(
        `The conductor "${name}" is listed twice.`,
        `Give the second one a number, for example "${name} 2".`,
        { field: 'conductors', value: text },
      );
    }
    names.set(code, name);
  }
  if (trace.shield) names.set('shield', 'shield');
  if (trace.frame) names.set('frame', 'frame');
  return names;
}

function resolve(text: string, names: ReadonlyMap<string, string>): string {
  const name = names.get(readMetal(text) ?? codeOf(text));
  if (name) return name;
  throw new TraceProblem(
    `"${text}" is not on this pickup.`,
    `It has ${[...names.values()].join(', ')}. Add the conductor to the trace, or correct the reading.`,
    { field: 'between', value: text },
  );
}

function codeOf(text: string): string {
  try {
    return readConductor(text).code;
  } catch (error) {
    if (error instanceof UnknownColour) return text;
    throw error;
  }
}

function twoEnds(pair: readonly [string, string], names: ReadonlyMap<string, string>): [string, string] {
  const ends: [string, string] = [resolve(pair[0], names), resolve(pair[1], names)];
  if (ends[0] !== ends[1]) return ends;
  throw new TraceProblem(
    `Both leads are on ${ends[0]}.`,
    'A reading needs two different conductors; name the other one.',
    { field: 'between', value: ends[0] },
  );
}

function distinctRows(rows: readonly string[]): string[] {
  const plain = rows.map((row) => row.toLowerCase());
  if (new Set(plain).size === plain.length) return plain;
  throw new TraceProblem(
    'Both rows of poles have the same name.',
    'Call them apart, for example slug and screw.',
    {
      field: 'rows',
    },
  );
}

function knownRow(row: string, rows: readonly string[]): string {
  const plain = row.toLowerCase();
  if (rows.includes(plain)) return plain;
  throw new TraceProblem(
    `This pickup has no "${row}" row.`,
    `Its rows are ${rows.join(' and ')}. Name one of them, or change the trace's rows.`,
    { field: 'row', value: row },
  );
}

function distinctReadings(readings: readonly TraceReading[]): TraceReading[] {
  const sorted = [...readings].sort((a, b) => (a.id < b.id ? -1 : 1));
  const twice = sorted.find((reading, at) => sorted[at + 1]?.id === reading.id);
  if (!twice) return sorted;
  throw new TraceProblem(
    `Two readings carry the id "${twice.id}".`,
    'Every reading needs an id of its own.',
    {
      field: 'id',
      value: twice.id,
    },
  );
}

function prepareReading(
  reading: TraceReading,
  names: ReadonlyMap<string, string>,
  rows: string[],
): TraceReading {
  switch (reading.kind) {
    case 'pair':
      checkOhms(reading.ohms);
      return { ...reading, between: twoEnds(reading.between, names) };
    case 'total':
      checkOhms(reading.ohms);
      return reading;
    case 'pole':
      return { ...reading, row: knownRow(reading.row, rows) };
    case 'kick': {
      const [red, black] = twoEnds([reading.leads.red, reading.leads.black], names);
      return { ...reading, leads: { red, black }, row: knownRow(reading.row, rows) };
    }
  }
}

function checkOhms(ohms: number | null): void {
  if (ohms === null || (ohms >= 0 && ohms <= mostOhms)) return;
  const negative = ohms < 0;
  throw new TraceProblem(
    negative
      ? `A resistance cannot be negative (${ohms} Ω).`
      : `${ohms} Ω is more than a hand-held meter can show.`,
    negative
      ? 'Zero the meter with its leads touching and read again; something may still be live or charged.'
      : 'Enter the reading as open.',
    { field: 'ohms', value: ohms },
  );
}
