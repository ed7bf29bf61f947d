import type { Coil, Plan, PlanLine, TraceAnalysis, WiringBasis } from '@/shared/wiring';
import { weakest } from '../trace/basis';
import { sayList } from '../trace/say';
import type { Circuit, Group } from './circuit';
import { isMetal, legDirection, sayCoil } from './legs';
import { parallelOf, soundOf } from './predict';
import { type Places, stepsOf, usualPlaces } from './words';

export type PlanHead = { id: string; kind: Plan['kind']; title: string; notes: string[] };

/** Puts one circuit into a plan: lines with place and basis, prediction, steps, and what is not known. */
export function planOf(circuit: Circuit, analysis: TraceAnalysis, places: Places, head: PlanHead): Plan {
  const lines = linesOf(circuit, analysis, places);
  const prediction = parallelOf(circuit.branches);
  const endsOf = (role: PlanLine['role']) =>
    lines.filter((line) => line.role === role).map((line) => line.ends);
  const predicted = {
    linkSwitchedTo: circuit.linkSwitchedTo,
    predictedOhms: prediction?.ohms ?? null,
    predictedUncertaintyOhms: prediction?.uncertaintyOhms ?? null,
  };
  return {
    ...head,
    hot: endsOf('hot').flat(),
    joined: endsOf('joined'),
    ground: endsOf('ground').flat(),
    insulated: endsOf('insulated').flat(),
    ...predicted,
    stays: circuit.branches.flat().map(sayCoil),
    ...soundOf(circuit.branches, analysis),
    basis: weakest(...lines.map((line) => line.basis)),
    lines,
    steps: stepsOf(lines, circuit.switched === null ? undefined : lines[circuit.switched], predicted),
    unknowns: unknownsOf(circuit, analysis),
    notes: [...head.notes, ...metalNotes(circuit)],
  };
}

function linesOf(circuit: Circuit, analysis: TraceAnalysis, places: Places): PlanLine[] {
  const untraced = strayLines(analysis, circuit, places);
  const lines = circuit.groups.map((group, at): PlanLine => {
    const own = [...new Set(group.points.flat())];
    const ends = group.role === 'ground' ? withMetal(own, analysis) : own;
    const place = at === circuit.switched ? 'switched' : group.role;
    return {
      role: group.role,
      ends,
      goesTo: places[place] ?? usualPlaces[place],
      inside: group.points.length === 1 && ends.length > 1 && ends.length === own.length,
      basis: basisOf(group, circuit),
    };
  });
  return [...lines, ...untraced];
}

/** The shield and the frame go to ground, with any conductor that only leads to them. */
function withMetal(ends: string[], analysis: TraceAnalysis): string[] {
  const onMetal = analysis.strands
    .filter((strand) => strand.shape === 'bare')
    .flatMap((strand) => strand.points.filter((point) => point.some(isMetal)).flat());
  return [...new Set([...ends, ...onMetal])];
}

/** Conductors that no coil was found for: put away, and said to be unknown. */
function strayLines(analysis: TraceAnalysis, circuit: Circuit, places: Places): PlanLine[] {
  const placed = new Set(circuit.groups.flatMap((group) => group.points.flat()));
  const stray = analysis.strands
    .flatMap((strand) => strand.points)
    .filter((point) => !point.some((name) => isMetal(name) || placed.has(name)));
  return stray.map((ends) => ({
    role: 'insulated',
    ends,
    goesTo: places.insulated ?? usualPlaces.insulated,
    inside: ends.length > 1,
    basis: 'assumed',
  }));
}

/** How the place of these ends is known. Which way round matters only between several legs. */
function basisOf(group: Group, circuit: Circuit): WiringBasis {
  const coils = group.coils.map((coil) => coil.basis);
  const matters = circuit.legs.length > 1 && group.role !== 'insulated';
  const ways = matters ? group.coils.map(wayRound) : [];
  return weakest(...coils, ...ways);
}

function wayRound(coil: Coil): WiringBasis {
  const bases = coil.rows.map((row) => row.positiveBasis ?? 'assumed');
  return coil.rows.length === 0 ? 'assumed' : weakest(...bases);
}

function unknownsOf(circuit: Circuit, analysis: TraceAnalysis): string[] {
  const coils = circuit.branches.flat();
  const unread = coils
    .filter((coil) => coil.ohms === null)
    .map((coil) => `the resistance of the ${sayCoil(coil)}`);
  const turned = circuit.legs.length < 2 ? [] : circuit.legs.filter((leg) => legDirection(leg) === null);
  const ways = turned.map((leg) => {
    const ends = [leg.points[0], leg.points[leg.points.length - 1]].map((point) => point?.[0] ?? '');
    return `which end is positive: ${sayList(ends)} may have to change places`;
  });
  return [...unread, ...ways, ...strayNames(circuit, analysis)];
}

function strayNames(circuit: Circuit, analysis: TraceAnalysis): string[] {
  return strayLines(analysis, circuit, {}).map((line) => `what ${sayList(line.ends)} belongs to`);
}

/** An end that is on the metal inside can only be ground. */
export function metalClashes(circuit: Circuit): string[] {
  return circuit.groups
    .filter((group) => group.role !== 'ground')
    .flatMap((group) => group.points.flat())
    .filter(isMetal);
}

function metalNotes(circuit: Circuit): string[] {
  return metalClashes(circuit).map(
    (metal) =>
      `An end that this plan keeps off ground is connected to the ${metal} inside: lift it there first, or the coil is shorted.`,
  );
}
