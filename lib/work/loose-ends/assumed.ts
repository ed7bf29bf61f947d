import type { LooseEnd } from '@/shared/loose-ends';
import type { Coil, Plan, PlanLine } from '@/shared/wiring';
import { newest } from './after';
import type { LooseEndFacts, OutcomeFacts, TraceFacts } from './facts';
import { sayList, sayPickup, sentence } from './say';

/** Conductors whose part is assumed and not measured, one sentence a pickup. */
export function assumedEnds({ traces }: LooseEndFacts): LooseEnd[] {
  return traces.flatMap((trace): LooseEnd[] => {
    const outcome = newest(trace.outcomes);
    const names = assumedConductors(trace, outcome);
    if (names.length === 0) return [];
    const { id, subject } = trace.worksheet;
    const are = names.length === 1 ? 'is' : 'are';
    return [
      {
        id: `assumed conductor:${id}`,
        kind: 'assumed conductor',
        sentence: `${sentence(sayList(names))} of ${sayPickup(subject)} ${are} assumed, not measured.`,
        since: outcome?.createdAt ?? trace.createdAt,
        place: { on: 'trace', traceId: id },
      },
    ];
  });
}

/** What was joined counts first, then the plan that was chosen, then what was taken over from another pickup. */
function assumedConductors(trace: TraceFacts, outcome: OutcomeFacts | null): string[] {
  const { analysis, plans, worksheet } = trace;
  const planId = outcome?.outcome.plan ?? worksheet.planId;
  const plan = plans.find(({ id }) => id === planId);
  const lines = outcome?.outcome.lines ?? plan?.lines;
  const ends = lines
    ? lines.filter((line) => isAssumed(line, plan)).flatMap((line) => line.ends)
    : analysis.coils.flatMap(assumedEndsOf);
  return analysis.conductors.map(({ name }) => name).filter((name) => ends.includes(name));
}

/** An outcome keeps the basis of its day; what was measured since is in the plan, where the line is in it still. */
function isAssumed(line: PlanLine, plan: Plan | undefined): boolean {
  const now = plan?.lines.find((other) => other.role === line.role && isSameSet(other.ends, line.ends));
  return (now ?? line).basis === 'assumed';
}

function isSameSet(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((end) => b.includes(end));
}

function assumedEndsOf({ ends, basis, rows }: Coil): string[] {
  const isTurned = rows.some((row) => row.basis === 'assumed' || row.positiveBasis === 'assumed');
  return basis === 'assumed' || isTurned ? ends.flat() : [];
}
