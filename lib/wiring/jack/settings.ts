import type { Harness, JackSetting } from '@/shared/jack';
import { sayList } from '../trace/say';
import { positionOf } from './elements';

export type ListedSetting = { setting: JackSetting; pots: 'all up' | 'all down' | 'one down' };

/** With more switches than this at work in a position, each alone and all together instead of every mixture. */
const mostMixed = 3;

/**
 * What is worth reading: every position, with every state of the switches that act there, and with the pots all up,
 * all down, and each volume in the path down alone.
 */
export function listSettings(harness: Harness): ListedSetting[] {
  return harness.positions.flatMap(({ name }) => {
    const pots = potStates(harness, name);
    return switchStates(harness, name).flatMap((thrown) =>
      pots.map(({ down, pots: which }) => ({ setting: { position: name, thrown, down }, pots: which })),
    );
  });
}

/** The settings with a tone pot down alone: of no effect in a sound harness, so not in the list, but telling. */
export function toneSettings(harness: Harness): JackSetting[] {
  return harness.positions.flatMap(({ name }) =>
    harness.tones
      .filter(({ serves }) => actsIn(harness, name, serves))
      .map(({ id }) => ({ position: name, thrown: [], down: [id] })),
  );
}

function actsIn(harness: Harness, position: string, serves: string): boolean {
  const { on } = positionOf(harness, { position, thrown: [], down: [] });
  return serves === 'all' || on.includes(serves);
}

function switchStates(harness: Harness, position: string): string[][] {
  const acting = harness.switches
    .filter((one) => {
      const pickups = one.kind === 'split' ? one.splits.map(({ pickup }) => pickup) : [one.pickup];
      return pickups.some((pickup) => actsIn(harness, position, pickup));
    })
    .map(({ id }) => id);
  if (acting.length > mostMixed) return [[], ...acting.map((id) => [id]), acting];
  const mixtures: string[][] = [[]];
  for (const id of acting) mixtures.push(...mixtures.map((thrown) => [...thrown, id]));
  return mixtures;
}

function potStates(harness: Harness, position: string): { down: string[]; pots: ListedSetting['pots'] }[] {
  const pots = [...harness.volumes, ...harness.tones].map(({ id }) => id);
  const acting = harness.volumes
    .filter(({ serves }) => actsIn(harness, position, serves))
    .map(({ id }) => id);
  const isAll = (down: readonly string[]) => down.length === pots.length;
  return [
    { down: [], pots: 'all up' },
    ...(pots.length ? [{ down: pots, pots: 'all down' as const }] : []),
    ...acting.map((id) => ({ down: [id], pots: 'one down' as const })).filter(({ down }) => !isAll(down)),
  ];
}

/** "both, neck split thrown, bridge volume down" */
export function labelOf(harness: Harness, { position, thrown, down }: JackSetting): string {
  const nameOf = (parts: readonly { id: string; name: string }[], ids: readonly string[]) =>
    parts.filter(({ id }) => ids.includes(id)).map(({ name }) => name);
  const pots = [...harness.volumes, ...harness.tones];
  const downNames = nameOf(pots, down);
  return [
    position,
    ...nameOf(harness.switches, thrown).map((name) => `${name} thrown`),
    ...sayPots(downNames, pots.length),
  ].join(', ');
}

function sayPots(downNames: readonly string[], count: number): string[] {
  if (count === 0) return [];
  if (downNames.length === 0) return ['pots up'];
  return downNames.length === count ? ['all pots down'] : [`${sayList(downNames)} down`];
}
