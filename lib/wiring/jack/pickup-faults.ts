import type { Harness, HarnessPickup } from '@/shared/jack';
import { type Fault, fault } from './fault';
import * as at from './places';
import type { Edit } from './predict';

/** What can be wrong with one pickup, up to its own two leads. */
export function pickupFaults(harness: Harness, pickup: HarnessPickup): Fault[] {
  return [
    ...openFaults(harness, pickup),
    ...shortFaults(pickup),
    ...leadFaults(pickup),
    ...joiningFaults(harness, pickup),
  ];
}

const coilWords = ({ subject, coils }: HarnessPickup, i: number) =>
  coils.length === 1 ? `${subject}'s coil` : `${subject}'s ${coils[i]?.name} coil`;

/** Ids of the two lead joints of a coil. */
const leadId = (pickup: string, coil: number, end: 'hot' | 'ground') => `${pickup}.coil${coil} ${end} lead`;

function openFaults(harness: Harness, pickup: HarnessPickup): Fault[] {
  const { id, subject, coils, joined } = pickup;
  const hasSplit = harness.switches.some(
    (one) => one.kind === 'split' && one.splits.some((split) => split.pickup === id),
  );
  const links = joined === 'series' ? coils.slice(1).map((_, i) => i) : [];
  // Only where a switch reaches the link does it matter which side of it has come off.
  const linkFaults = links.flatMap((i) => {
    const between = `the link between ${subject}'s ${coils[i]?.name} and ${coils[i + 1]?.name} coils is open`;
    const upper = { cut: [leadId(id, i, 'ground')] };
    if (!hasSplit) return [fault('open link', id, between, upper, `${i}`)];
    return [
      fault('open link', id, `${between} at the ${coils[i]?.name} coil's end`, upper, `${i}-hot side`),
      fault(
        'open link',
        id,
        `${between} at the ${coils[i + 1]?.name} coil's end`,
        {
          cut: [leadId(id, i + 1, 'hot')],
        },
        `${i}-ground side`,
      ),
    ];
  });
  return [
    ...linkFaults,
    fault('dead pickup', id, `${subject} is dead: its hot lead is open`, { cut: [`${id}.hot lead`] }),
    fault('pickup not grounded', id, `${subject}'s ground lead is open`, { cut: [`${id}.ground lead`] }),
    ...coils.map((_, i) =>
      fault('open coil', id, `${coilWords(pickup, i)} is open inside`, { cut: [`${id}.coil${i}`] }, `${i}`),
    ),
  ];
}

function shortFaults(pickup: HarnessPickup): Fault[] {
  const { id, subject, coils } = pickup;
  const shorted = coils.map((_, i) =>
    fault(
      'shorted coil',
      id,
      `${coilWords(pickup, i)} is shorted`,
      {
        bridge: [[at.coilEnd(id, i, 'hot'), at.coilEnd(id, i, 'ground')]],
      },
      `${i}`,
    ),
  );
  const toGround = fault('hot to ground', id, `${subject}'s hot lead touches ground`, {
    bridge: [[at.live(id), at.ground]],
  });
  return [toGround, ...shorted];
}

type Lead = { coil: number; end: 'hot' | 'ground' };

/** Every pair of a pickup's coil leads, exchanged. */
function leadFaults(pickup: HarnessPickup): Fault[] {
  const leads = pickup.coils.flatMap((_, coil): Lead[] => [
    { coil, end: 'hot' },
    { coil, end: 'ground' },
  ]);
  return leads.flatMap((one, i) =>
    leads
      .slice(i + 1)
      .filter((other) => !isSameJoint(pickup, one, other))
      .map((other) =>
        fault(
          'leads swapped',
          pickup.id,
          `${pickup.subject}: ${sayLead(pickup, one)} and ${sayLead(pickup, other)} are swapped`,
          {
            exchange: [[leadId(pickup.id, one.coil, one.end), leadId(pickup.id, other.coil, other.end)]],
          },
          `${one.coil}${one.end}-${other.coil}${other.end}`,
        ),
      ),
  );
}

/** Two ends of one link: nobody can swap them. */
function isSameJoint({ joined }: HarnessPickup, one: Lead, other: Lead): boolean {
  return joined === 'series'
    ? one.end === 'ground' && other.end === 'hot' && other.coil === one.coil + 1
    : one.end === other.end;
}

function sayLead({ coils, joined }: HarnessPickup, { coil, end }: Lead): string {
  const isOuter = joined !== 'series' || (end === 'hot' ? coil === 0 : coil === coils.length - 1);
  const name = coils.length === 1 ? '' : ` of the ${coils[coil]?.name} coil`;
  return isOuter ? `the ${end} lead${name}` : `the link lead${name}`;
}

function joiningFaults({ switches }: Harness, { id, subject, coils, joined }: HarnessPickup): Fault[] {
  const isSwitched = switches.some((one) => one.kind === 'parallel' && one.pickup === id);
  if (coils.length !== 2 || joined === 'first coil only' || isSwitched) return [];
  const [upperGround, lowerHot] = [at.coilEnd(id, 0, 'ground'), at.coilEnd(id, 1, 'hot')];
  const cut = [leadId(id, 0, 'ground'), leadId(id, 1, 'hot')];
  const [bridge, how]: [Edit['bridge'], string] =
    joined === 'series'
      ? [
          [
            [upperGround, at.groundLead(id)],
            [lowerHot, at.hotLead(id)],
          ],
          'in parallel, not in series',
        ]
      : [[[upperGround, lowerHot]], 'in series, not in parallel'];
  return [fault('coils joined otherwise', id, `${subject}'s coils are joined ${how}`, { cut, bridge })];
}
