import type { Coil, CoilStrand, Trace, TraceAnalysis, TraceInput } from '@/shared/wiring';
import { letterCode } from '../colours';
import { type Complaint, withMoments } from './complaints';
import { concludeAll } from './conclude';
import { type Model, modelOf, ofKind } from './model';
import { cellOf, nameOf } from './net';
import { nextFor } from './next';
import { prepareTrace } from './prepare';
import { pairsOf, type Section, type Strand } from './sections';

/**
 * Everything that follows from the readings of one pickup: the pair grid, the coils, what is concluded
 * and why, what contradicts, and what to measure next. Does not depend on the order of the readings.
 * @throws TraceProblem, UnknownColour for what cannot be a trace at all
 */
export function analyseTrace(input: TraceInput): TraceAnalysis {
  const trace = prepareTrace(input);
  const model = modelOf(trace);
  const strands = model.strands.map((strand) => showStrand(model, strand));
  const contradictions = withMoments([...model.complaints, ...poleComplaints(trace)], trace.readings);
  const next = nextFor(model);
  return {
    subject: trace.subject,
    conductors: trace.conductors.map((name) => ({ name, code: letterCode(name) })),
    shield: trace.shield,
    frame: trace.frame,
    rows: trace.rows,
    grid: pairsOf(model.terminals.map((_, at) => at)).map(([a, b]) => cellOf(model.net, a, b)),
    strands,
    coils: strands.flatMap((strand) => strand.coils),
    poles: settledPoles(trace),
    conclusions: concludeAll(model),
    contradictions,
    next,
    complete: next === null && contradictions.length === 0,
  };
}

function showStrand(model: Model, strand: Strand): CoilStrand {
  return {
    shape: strand.shape,
    points: strand.nodes.map((node) => pointNames(model, node)),
    coils: strand.sections.map((section) => showCoil(model, section)),
  };
}

/** Every terminal that is the same point. */
function pointNames({ net }: Model, node: number): string[] {
  return net.terminals.filter((_, at) => net.nodeOf[at] === node);
}

function showCoil(model: Model, section: Section): Coil {
  const { fact, nodes } = section;
  const [first, second] = nodes;
  return {
    key: `${nameOf(model.net, Math.min(first, second))}|${nameOf(model.net, Math.max(first, second))}`,
    ends: [pointNames(model, first), pointNames(model, second)],
    ohms: fact.ohms,
    uncertaintyOhms: fact.uncertaintyOhms,
    basis: fact.basis,
    rows: (model.rows.get(section) ?? []).map(({ row, basis, positive, positiveBasis }) => ({
      row,
      basis,
      positive: positive === null ? null : nameOf(model.net, positive),
      positiveBasis,
    })),
    readings: fact.readings,
  };
}

function settledPoles(trace: Trace): TraceAnalysis['poles'] {
  const read = ofKind(trace.readings, 'pole');
  return trace.rows.flatMap((row) => {
    const [first, ...others] = read.filter((reading) => reading.row === row);
    if (!first || others.some((other) => other.up !== first.up)) return [];
    return [{ row, up: first.up, basis: first.basis }];
  });
}

function poleComplaints(trace: Trace): Complaint[] {
  return trace.rows.flatMap((row) => {
    const [first, ...others] = ofKind(trace.readings, 'pole').filter((reading) => reading.row === row);
    const against = others.find((other) => other.up !== first?.up);
    if (!first || !against) return [];
    return [
      {
        key: `pole:${first.id}|${against.id}`,
        text: `the ${row} row was read as north and as south: hold the compass to it again and set the wrong one aside.`,
        readings: [first.id, against.id],
      },
    ];
  });
}
