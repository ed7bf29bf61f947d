import type { PlanDrawing } from '@/lib/wiring';
import type { TraceAnalysis } from '@/shared/wiring';

type Wire = PlanDrawing['wires'][number];

/**
 * A wiring drawing in plain letters: coils at the left, a conductor a row, and for each place that conductors go to
 * a line downward. `o` is a joint on that line; where lines only cross there is none.
 */
export function drawInText(drawing: PlanDrawing, analysis: TraceAnalysis): string {
  const wires = drawing.wires.toSorted((a, b) => startOf(a) - startOf(b));
  const rows = wires.flatMap((wire, at) => {
    const next = wires[at + 1];
    const lanes = lanesOf(drawing, wires, at);
    const row = { ...conductorRow(drawing, wire), lanes: lanes.at, reach: lanes.reach };
    return next ? [row, { ...gapRow(drawing, analysis, wire, next), lanes: lanes.below, reach: 0 }] : [row];
  });
  const left = Math.max(...rows.map(({ text }) => text.length));
  const drawn = rows.map(
    ({ text, tail, lanes, reach }) => `${text.padStart(left)} ${tail}${laneText(lanes, reach)}`,
  );
  const margin = ' '.repeat(left + 1 + tailWidth);
  return [...drawn, ...placeRows(drawing).map((row) => margin + row), '', legend]
    .map((row) => row.trimEnd())
    .join('\n');
}

const startOf = (wire: Wire): number => wire.points[0]?.y ?? 0;

const legend = '( coil   + its positive end   o joint; lines without one only cross';
const nameWidth = 6;
const tailWidth = nameWidth + 5;
const laneWidth = 3;

function conductorRow({ coils }: PlanDrawing, wire: Wire): { text: string; tail: string } {
  const isPositive = coils.some(({ positiveAt }) => positiveAt?.y === startOf(wire));
  return { text: '', tail: `*- ${wire.code.padEnd(nameWidth)}${isPositive ? '+' : ' '}-` };
}

function gapRow(
  { coils }: PlanDrawing,
  analysis: TraceAnalysis,
  upper: Wire,
  lower: Wire,
): { text: string; tail: string } {
  const inside = between(analysis, upper.name, lower.name);
  const coil = coils.find(({ key }) => key === inside);
  const sign = coil ? '(' : inside === null ? ' ' : '|';
  return { text: coil ? `${coil.label}, ${coil.value}` : '', tail: sign.padEnd(tailWidth) };
}

type Sign = 'joint' | 'passing' | 'none';

/** The lines downward beside a conductor and below it; `reach` is how far to the right the conductor goes. */
function lanesOf(
  { nodes }: PlanDrawing,
  wires: readonly Wire[],
  at: number,
): { at: Sign[]; below: Sign[]; reach: number } {
  const hasBegun = (id: string, upTo: number) => wires.slice(0, upTo + 1).some(({ to }) => to === id);
  const own = nodes.findIndex(({ id }) => id === wires[at]?.to);
  return {
    at: nodes.map(({ id }, lane) => (lane === own ? 'joint' : hasBegun(id, at) ? 'passing' : 'none')),
    below: nodes.map(({ id }) => (hasBegun(id, at) ? 'passing' : 'none')),
    reach: own + 1,
  };
}

const signs: Readonly<Record<Sign, string>> = { joint: 'o', passing: '|', none: ' ' };

function laneText(lanes: readonly Sign[], reach: number): string {
  return lanes
    .map((sign, lane) => {
      const wire = lane < reach ? '-' : ' ';
      return wire.repeat(laneWidth - 1) + (sign === 'none' ? wire : signs[sign]);
    })
    .join('');
}

/** One line a place, the rightmost first, so that no line downward is crossed. */
function placeRows({ nodes }: PlanDrawing): string[] {
  const above = (count: number) =>
    nodes
      .slice(0, count)
      .map(() => '|'.padStart(laneWidth))
      .join('');
  return nodes
    .map((node, lane) => {
      const beyond = '-'.repeat((nodes.length - 1 - lane) * laneWidth + 2);
      return `${above(lane)}${'+'.padStart(laneWidth)}${beyond} ${node.label}: ${node.place} (${node.basis})`;
    })
    .toReversed();
}

/** What lies between two neighbouring conductors: a coil by its key, `one point` inside the pickup, or nothing. */
function between(analysis: TraceAnalysis, upper: string, lower: string): string | null {
  const coil = analysis.coils.find(
    ({ ends: [a, b] }) =>
      (a.includes(upper) && b.includes(lower)) || (a.includes(lower) && b.includes(upper)),
  );
  if (coil) return coil.key;
  const points = analysis.strands.flatMap((strand) => strand.points);
  return points.some((point) => point.includes(upper) && point.includes(lower)) ? 'one point' : null;
}
