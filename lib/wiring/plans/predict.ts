import type { Coil, TraceAnalysis, YesNoUnknown } from '@/shared/wiring';
import { inQuadrature } from '../trace/uncertainty';
import { directionOf } from './legs';

export type Prediction = { ohms: number; uncertaintyOhms: number } | null;

/**
 * Resistances in series, null as soon as one of them is not known. The readings are taken as independent.
 * One meter's errors hang together (JCGM 100:2008, 5.2.2, note), but a total read on the same meter shares
 * them, so that its comparison errs on the wide side.
 */
export function seriesOf(coils: readonly Coil[]): Prediction {
  let ohms = 0;
  const parts: number[] = [];
  for (const coil of coils) {
    if (coil.ohms === null) return null;
    ohms += coil.ohms;
    parts.push(coil.uncertaintyOhms ?? 0);
  }
  return { ohms, uncertaintyOhms: inQuadrature(...parts) };
}

/**
 * Branches side by side: 1/R = Σ 1/Rᵢ, and u(R) = R²·√Σ(uᵢ/Rᵢ²)² by the law of propagation
 * (JCGM 100:2008, 5.1.2).
 */
export function parallelOf(branches: readonly Coil[][]): Prediction {
  const all = branches.map(seriesOf);
  const [only] = all;
  if (all.length === 1) return only ?? null;
  const known = all.filter((branch) => branch !== null);
  if (known.length < all.length) return null;
  const ohms = 1 / known.reduce((sum, branch) => sum + 1 / branch.ohms, 0);
  const parts = known.map((branch) => branch.uncertaintyOhms / branch.ohms ** 2);
  return { ohms, uncertaintyOhms: ohms ** 2 * inQuadrature(...parts) };
}

/** One coil under one row, as the circuit passes it: along its positive direction or against it. */
type Voice = { row: string | null; direction: 1 | -1 | null };

/**
 * Strings add when every coil is passed the same way round. Hum is picked up by the sense of the turns
 * alone, and the string by turns and magnet together, so hum cancels when (direction × magnet) sums to
 * nothing. Equal turns are taken for granted; rests are always left in practice.
 */
export function soundOf(
  branches: readonly Coil[][],
  analysis: TraceAnalysis,
): { stringsAdd: YesNoUnknown; humCancels: YesNoUnknown } {
  const coils = branches.flat();
  if (mayHideSecondCoil(coils, analysis)) return { stringsAdd: 'unknown', humCancels: 'unknown' };
  const voices = coils.flatMap(voicesOf);
  return { stringsAdd: stringsAdd(voices), humCancels: humCancels(voices, analysis) };
}

function voicesOf(coil: Coil): Voice[] {
  if (coil.rows.length === 0) return [{ row: null, direction: null }];
  return coil.rows.map(({ row, positive }) => ({ row, direction: directionOf(coil, positive) }));
}

/** Two ends and two rows: until both rows were tried, two coils may be linked inside. */
function mayHideSecondCoil(coils: readonly Coil[], analysis: TraceAnalysis): boolean {
  if (coils.length > 1 || analysis.coils.length > 1 || analysis.rows.length === 1) return false;
  return !analysis.conclusions.some(({ kind }) => kind === 'single coil' || kind === 'linked inside');
}

function stringsAdd(voices: readonly Voice[]): YesNoUnknown {
  if (voices.length === 1) return 'yes';
  if (voices.some(({ direction }) => direction === null)) return 'unknown';
  return new Set(voices.map(({ direction }) => direction)).size === 1 ? 'yes' : 'no';
}

function humCancels(voices: readonly Voice[], analysis: TraceAnalysis): YesNoUnknown {
  if (voices.length % 2 === 1) return 'no';
  let sum = 0;
  for (const { row, direction } of voices) {
    const pole = analysis.poles.find((one) => one.row === row);
    if (!pole || direction === null) return 'unknown';
    sum += direction * (pole.up === 'north' ? 1 : -1);
  }
  return sum === 0 ? 'yes' : 'no';
}
