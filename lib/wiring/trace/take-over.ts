import type { AssumedCoil, Coil, Trace, TraceInput } from '@/shared/wiring';
import { letterCode } from '../colours';
import { analyseTrace } from './analyse';
import { prepareTrace } from './prepare';
import { TraceProblem } from './problems';

/**
 * Gives a pickup the conductor roles of one that was traced. Rows and positive ends come along where the
 * rows have the same names; resistances do not, they are this pickup's own. All of it is `assumed` until
 * own readings prove it.
 * @throws TraceProblem when no coil of the other pickup has both of its conductors here
 */
export function takeOver(target: TraceInput, from: TraceInput): Trace {
  const trace = prepareTrace(target);
  const source = analyseTrace(from);
  const assumed = source.coils.flatMap((coil) => assumedFrom(coil, trace, source.subject));
  if (assumed.length === 0) {
    throw new TraceProblem(
      `Nothing of ${source.subject} can be taken over to ${trace.subject}.`,
      'The other pickup needs at least one traced coil whose two colours are on this one as well.',
      { field: 'assumed' },
    );
  }
  return { ...trace, assumed };
}

function assumedFrom(coil: Coil, trace: Trace, fromSubject: string): AssumedCoil[] {
  const [first, second] = coil.ends.map((names) => trace.conductors.find((here) => isAmong(here, names)));
  if (first === undefined || second === undefined) return [];
  const [lies] = coil.rows;
  const row = lies && trace.rows.includes(lies.row) ? lies.row : null;
  const positive = lies?.positive ?? null;
  const isFirst = positive !== null && coil.ends[0].includes(positive);
  return [
    {
      ends: [first, second],
      row,
      positive: positive === null ? null : isFirst ? first : second,
      fromSubject,
    },
  ];
}

function isAmong(here: string, names: readonly string[]): boolean {
  return names.some((name) => name !== 'shield' && name !== 'frame' && letterCode(name) === letterCode(here));
}
