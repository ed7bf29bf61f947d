import type { AssumedCoil, Trace, WiringBasis } from '@/shared/wiring';
import { impliedBy, weakest } from './basis';
import type { Complaint } from './complaints';
import { pairKey } from './facts';
import type { Kick } from './kicks';
import { type Net, nameOf } from './net';
import type { Section, Strand } from './sections';

/** A row that a section lies under. `positive` is the node of its positive end. */
export type RowFact = {
  row: string;
  positive: number | null;
  basis: WiringBasis;
  positiveBasis: WiringBasis | null;
  readings: string[];
  why: 'kick' | 'other row' | 'other coil' | 'taken over';
};

export type RowMap = Map<Section, RowFact[]>;

/** Which rows each section lies under, from its own kicks, then from its neighbour's, then taken over. */
export function rowsOf(
  net: Net,
  strands: readonly Strand[],
  kicks: readonly Kick[],
  { rows, assumed, conductors }: Trace,
): { rows: RowMap; complaints: Complaint[] } {
  const sections = strands.flatMap((strand) => strand.sections);
  const complaints: Complaint[] = [];
  const map: RowMap = new Map();
  for (const section of sections) {
    const own = kicks.filter((kick) => isAcross(net, kick, section));
    const found = [...ownRows(net, section, own, complaints), ...otherRow(own, rows)];
    const tooMany = sections.length > 1 && found.length > 1;
    if (tooMany) complaints.push(twoRows(net, section, found));
    map.set(section, tooMany ? [] : found);
  }
  const lone = loneCoils(strands, conductors.length);
  if (lone && rows.length === 2) complaints.push(...shareRows(net, lone, rows, map));
  for (const section of sections) complaints.push(...takeRows(net, section, map, assumed));
  return { rows: map, complaints };
}

export function isAcross(net: Net, kick: Kick, section: Section): boolean {
  return pairKey(net.nodeOf[kick.a] ?? 0, net.nodeOf[kick.b] ?? 0) === pairKey(...section.nodes);
}

function ownRows(net: Net, section: Section, kicks: readonly Kick[], complaints: Complaint[]): RowFact[] {
  const large = kicks.filter((kick) => kick.isLarge);
  return [...new Set(large.map((kick) => kick.row))].sort().map((row) => {
    const here = large.filter((kick) => kick.row === row);
    const small = kicks.find((kick) => kick.row === row && !kick.isLarge);
    const ends = new Set(here.map((kick) => positiveNode(net, kick)));
    const [first] = here;
    if (small && first)
      complaints.push(disagree(net, section, row, [first, small], 'a clear kick and a slight one'));
    const against = here.find((kick) => first && positiveNode(net, kick) !== positiveNode(net, first));
    if (against && first)
      complaints.push(disagree(net, section, row, [first, against], 'kicks in opposite directions'));
    const basis = weakest(...here.map((kick) => kick.basis));
    const positive = ends.size === 1 && first ? positiveNode(net, first) : null;
    return {
      row,
      positive,
      basis,
      positiveBasis: positive === null ? null : basis,
      readings: idsOf(here),
      why: 'kick',
    };
  });
}

function positiveNode(net: Net, kick: Kick): number {
  return net.nodeOf[kick.aIsPositive ? kick.a : kick.b] ?? 0;
}

function idsOf(kicks: readonly Kick[]): string[] {
  return kicks.map((kick) => kick.id);
}

/** Slight under one of two rows and nothing clear yet: the coil lies under the other. */
function otherRow(kicks: readonly Kick[], rows: readonly string[]): RowFact[] {
  const slight = kicks.filter((kick) => !kick.isLarge);
  const tried = [...new Set(slight.map((kick) => kick.row))];
  const other = rows.find((row) => row !== tried[0]);
  if (kicks.some((kick) => kick.isLarge) || tried.length !== 1 || other === undefined) return [];
  const basis = impliedBy(...slight.map((kick) => kick.basis));
  return [
    { row: other, positive: null, basis, positiveBasis: null, readings: idsOf(slight), why: 'other row' },
  ];
}

