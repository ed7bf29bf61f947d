import type { AssumedCoil, Trace, TraceReading } from '@/shared/wiring';
import { impliedBy } from './basis';
import { type Build, possibleBuilds } from './builds';
import type { Complaint } from './complaints';
import { type PairFact, pairKey, readPairs } from './facts';
import { type Kick, kickFacts, plainKick } from './kicks';
import { buildNet, cellOf, idsOf, type Net, nameOf, netComplaints } from './net';
import { terminalsOf } from './prepare';
import { type RowMap, rowsOf } from './rows';
import { type Strand, strandsOf, sumComplaints } from './sections';

/** Everything that was deduced, by place in the list of terminals; wording and contracts come after. */
export type Model = {
  trace: Trace;
  terminals: string[];
  conductorCount: number;
  /** From own readings only: what has been proved. */
  own: Net;
  builds: Build[];
  /** With what is left over and what was taken over added. */
  net: Net;
  strands: Strand[];
  kicks: Kick[];
  rows: RowMap;
  complaints: Complaint[];
};

/** @param trace as `prepareTrace` gives it */
export function modelOf(trace: Trace): Model {
  const terminals = terminalsOf(trace);
  const conductorCount = trace.conductors.length;
  const kicks = ofKind(trace.readings, 'kick').map((reading) => plainKick(reading, terminals));
  const pairs = readPairs(ofKind(trace.readings, 'pair'), terminals);
  const kicked = kickFacts(kicks, pairs.facts, terminals);
  const own = buildNet(terminals, [...pairs.facts, ...kicked.facts]);
  const { builds, areOrdinary } = possibleBuilds(own, conductorCount);
  const leftOver = buildNet(terminals, [
    ...own.facts,
    ...leftOverPairs(own, builds, areOrdinary, conductorCount),
  ]);
  const taken = assumedFacts(leftOver, trace.assumed);
  const net = buildNet(terminals, [...leftOver.facts, ...taken.facts]);
  const strands = strandsOf(net);
  const rows = rowsOf(net, strands, kicks, trace);
  const complaints = [
    ...pairs.complaints,
    ...kicked.complaints,
    ...netComplaints(own),
    ...sumComplaints(own),
    ...taken.complaints,
    ...rows.complaints,
  ];
  return {
    trace,
    terminals,
    conductorCount,
    own,
    builds,
    net,
    strands,
    kicks,
    rows: rows.rows,
    complaints,
  };
}

export function ofKind<K extends TraceReading['kind']>(readings: readonly TraceReading[], kind: K) {
  return readings.filter((reading): reading is Extract<TraceReading, { kind: K }> => reading.kind === kind);
}

/** One ordinary build left: its unread pairs are coils by elimination, implied and not measured. */
function leftOverPairs(own: Net, builds: readonly Build[], areOrdinary: boolean, count: number): PairFact[] {
  const [only] = builds;
  const grounds = own.facts.filter((fact) => fact.state !== 'disputed' && fact.b < count);
  if (!only || builds.length > 1 || !areOrdinary || grounds.length === 0) return [];
  return only.flatMap(([a, b, ...more]) => {
    if (a === undefined || b === undefined || more.length > 0) return [];
    return own.componentOf[a] === own.componentOf[b] ? [] : [leftOverPair(own, grounds, a, b)];
  });
}

function leftOverPair(own: Net, grounds: readonly PairFact[], a: number, b: number): PairFact {
  const wound = grounds.filter((fact) => fact.state === 'winding');
  const cited = wound.length > 0 ? wound : grounds;
  const found = wound.map((fact) => `${nameOf(own, fact.a)}/${nameOf(own, fact.b)}`);
  return {
    a,
    b,
    state: 'winding',
    ohms: null,
    uncertaintyOhms: null,
    basis: impliedBy(...cited.map((fact) => fact.basis)),
    readings: idsOf(cited),
    because:
      found.length > 0
        ? `is what ${found.join(' and ')} leaves for another coil`
        : 'is the only pairing that the open readings leave',
  };
}

/** Coils taken over from another trace, where nothing of this pickup says more. */
function assumedFacts(net: Net, assumed: readonly AssumedCoil[]) {
  const facts: PairFact[] = [];
  const complaints: Complaint[] = [];
  for (const coil of assumed) {
    const [a, b] = [net.terminals.indexOf(coil.ends[0]), net.terminals.indexOf(coil.ends[1])];
    const cell = cellOf(net, a, b);
    if (cell.state === 'unread') facts.push(assumedFact(coil, Math.min(a, b), Math.max(a, b)));
    else if (cell.state !== 'winding' && cell.state !== 'disputed') complaints.push(notAsTaken(coil, cell));
  }
  return { facts: facts.filter((fact) => isFree(net, fact, facts)), complaints };
}

/** A taken-over coil needs two ends that hang on nothing yet. */
function isFree(net: Net, fact: PairFact, others: readonly PairFact[]): boolean {
  const isLoose = (at: number) =>
    net.componentOf.every((component, other) => other === at || component !== net.componentOf[at]);
  const shares = others.some(
    (other) => other !== fact && [other.a, other.b].some((at) => at === fact.a || at === fact.b),
  );
  return isLoose(fact.a) && isLoose(fact.b) && !shares;
}

function assumedFact(coil: AssumedCoil, a: number, b: number): PairFact {
  const because = `was a coil on ${coil.fromSubject} and is taken over from there`;
  return {
    a,
    b,
    state: 'winding',
    ohms: null,
    uncertaintyOhms: null,
    basis: 'assumed',
    readings: [],
    because,
  };
}

function notAsTaken(coil: AssumedCoil, cell: { state: string; readings: string[] }): Complaint {
  return {
    key: `taken:${coil.ends.join('|')}`,
    text: `${coil.ends.join('/')} was taken over from ${coil.fromSubject} as a coil, but reads ${cell.state} here: the own reading stands.`,
    readings: cell.readings,
  };
}

/** Windings as they were found between terminals, pair by pair; `pairKey` leads to each. */
export function windingsByPair(net: Net): Map<number, PairFact> {
  return new Map(
    net.facts.filter((fact) => fact.state === 'winding').map((fact) => [pairKey(fact.a, fact.b), fact]),
  );
}
