import type { Plan, PlanLine } from '@/shared/wiring';
import { sayList, sayOhms, sentence } from '../trace/say';

/** Where things go when nothing else is said; a workshop may name its own places. */
export const usualPlaces = {
  hot: 'the input lug of the volume pot',
  ground: 'the back of the volume pot',
  joined: 'a splice of its own, sleeved',
  switched: 'the common lug of the split switch',
  insulated: 'cut back and sleeved by itself, touching nothing',
} as const;
export type Places = { [place in keyof typeof usualPlaces]?: string };

export function sayEnds(ends: readonly string[]): string {
  return sayList(
    ends.map((end) =>
      end === 'shield' ? 'the bare shield' : end === 'frame' ? 'the lead of the frame' : end,
    ),
  );
}

type Prospect = Pick<Plan, 'linkSwitchedTo' | 'predictedOhms' | 'predictedUncertaintyOhms'>;

/**
 * Solder joints in the order that keeps the others out of the way: links, loose ends, ground, hot last.
 * @param switched the line that goes to the split switch, if there is one
 */
export function stepsOf(
  lines: readonly PlanLine[],
  switched: PlanLine | undefined,
  plan: Prospect,
): string[] {
  const order: PlanLine['role'][] = ['joined', 'insulated', 'ground', 'hot'];
  const inOrder = order.flatMap((role) => lines.filter((line) => line.role === role));
  const steps = inOrder.map((line) =>
    line === switched ? switchStep(line, plan.linkSwitchedTo) : stepOf(line),
  );
  return [...steps, measureStep(plan)];
}

function switchStep(line: PlanLine, to: Plan['linkSwitchedTo']): string {
  const ends = sayEnds(line.ends);
  const isReady = line.inside || line.ends.length === 1;
  const joint = isReady ? `take ${ends}` : `join ${ends}, and take the joint`;
  return sentence(`${joint} to ${line.goesTo}; the switch connects it to ${to}.`);
}

function stepOf(line: PlanLine): string {
  const ends = sayEnds(line.ends);
  switch (line.role) {
    case 'joined':
      return sentence(
        `slide a sleeve on first, twist ${ends} together, solder, and cover the joint: ${line.goesTo}.`,
      );
    case 'insulated':
      return sentence(`${ends}${line.inside ? ' (already joined inside)' : ''}: ${line.goesTo}.`);
    case 'ground':
      return `Solder ${ends} to ${line.goesTo} (ground).`;
    case 'hot':
      return `Solder ${ends} to ${line.goesTo} (hot).`;
  }
}

function measureStep(plan: Prospect): string {
  if (plan.predictedOhms === null) return 'Measure between hot and ground before closing up, and note it.';
  const within = plan.predictedUncertaintyOhms ?? 0;
  return `Measure between hot and ground before closing up: ${sayOhms(plan.predictedOhms)} expected, within ${sayOhms(Number(within.toPrecision(2)))}.`;
}