/** The two coils of a four-conductor pickup, hanging on nothing else. */
function loneCoils(strands: readonly Strand[], conductorCount: number): [Section, Section] | null {
  const wound = strands.filter((strand) => strand.shape !== 'bare');
  const [one, two] = wound.flatMap((strand) => strand.sections);
  const isTwo = wound.length === 2 && wound.every((strand) => strand.sections.length === 1);
  return conductorCount === 4 && isTwo && one && two ? [one, two] : null;
}

/** Two rows and two coils: one row each. */
function shareRows(net: Net, coils: [Section, Section], rows: readonly string[], map: RowMap): Complaint[] {
  const [[one], [two]] = [map.get(coils[0]) ?? [], map.get(coils[1]) ?? []];
  if (one && two) return one.row === two.row ? [sameRow(net, coils, one, two)] : [];
  const known = one ?? two;
  const other = rows.find((row) => row !== known?.row);
  if (!known || other === undefined) return [];
  const basis = impliedBy(known.basis);
  const implied: RowFact = {
    row: other,
    positive: null,
    basis,
    positiveBasis: null,
    readings: known.readings,
    why: 'other coil',
  };
  map.set(one ? coils[1] : coils[0], [implied]);
  return [];
}

/** Row and positive end as they were taken over, where own kicks do not say; a clash is named. */
function takeRows(net: Net, section: Section, map: RowMap, assumed: readonly AssumedCoil[]): Complaint[] {
  const coil = assumed.find(
    ({ ends: [a, b] }) => pairKey(nodeNamed(net, a), nodeNamed(net, b)) === pairKey(...section.nodes),
  );
  const [own, second] = map.get(section) ?? [];
  if (!coil || second) return [];
  const positive = coil.positive === null ? null : nodeNamed(net, coil.positive);
  const positiveBasis = positive === null ? null : ('assumed' as const);
  if (!own) {
    if (coil.row === null) return [];
    map.set(section, [
      { row: coil.row, positive, basis: 'assumed', positiveBasis, readings: [], why: 'taken over' },
    ]);
    return [];
  }
  if (coil.row !== null && own.row !== coil.row)
    return [otherThanTaken(net, section, own, `the ${coil.row} row`, coil)];
  if (positive === null || own.positive === positive) return [];
  if (own.positive !== null) return [otherThanTaken(net, section, own, `${coil.positive} positive`, coil)];
  map.set(section, [{ ...own, positive, positiveBasis }]);
  return [];
}

function nodeNamed(net: Net, name: string): number {
  return net.nodeOf[net.terminals.indexOf(name)] ?? -1;
}

function saySection(net: Net, section: Section): string {
  return `${nameOf(net, section.fact.a)}/${nameOf(net, section.fact.b)}`;
}

function disagree(
  net: Net,
  section: Section,
  row: string,
  [one, two]: [Kick, Kick],
  what: string,
): Complaint {
  const readings = [one.id, two.id].sort();
  return {
    key: `kicks:${readings.join('|')}`,
    text: `${saySection(net, section)} gave ${what} under the ${row} row: try it again and set the wrong one aside.`,
    readings,
  };
}

function twoRows(net: Net, section: Section, found: readonly RowFact[]): Complaint {
  const readings = found.flatMap((fact) => fact.readings).sort();
  return {
    key: `rows:${readings.join('|')}`,
    text: `${saySection(net, section)} kicked clearly under both rows, though the pickup has another coil: note which kick was the slight one.`,
    readings,
  };
}

function sameRow(net: Net, [one, two]: [Section, Section], first: RowFact, second: RowFact): Complaint {
  const readings = [...first.readings, ...second.readings].sort();
  return {
    key: `rows:${readings.join('|')}`,
    text: `${saySection(net, one)} and ${saySection(net, two)} both kicked under the ${first.row} row: two coils cannot both lie there.`,
    readings,
  };
}

function otherThanTaken(
  net: Net,
  section: Section,
  own: RowFact,
  taken: string,
  coil: AssumedCoil,
): Complaint {
  return {
    key: `taken:${coil.ends.join('|')}:${taken}`,
    text: `taken over from ${coil.fromSubject}, ${saySection(net, section)} would have ${taken}, but its own kick under the ${own.row} row says otherwise: the own reading stands.`,
    readings: [...own.readings],
  };
}
