import type { Harness, HarnessPickup, HarnessTone, HarnessVolume, JackSetting } from '@/shared/jack';
import type { Resistor } from './network';
import * as at from './places';

/** One part or joint of the harness as it stands in a setting. */
export type Element = Resistor & {
  id: string;
  leastOhms: number;
  mostOhms: number;
  /** A wiper at the end of its track: a joint that may keep a few ohms. */
  isStop: boolean;
};

type Valued = { ohms: number; tolerancePercent: number };

/** The harness in one setting, as a network between the jack's tip and sleeve. The setting must be prepared. */
export function elementsOf(harness: Harness, setting: JackSetting): Element[] {
  return [
    ...harness.pickups.flatMap((pickup) => pickupElements(harness, pickup, setting)),
    ...harness.volumes.map((volume) => potTrack(volume)),
    ...harness.volumes.map((volume) => wiperContact(volume, setting)),
    ...harness.tones.flatMap((tone) => toneElements(harness, tone, setting)),
    ...selectorElements(harness, setting),
    ...outputElements(harness),
    ...harness.resistors.map((one) => part(one.id, one.between[0], one.between[1], one)),
  ];
}

function part(id: string, from: string, to: string, { ohms, tolerancePercent }: Valued): Element {
  const spread = (ohms * tolerancePercent) / 100;
  return { id, from, to, ohms, leastOhms: ohms - spread, mostOhms: ohms + spread, isStop: false };
}

export function joint(id: string, from: string, to: string, isStop = false): Element {
  return { id, from, to, ohms: 0, leastOhms: 0, mostOhms: 0, isStop };
}

const isThrown = (harness: Harness, setting: JackSetting, kind: 'phase' | 'parallel', pickup: string) =>
  harness.switches.some(
    (one) => one.kind === kind && one.pickup === pickup && setting.thrown.includes(one.id),
  );

function pickupElements(harness: Harness, pickup: HarnessPickup, setting: JackSetting): Element[] {
  const { id } = pickup;
  const isReversed = isThrown(harness, setting, 'phase', id);
  const [hotGoesTo, groundGoesTo] = isReversed ? [at.base(id), at.live(id)] : [at.live(id), at.base(id)];
  return [
    ...pickup.coils.map((coil, i) =>
      part(`${id}.coil${i}`, at.coilEnd(id, i, 'hot'), at.coilEnd(id, i, 'ground'), coil),
    ),
    ...coilLeads(harness, pickup, setting),
    joint(`${id}.hot lead`, at.hotLead(id), hotGoesTo),
    joint(`${id}.ground lead`, at.groundLead(id), groundGoesTo),
    ...splitElements(harness, pickup, setting),
    ...ownVolume(harness, id),
    joint(`${id}.contact lead`, at.pickupOutput(id), at.contact(id)),
  ];
}

/** Two joints a coil, always under the same ids, going where the joining or its switch takes them. */
function coilLeads(harness: Harness, pickup: HarnessPickup, setting: JackSetting): Element[] {
  const { id, coils } = pickup;
  const joined = joiningOf(harness, pickup, setting);
  const last = coils.length - 1;
  return coils.flatMap((_, i) => {
    const isSpare = joined === 'first coil only' && i > 0;
    const hot = isSpare
      ? `${id}.spare`
      : i === 0 || joined !== 'series'
        ? at.hotLead(id)
        : at.linkOf(id, i - 1);
    const ground = i === last || joined !== 'series' ? at.groundLead(id) : at.linkOf(id, i);
    return [
      joint(`${id}.coil${i} hot lead`, at.coilEnd(id, i, 'hot'), hot),
      joint(`${id}.coil${i} ground lead`, at.coilEnd(id, i, 'ground'), isSpare ? `${id}.spare${i}` : ground),
    ];
  });
}

function joiningOf(harness: Harness, pickup: HarnessPickup, setting: JackSetting): HarnessPickup['joined'] {
  return isThrown(harness, setting, 'parallel', pickup.id)
    ? pickup.joined === 'series'
      ? 'parallel'
      : 'series'
    : pickup.joined;
}

