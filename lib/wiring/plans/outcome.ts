import type { Plan, PlanLine, WiringMoment, WiringOutcome } from '@/shared/wiring';
import { weakest } from '../trace/basis';
import { TraceProblem } from '../trace/problems';

type Joint = {
  subject: string;
  plan: Plan;
  /** What was really joined, when it differs from the plan. */
  lines?: PlanLine[];
  /** The moment of the joint on the film. */
  moment?: WiringMoment;
};

/**
 * The record of what was joined to what and where each end went, with the basis of every line.
 * @throws TraceProblem when an end is on two lines, or hot or ground is missing
 */
export function recordOutcome({ subject, plan, lines = plan.lines, moment }: Joint): WiringOutcome {
  checkLines(lines);
  const endsOf = (role: PlanLine['role']) =>
    lines.filter((line) => line.role === role).flatMap((line) => line.ends);
  const placed = lines.flatMap((line) => line.ends);
  const ground = endsOf('ground');
  return {
    subject,
    plan: plan.id,
    title: plan.title,
    lines: [...lines],
    hot: endsOf('hot'),
    ground,
    shield: ground.includes('shield') ? 'ground' : placed.includes('shield') ? 'not connected' : 'none',
    insulated: endsOf('insulated'),
    basis: weakest(...lines.map((line) => line.basis)),
    moment: moment ?? null,
  };
}

function checkLines(lines: readonly PlanLine[]): void {
  const placed = lines.flatMap((line) => line.ends);
  const twice = placed.find((end, at) => placed.indexOf(end) !== at);
  if (twice !== undefined) {
    throw new TraceProblem(
      `${twice} is on two lines.`,
      'Every end goes to one place; take it off one of them.',
      { field: 'lines', value: twice },
    );
  }
  for (const role of ['hot', 'ground'] as const) {
    if (lines.some((line) => line.role === role)) continue;
    throw new TraceProblem(`Nothing is ${role}.`, `Say which end went to ${role}.`, {
      field: 'lines',
      value: role,
    });
  }
}
