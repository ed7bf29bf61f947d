import type { Harness } from '@/shared/jack';
import { pairFaults, selectorFaults, switchFaults, volumeFaults } from './control-faults';
import { capacitorEnd } from './elements';
import { type Fault, fault } from './fault';
import { pickupFaults } from './pickup-faults';
import * as at from './places';

/** Every single fault of this harness, but for parts of another value, whose value has to be found first. */
export function listFaults(harness: Harness): Fault[] {
  return [
    ...harness.pickups.flatMap((pickup) => pickupFaults(harness, pickup)),
    ...pairFaults(harness),
    ...harness.volumes.flatMap((volume) => volumeFaults(harness, volume)),
    ...selectorFaults(harness),
    ...switchFaults(harness),
    ...harness.tones.map(({ id, name }) =>
      fault('capacitor passes current', id, `${name}'s capacitor passes direct current`, {
        bridge: [[capacitorEnd(id), at.ground]],
      }),
    ),
    ...harness.resistors.map(({ id, name }) =>
      fault('resistor off', id, `${name} is off at one end`, { cut: [id] }),
    ),
    ...jackFaults,
  ];
}

const jackFaults: readonly Fault[] = [
  fault('jack shorted', 'jack', 'tip and sleeve are shorted at the jack', {
    bridge: [[at.jackTip, at.jackSleeve]],
  }),
  fault('jack lead off', 'jack', "the lead to the jack's tip is open", { cut: ['tip lead'] }, 'tip'),
  fault('jack lead off', 'jack', 'the ground lead to the jack is open', { cut: ['sleeve lead'] }, 'sleeve'),
];
