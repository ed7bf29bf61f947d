import { areApart, type Net } from './net';

/** One way the conductors could belong together: blocks of terminals, each on one winding. */
export type Build = number[][];

/**
 * How many conductors the windings of ordinary pickups have, by the number in the cable. Common
 * practice, no source. Three may be a tapped coil, or a coil and a lead of the frame.
 */
const ordinary: Record<number, number[][]> = {
  1: [[1]],
  2: [[2]],
  3: [[3], [2, 1]],
  4: [[2, 2]],
  5: [
    [3, 2],
    [2, 2, 1],
  ],
  6: [
    [2, 2, 2],
    [3, 3],
  ],
};

/**
 * Every build that the readings still allow. Ordinary builds stand alone as long as one of them
 * fits; once none does, everything that can be thought of is possible.
 */
export function possibleBuilds(net: Net, conductorCount: number): { builds: Build[]; areOrdinary: boolean } {
  const units = unitsOf(net, conductorCount);
  const all = partitions(net, units);
  const usual = all.filter((build) => isOrdinary(net, build, conductorCount));
  return usual.length > 0 ? { builds: usual, areOrdinary: true } : { builds: all, areOrdinary: false };
}

function unitsOf(net: Net, conductorCount: number): number[][] {
  const units = new Map<number, number[]>();
  for (let at = 0; at < conductorCount; at++) {
    const component = net.componentOf[at] ?? at;
    units.set(component, [...(units.get(component) ?? []), at]);
  }
  return [...units.values()];
}

function partitions(net: Net, units: readonly number[][]): Build[] {
  return units.reduce<Build[]>(
    (builds, unit) => builds.flatMap((build) => placements(net, build, unit)),
    [[]],
  );
}

function placements(net: Net, build: Build, unit: number[]): Build[] {
  const withOthers = build.flatMap((block, at) =>
    block.some((a) => unit.some((b) => areApart(net, a, b))) ? [] : [build.with(at, [...block, ...unit])],
  );
  return [...withOthers, [...build, unit]];
}

function isOrdinary(net: Net, build: Build, conductorCount: number): boolean {
  const sizes = build.map((block) => block.length).sort((x, y) => y - x);
  const isKnown = (ordinary[conductorCount] ?? []).some((known) => known.join() === sizes.join());
  // Two ends that are one point are no winding.
  return isKnown && build.every((block) => block.length === 1 || nodeCount(net, block) > 1);
}

function nodeCount(net: Net, block: readonly number[]): number {
  return new Set(block.map((at) => net.nodeOf[at])).size;
}

export function areTogether(build: Build, a: number, b: number): boolean {
  return build.some((block) => block.includes(a) && block.includes(b));
}
