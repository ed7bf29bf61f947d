import { sayBase } from '@/lib/readings';
import { HarnessProblem, prepareHarness } from '@/lib/wiring';
import type { Harness, HarnessInput } from '@/shared/jack';
import type { HarnessSketch } from '@/shared/jack-check';
import { readMeter } from './meter-text';

/** A value as it is typed, with a key of its own for the page. */
type Typed<T> = Omit<T, 'ohms'> & { key: number; ohms: string };
type Sketched = HarnessSketch['pickups'][number];

export type DraftCoil = Typed<Sketched['coils'][number]>;
export type DraftPickup = Omit<Sketched, 'coils'> & { key: number; coils: DraftCoil[] };
export type DraftVolume = Typed<Harness['volumes'][number]>;
export type DraftTone = Typed<Harness['tones'][number]>;
export type DraftPosition = Harness['positions'][number] & { key: number };

/** A harness while it is being described. */
export interface HarnessDraft {
  pickups: DraftPickup[];
  volumes: DraftVolume[];
  tones: DraftTone[];
  positions: DraftPosition[];
  switches: Harness['switches'];
  resistors: Harness['resistors'];
}

/** What keeps a draft from being a harness, and how to put it right. */
export interface DraftProblem {
  title: string;
  detail: string;
}

let lastKey = 0;
export const newKey = () => ++lastKey;

export function draftOf(harness: HarnessSketch): HarnessDraft {
  return {
    pickups: harness.pickups.map((pickup) => ({
      ...pickup,
      key: newKey(),
      coils: pickup.coils.map(typed),
    })),
    volumes: harness.volumes.map(typed),
    tones: harness.tones.map(typed),
    positions: harness.positions.map((position) => ({ ...position, key: newKey() })),
    switches: harness.switches,
    resistors: harness.resistors,
  };
}

function typed<T extends { ohms: number | null }>(part: T): Typed<T> {
  return { ...part, key: newKey(), ohms: part.ohms === null ? '' : sayBase(part.ohms, 'resistance') };
}

/** A typed resistance in ohms; null where it is none, or its unit is not certain. */
export function readOhms(text: string): number | null {
  const heard = readMeter(text);
  return heard.state === 'read' ? heard.value.ohms : null;
}

export type ReadDraft = { harness: Harness } | { problem: DraftProblem };

/** The harness that a draft describes, or what is still wrong with it. */
export function readDraft(draft: HarnessDraft): ReadDraft {
  const unread = unreadValue(draft);
  if (unread !== null) {
    return {
      problem: {
        title: `The resistance of ${unread} is not clear.`,
        detail:
          'Type it with its unit, such as 8.05k or 500 kΩ. Measure a coil that nobody has measured yet.',
      },
    };
  }
  try {
    return { harness: prepareHarness(inputOf(draft)) };
  } catch (error) {
    if (!(error instanceof HarnessProblem)) throw error;
    return { problem: { title: error.message, detail: error.detail } };
  }
}

function unreadValue({ pickups, volumes, tones }: HarnessDraft): string | null {
  const values = [
    ...pickups.flatMap(({ subject, coils }) =>
      coils.map(({ name, ohms }) => ({ what: `${subject}, ${name}`, ohms })),
    ),
    ...[...volumes, ...tones].map(({ name, ohms }) => ({ what: name, ohms })),
  ];
  return values.find(({ ohms }) => readOhms(ohms) === null)?.what ?? null;
}

function inputOf(draft: HarnessDraft): HarnessInput {
  const plain = <T extends { ohms: string }>(part: T) => ({ ...part, ohms: readOhms(part.ohms) ?? 0 });
  return {
    ...draft,
    pickups: draft.pickups.map((pickup) => ({ ...pickup, coils: pickup.coils.map(plain) })),
    volumes: draft.volumes.map(plain),
    tones: draft.tones.map(plain),
  };
}

/** An id that no part of the draft has yet: "middle", "middle 2". */
export function freeId(draft: HarnessDraft, wanted: string): string {
  const { pickups, volumes, tones, switches, resistors } = draft;
  const taken = new Set([...pickups, ...volumes, ...tones, ...switches, ...resistors].map(({ id }) => id));
  let id = wanted;
  for (let count = 2; taken.has(id); count++) id = `${wanted} ${count}`;
  return id;
}

/** Takes a pickup out of the harness, with all that stood for it alone. */
export function withoutPickup(draft: HarnessDraft, id: string): HarnessDraft {
  return {
    ...draft,
    pickups: draft.pickups.filter((pickup) => pickup.id !== id),
    volumes: draft.volumes.filter(({ serves }) => serves !== id),
    tones: draft.tones.filter(({ serves }) => serves !== id),
    positions: draft.positions.map((position) => ({
      ...position,
      on: position.on.filter((one) => one !== id),
    })),
    switches: draft.switches.flatMap((one): Harness['switches'] => {
      if (one.kind !== 'split') return one.pickup === id ? [] : [one];
      const splits = one.splits.filter(({ pickup }) => pickup !== id);
      return splits.length > 0 ? [{ ...one, splits }] : [];
    }),
  };
}

/** The list with one of its parts changed. */
export function changed<T>(list: readonly T[], at: number, patch: Partial<T>): T[] {
  return list.map((one, index) => (index === at ? { ...one, ...patch } : one));
}

export function without<T>(list: readonly T[], at: number): T[] {
  return list.filter((_, index) => index !== at);
}
