import { type HarnessPickup, usualTolerancePercent } from '@/shared/jack';
import type { ArrangementId, HarnessSketch, SketchedPickup } from '@/shared/jack-check';

type Rest = Omit<HarnessSketch, 'pickups'>;

export interface Arrangement {
  id: ArrangementId;
  words: string;
  /** Where its pickups sit. */
  places: readonly string[];
  rest: (pickups: readonly SketchedPickup[]) => Rest;
}

/** Value of the pots behind one or two pickups, and behind three. Common practice, no source. */
const usualPotOhms = { few: 500_000, three: 250_000 } as const;

/** What the check at the jack can begin from, in plain words. Common practice, no source. */
export const arrangements: readonly Arrangement[] = [
  {
    id: 'one pickup',
    words: 'One pickup, a volume and a tone',
    places: ['bridge'],
    rest: (pickups) => ({
      ...sharedPots(pickups),
      positions: [{ name: 'on', on: idsOf(pickups), together: 'parallel' }],
    }),
  },
  {
    id: 'two shared',
    words: 'Two pickups, shared volume and tone, three positions',
    places: ['neck', 'bridge'],
    rest: (pickups) => ({ ...sharedPots(pickups), positions: threePositions(pickups) }),
  },
  {
    id: 'two of each',
    words: 'Two pickups, a volume and a tone each, three positions',
    places: ['neck', 'bridge'],
    rest: (pickups) => ({ ...potsOfEach(pickups), positions: threePositions(pickups) }),
  },
  {
    id: 'three shared',
    words: 'Three pickups, shared volume and tone, five positions',
    places: ['neck', 'middle', 'bridge'],
    rest: (pickups) => ({ ...sharedPots(pickups), positions: fivePositions(pickups) }),
  },
];

/**
 * A harness to begin from, with the pickups that are known in their places.
 * @param known measured pickups; those that no place is named after fill the places left over
 */
export function sketchHarness(id: ArrangementId, known: readonly HarnessPickup[]): HarnessSketch {
  const arrangement = arrangements.find((candidate) => candidate.id === id);
  if (!arrangement) throw new RangeError(`No arrangement is called ${id}.`);
  const pickups = seat(arrangement.places, known);
  return { pickups, ...arrangement.rest(pickups) };
}

/** The arrangement that fits as many pickups as are known. */
export function arrangementFor(count: number): ArrangementId {
  if (count <= 1) return 'one pickup';
  return count === 2 ? 'two shared' : 'three shared';
}

/** A pickup that is not measured yet: one coil of no known resistance. */
export function unmeasuredPickup(place: string): SketchedPickup {
  return {
    id: place,
    subject: `${place} pickup`,
    joined: 'series',
    coils: [{ name: 'coil', ohms: null, tolerancePercent: usualTolerancePercent.coil }],
  };
}

function seat(places: readonly string[], known: readonly HarnessPickup[]): SketchedPickup[] {
  const left = known.filter(({ id }) => !places.includes(id));
  return places.map(
    (place) => known.find(({ id }) => id === place) ?? left.shift() ?? unmeasuredPickup(place),
  );
}

function idsOf(pickups: readonly SketchedPickup[]): string[] {
  return pickups.map(({ id }) => id);
}

function potsFor(serves: string, pickups: readonly SketchedPickup[]): Pick<Rest, 'volumes' | 'tones'> {
  const ohms = pickups.length < 3 ? usualPotOhms.few : usualPotOhms.three;
  const named = (what: string) => (serves === 'all' ? what : `${serves} ${what}`);
  const pot = { ohms, tolerancePercent: usualTolerancePercent.pot, serves };
  return {
    volumes: [{ ...pot, id: named('volume'), name: named('volume'), wiring: 'divider' }],
    tones: [{ ...pot, id: named('tone'), name: named('tone'), side: 'pickup' }],
  };
}

const nothingMore = { switches: [], resistors: [] };

function sharedPots(pickups: readonly SketchedPickup[]): Omit<Rest, 'positions'> {
  return { ...nothingMore, ...potsFor('all', pickups) };
}

function potsOfEach(pickups: readonly SketchedPickup[]): Omit<Rest, 'positions'> {
  const pots = pickups.map((pickup) => potsFor(pickup.id, [pickup]));
  return {
    ...nothingMore,
    volumes: pots.flatMap(({ volumes }) => volumes),
    tones: pots.flatMap(({ tones }) => tones),
  };
}

function threePositions(pickups: readonly SketchedPickup[]): Rest['positions'] {
  const [first = '', second = ''] = idsOf(pickups);
  return [
    { name: first, on: [first], together: 'parallel' },
    { name: 'both', on: [first, second], together: 'parallel' },
    { name: second, on: [second], together: 'parallel' },
  ];
}

function fivePositions(pickups: readonly SketchedPickup[]): Rest['positions'] {
  const [neck = '', middle = '', bridge = ''] = idsOf(pickups);
  return [[bridge], [bridge, middle], [middle], [middle, neck], [neck]].map((on) => ({
    name: on.join(' and '),
    on,
    together: 'parallel' as const,
  }));
}
