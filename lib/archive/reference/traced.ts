import { analyseTrace, traceOf, type Worksheet } from '@/lib/wiring';
import { DomainError } from '@/shared/problem';
import type { Reading } from '@/shared/readings';
import type { TracedCoil } from '@/shared/reference';
import type { Coil, TraceAnalysis, TraceInput, WiringBasis } from '@/shared/wiring';
import { Memory } from '../memory';

/** From the surest to the least sure. */
const order: readonly WiringBasis[] = ['measured', 'implied', 'stated', 'assumed'];

/** What a worksheet and its readings come to. */
export interface Traced {
  conductors: { name: string; code: string }[];
  coils: TracedCoil[];
  totalOhms: number | null;
  basis: WiringBasis | null;
  complete: boolean;
  problem: string | null;
}

export function weakest(bases: readonly WiringBasis[]): WiringBasis | null {
  return bases.reduce<WiringBasis | null>(
    (worst, basis) => (worst === null || order.indexOf(basis) > order.indexOf(worst) ? basis : worst),
    null,
  );
}

/** A worksheet thought through; one that cannot be says why, and stands in the table all the same. */
export function tracedOf(
  sheet: Worksheet,
  readings: readonly Reading[],
  expandedOhms: (reading: Reading) => number | undefined,
): Traced {
  try {
    const trace = traceOf(sheet, readings, expandedOhms);
    return asTraced(analysed(trace), trace);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const conductors = sheet.conductors.map((name) => ({ name, code: '' }));
    return { conductors, coils: [], totalOhms: null, basis: null, complete: false, problem: error.message };
  }
}

/** Thinking a worksheet through takes about a millisecond, and its readings seldom change afterwards. */
const analyses = new Memory<TraceAnalysis>(2000);

function analysed(trace: TraceInput): TraceAnalysis {
  return analyses.of(JSON.stringify(trace), () => analyseTrace(trace));
}

function asTraced({ conductors, coils, complete }: TraceAnalysis, trace: TraceInput): Traced {
  const traced = coils.map(coilOf).sort((a, b) => (a.row ?? '~').localeCompare(b.row ?? '~'));
  return {
    conductors,
    coils: traced,
    totalOhms: measuredTotal(trace),
    basis: weakest(traced.map(({ basis }) => basis)),
    complete,
    problem: null,
  };
}

/** Two coils that are linked inside and cannot be told apart stand as one, on both rows. */
function coilOf({ ends, ohms, basis, rows }: Coil): TracedCoil {
  const [one] = rows;
  const positive = rows.length === 1 ? (one?.positive ?? null) : null;
  const bases = rows.flatMap((row) => [row.basis, row.positiveBasis ?? []].flat());
  const end = (names: string[]) => ({ names, isPositive: positive !== null && names.includes(positive) });
  return {
    row: rows.length === 0 ? null : rows.map(({ row }) => row).join(' and '),
    ends: [end(ends[0]), end(ends[1])],
    ohms,
    basis: weakest([basis, ...bases]) ?? basis,
  };
}

/** Readings come in the order they were noted: the last total that was measured counts. */
function measuredTotal({ readings = [] }: TraceInput): number | null {
  const totals = readings.flatMap((reading) =>
    reading.kind === 'total' && (reading.basis ?? 'measured') === 'measured' && reading.ohms !== null
      ? [reading.ohms]
      : [],
  );
  return totals.at(-1) ?? null;
}
