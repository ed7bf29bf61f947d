import type { Coil, PlanLine } from '@/shared/wiring';
import type { Leg } from './legs';

/** A group of ends that become one point, before its place and basis are put into words. */
export type Group = { role: PlanLine['role']; points: string[][]; coils: Coil[] };

/** One way to join the legs. `live` coils sound, running from hot to ground, in `branches` side by side. */
export type Circuit = {
  groups: Group[];
  branches: Coil[][];
  linkSwitchedTo: 'ground' | 'hot' | null;
  /** Which link is switched: its place among the `joined` groups. */
  switched: number | null;
  /** Legs whose way round matters to each other. */
  legs: Leg[];
};

const first = (leg: Leg) => leg.points[0] ?? [];
const last = (leg: Leg) => leg.points[leg.points.length - 1] ?? [];

/** All coils one after the other. Links between legs are made; taps within a leg are put away. */
export function inSeries(legs: readonly Leg[]): Circuit {
  const [hotLeg, groundLeg] = [legs[0], legs[legs.length - 1]];
  if (!hotLeg || !groundLeg) throw new RangeError('a series needs a leg');
  return {
    groups: [
      { role: 'hot', points: [first(hotLeg)], coils: hotLeg.coils.slice(0, 1) },
      ...linksOf(legs).map((link): Group => (link.points.length > 1 ? link : { ...link, role: 'insulated' })),
      { role: 'ground', points: [last(groundLeg)], coils: groundLeg.coils.slice(-1) },
    ],
    branches: [legs.flatMap((leg) => leg.coils)],
    linkSwitchedTo: null,
    switched: null,
    legs: [...legs],
  };
}

/** Every point between two coils of the chain, in order: taps, and ends that meet. */
export function linksOf(legs: readonly Leg[]): Group[] {
  return legs.flatMap((leg, at) => {
    const taps = leg.points
      .slice(1, -1)
      .map((point, i): Group => ({ role: 'joined', points: [point], coils: leg.coils.slice(i, i + 2) }));
    const next = legs[at + 1];
    if (!next) return taps;
    const meeting: Group = {
      role: 'joined',
      points: [last(leg), first(next)],
      coils: [...leg.coils.slice(-1), ...next.coils.slice(0, 1)],
    };
    return [...taps, meeting];
  });
}

/** The series with one link on a switch: at ground the coils before it stay, at hot those after it. */
export function split(legs: readonly Leg[], link: number, to: 'ground' | 'hot'): Circuit {
  const series = inSeries(legs);
  const chain = legs.flatMap((leg) => leg.coils);
  const groups = series.groups.map((group, at) =>
    at === link + 1 ? { ...group, role: 'joined' as const } : group,
  );
  return {
    ...series,
    groups,
    branches: [to === 'ground' ? chain.slice(0, link + 1) : chain.slice(link + 1)],
    linkSwitchedTo: to,
    switched: link + 1,
  };
}

/** All legs side by side, positive ends together. */
export function inParallel(legs: readonly Leg[]): Circuit {
  return {
    groups: [
      { role: 'hot', points: legs.map(first), coils: legs.flatMap((leg) => leg.coils.slice(0, 1)) },
      ...legs.flatMap(tapsOf),
      { role: 'ground', points: legs.map(last), coils: legs.flatMap((leg) => leg.coils.slice(-1)) },
    ],
    branches: legs.map((leg) => leg.coils),
    linkSwitchedTo: null,
    switched: null,
    legs: [...legs],
  };
}

function tapsOf(leg: Leg): Group[] {
  return leg.points
    .slice(1, -1)
    .map((point, at): Group => ({ role: 'insulated', points: [point], coils: leg.coils.slice(at, at + 2) }));
}

/** Coils `from` to `to` of one leg by themselves, every other end put away. */
export function alone(leg: Leg, from: number, to: number, others: readonly Leg[]): Circuit {
  const coils = leg.coils.slice(from, to + 1);
  const putAway = (point: string[], of: Leg): Group => ({
    role: 'insulated',
    points: [point],
    coils: of.coils,
  });
  return {
    groups: [
      { role: 'hot', points: [leg.points[from] ?? []], coils },
      ...leg.points.flatMap((point, at) => (at === from || at === to + 1 ? [] : [putAway(point, leg)])),
      ...others.flatMap((other) => other.points.map((point) => putAway(point, other))),
      { role: 'ground', points: [leg.points[to + 1] ?? []], coils },
    ],
    branches: [coils],
    linkSwitchedTo: null,
    switched: null,
    legs: [leg],
  };
}
