import type { Coil, CoilStrand, Plan, PlanLine, TraceAnalysis, WiringBasis } from '@/shared/wiring';
import { type ColourName, colours, readConductor } from '../colours';
import { sayOhms } from '../trace/say';
import { isMetal, sayCoil } from './legs';
import { sayEnds } from './words';

export type Point = { x: number; y: number };

/** A coil as a box at the left; its conductors leave at `endAt`. */
export type DrawnCoil = {
  key: string;
  x: number;
  y: number;
  width: number;
  height: number;
  label: string;
  value: string;
  positiveAt: Point | null;
  basis: WiringBasis;
};

/** A conductor from the pickup to where it goes. `dash` lengths tell colours apart without colour. */
export type DrawnWire = {
  name: string;
  code: string;
  colours: ColourName[];
  dash: number[];
  points: Point[];
  label: Point & { text: string };
  to: string;
  basis: WiringBasis;
};

/** Where wires end. The shape stands for the role: flag, knot, earth bars, cap. */
export type DrawnNode = Point & {
  id: string;
  role: PlanLine['role'];
  shape: 'flag' | 'knot' | 'earth' | 'cap';
  label: string;
  place: string;
  basis: WiringBasis;
};

export type PlanDrawing = {
  width: number;
  height: number;
  title: string;
  coils: DrawnCoil[];
  wires: DrawnWire[];
  nodes: DrawnNode[];
  description: string;
};

const size = { margin: 24, coilWidth: 72, lead: 96, pitch: 44, lanes: 36, lane: 14, places: 280 } as const;
const shapes = { hot: 'flag', joined: 'knot', ground: 'earth', insulated: 'cap' } as const;

/**
 * Plain geometry of a plan, for a picture of any kind: coils at the left, conductors in the order of the
 * chain, their places at the right. Lengths are without unit; y runs downward.
 */
export function drawPlan(plan: Plan, analysis: TraceAnalysis): PlanDrawing {
  const ends = endsInOrder(plan, analysis);
  const rowOf = new Map(ends.map((end, at) => [end, size.margin + (at + 0.5) * size.pitch]));
  const nodes = nodesOf(plan, rowOf);
  const lowest = Math.max(...nodes.map((node) => node.y), ends.length * size.pitch);
  return {
    width: nodeX(plan) + size.places,
    height: lowest + 2 * size.margin,
    title: plan.title,
    coils: analysis.strands.flatMap((strand) => coilsOf(strand, rowOf)),
    wires: plan.lines.flatMap((line, at) => wiresOf(line, nodes[at], at, rowOf)),
    nodes,
    description: plan.lines
      .map((line) => `${line.role}: ${sayEnds(line.ends)}, ${line.goesTo} (${line.basis})`)
      .join('. '),
  };
}

/** Conductors chain by chain, the chain with the hot end first and each chain from its hot side. */
function endsInOrder(plan: Plan, analysis: TraceAnalysis): string[] {
  const placed = plan.lines.flatMap((line) => line.ends);
  const roleOf = (name: string) => plan.lines.findIndex((line) => line.ends.includes(name));
  const chains = analysis.strands.map((strand) => {
    const points = strand.points.map((point) => point.filter((name) => placed.includes(name)));
    const [first, last] = [points[0]?.[0], points[points.length - 1]?.[0]];
    const isTurned = first !== undefined && last !== undefined && roleOf(first) > roleOf(last);
    return (isTurned ? points.toReversed() : points).flat();
  });
  const withEnds = chains.filter((chain) => chain.length > 0);
  return withEnds.sort((one, two) => roleOf(one[0] ?? '') - roleOf(two[0] ?? '')).flat();
}

function nodeX(plan: Plan): number {
  return size.margin + size.coilWidth + size.lead + size.lanes + plan.lines.length * size.lane;
}

/** Each place sits at the middle of its ends, moved down where another one is in the way. */
function nodesOf(plan: Plan, rowOf: ReadonlyMap<string, number>): DrawnNode[] {
  const wanted = plan.lines.map((line, at) => ({ at, y: mean(line.ends.map((end) => rowOf.get(end) ?? 0)) }));
  const placed = new Map<number, number>();
  let free = size.margin;
  for (const { at, y } of wanted.sort((one, two) => one.y - two.y)) {
    placed.set(at, Math.max(y, free));
    free = Math.max(y, free) + size.pitch * 0.75;
  }
  return plan.lines.map((line, at) => ({
    id: `${line.role}-${at}`,
    role: line.role,
    shape: shapes[line.role],
    x: nodeX(plan),
    y: placed.get(at) ?? 0,
    label: line.role,
    place: line.goesTo,
    basis: line.basis,
  }));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function coilsOf(strand: CoilStrand, rowOf: ReadonlyMap<string, number>): DrawnCoil[] {
  return strand.coils.map((coil) => {
    const ys = coil.ends.map((end) => mean(end.map((name) => rowOf.get(name) ?? 0)));
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
    return {
      key: coil.key,
      x: size.margin,
      y: top - size.pitch / 4,
      width: size.coilWidth,
      height: bottom - top + size.pitch / 2,
      label: sayCoil(coil),
      value: coil.ohms === null ? 'not measured' : sayOhms(coil.ohms),
      positiveAt: positiveAt(coil, rowOf),
      basis: coil.basis,
    };
  });
}

function positiveAt(coil: Coil, rowOf: ReadonlyMap<string, number>): Point | null {
  const y = rowOf.get(coil.rows[0]?.positive ?? '');
  return y === undefined ? null : { x: size.margin + size.coilWidth, y };
}

function wiresOf(
  line: PlanLine,
  node: DrawnNode | undefined,
  lane: number,
  rowOf: ReadonlyMap<string, number>,
): DrawnWire[] {
  if (!node) return [];
  const start = size.margin + size.coilWidth;
  const turn = start + size.lead + size.lanes / 2 + lane * size.lane;
  return line.ends.map((name) => {
    const y = rowOf.get(name) ?? 0;
    const colour = isMetal(name) ? null : readConductor(name);
    const code = colour?.code ?? name.toUpperCase();
    return {
      name,
      code,
      colours: colour?.colours ?? [],
      dash: colour ? dashOf(colour.colours) : [1, 3],
      points: bent({ x: start, y }, turn, node),
      label: { x: start + size.lead / 4, y: y - 6, text: code },
      to: node.id,
      basis: line.basis,
    };
  });
}

/** Straight, or with two corners at `turn`. */
function bent(from: Point, turn: number, { x, y }: Point): Point[] {
  if (from.y === y) return [from, { x, y }];
  return [from, { x: turn, y: from.y }, { x: turn, y }, { x, y }];
}

/** Length of the stroke by place modulo 5, dots by place modulo 3: no two of the fourteen colours share both. */
function dashOf(names: readonly ColourName[]): number[] {
  return names.flatMap((name) => {
    const place = colours.findIndex((colour) => colour.name === name);
    return [6 + 5 * (place % 5), 3, ...Array.from({ length: place % 3 }, () => [1, 3]).flat()];
  });
}