/** The link to ground leaves the hot side's coil; the link to hot leaves the other. */
function splitElements(harness: Harness, { id, coils }: HarnessPickup, setting: JackSetting): Element[] {
  for (const one of harness.switches) {
    if (one.kind !== 'split' || !setting.thrown.includes(one.id)) continue;
    const split = one.splits.find(({ pickup }) => pickup === id);
    if (!split) continue;
    const to = split.keeps === coils[0]?.name ? groundOf(harness, setting, id) : at.live(id);
    return [joint(`${id}.split lead`, at.linkOf(id, 0), to)];
  }
  return [];
}

/** In series the upper pickup stands on the next one, not on ground. */
function groundOf(harness: Harness, setting: JackSetting, pickup: string): string {
  const { on, together } = positionOf(harness, setting);
  const isUpper = together === 'series' && on.includes(pickup) && on[on.length - 1] !== pickup;
  return isUpper ? at.base(pickup) : at.ground;
}

export function positionOf(harness: Harness, setting: JackSetting): Harness['positions'][number] {
  const position = harness.positions.find(({ name }) => name === setting.position);
  if (!position) throw new RangeError(`no position ${setting.position}`);
  return position;
}

function ownVolume(harness: Harness, pickup: string): Element[] {
  const volume = harness.volumes.find(({ serves }) => serves === pickup);
  if (!volume) return [joint(`${pickup}.through`, at.live(pickup), at.pickupOutput(pickup))];
  return volumeLeads(volume, at.live(pickup), at.pickupOutput(pickup));
}

function volumeLeads({ id, wiring }: HarnessVolume, feed: string, out: string): Element[] {
  const [feedLug, outLug] =
    wiring === 'divider' ? (['input', 'wiper'] as const) : (['wiper', 'input'] as const);
  return [
    joint(`${id}.feed`, at.lug(id, feedLug), feed),
    joint(`${id}.out`, at.lug(id, outLug), out),
    joint(`${id}.earth`, at.lug(id, 'ground'), at.ground),
  ];
}

function potTrack(volume: HarnessVolume): Element {
  return part(`${volume.id}.track`, at.lug(volume.id, 'input'), at.lug(volume.id, 'ground'), volume);
}

function wiperContact({ id }: HarnessVolume, setting: JackSetting): Element {
  const end = setting.down.includes(id) ? 'ground' : 'input';
  return joint(`${id}.wiper contact`, at.lug(id, 'wiper'), at.lug(id, end), true);
}

/** A rheostat that ends at the capacitor, and there the direct current ends too. */
function toneElements(harness: Harness, tone: HarnessTone, setting: JackSetting): Element[] {
  const from = toneHangsOn(harness, tone);
  const capacitor = capacitorEnd(tone.id);
  const track = part(`${tone.id}.track`, from, capacitor, tone);
  return setting.down.includes(tone.id)
    ? [track, joint(`${tone.id}.wiper contact`, from, capacitor, true)]
    : [track];
}

export const capacitorEnd = (tone: string) => `${tone}.capacitor`;

function toneHangsOn(harness: Harness, { serves, side }: HarnessTone): string {
  if (serves !== 'all') return side === 'pickup' ? at.live(serves) : at.pickupOutput(serves);
  return side === 'pickup' || !sharedVolume(harness) ? at.selectorOutput : at.outputLead;
}

const sharedVolume = (harness: Harness) => harness.volumes.find(({ serves }) => serves === 'all');

function selectorElements(harness: Harness, setting: JackSetting): Element[] {
  const { on, together } = positionOf(harness, setting);
  const isSeries = together === 'series';
  const contacts = on.map((id, i) => {
    const above = on[i - 1];
    return joint(`${id}.selected`, at.contact(id), isSeries && above ? at.base(above) : at.selectorOutput);
  });
  const grounds = harness.pickups
    .filter(({ id }) => !isSeries || !on.includes(id) || on[on.length - 1] === id)
    .map(({ id }) => joint(`${id}.ground wire`, at.base(id), at.ground));
  return [...contacts, ...grounds];
}

function outputElements(harness: Harness): Element[] {
  const shared = sharedVolume(harness);
  return [
    ...(shared
      ? volumeLeads(shared, at.selectorOutput, at.outputLead)
      : [joint('through', at.selectorOutput, at.outputLead)]),
    joint('tip lead', at.outputLead, at.jackTip),
    joint('sleeve lead', at.ground, at.jackSleeve),
  ];
}
