import type { Harness, JackReading } from '@/shared/jack';
import { typicalMeterText } from '../trace';
import { residualOhms } from './predict';

export const jackCautions: readonly string[] = [
  'Ohms only on a dead circuit: nothing plugged in, no lead, no amplifier, no power. Strings make no difference.',
  'Passive harnesses only. With a battery or any active circuit these numbers are not valid, and the meter may harm it.',
  'Let the display settle: a winding takes a moment, and hands on the leads read too.',
];

/** What no resistance at the jack can show of this harness. */
export function invisibleOf({ pickups, tones, switches }: Harness): string[] {
  const isPhaseAtStake = pickups.length > 1 || pickups.some(({ coils }) => coils.length > 1);
  return [
    ...(isPhaseAtStake
      ? [
          'Phase: a pickup or a coil whose two ends are exchanged reads the same. Lay steel on its poles, or listen.',
        ]
      : []),
    ...(switches.some(({ kind }) => kind === 'phase')
      ? [
          'A phase switch: it reads the same in both states, as long as nothing else joins its pickup to ground.',
        ]
      : []),
    ...(tones.length
      ? ['Tone pots and their capacitors: a capacitor blocks direct current, so neither is in the reading.']
      : ['Capacitors anywhere: they block direct current.']),
    'Magnets, and which pole they turn to the strings.',
    'A shield or cover that hangs free, and a lead that only fails when it is moved.',
  ];
}

export function assumptionsOf(readings: readonly JackReading[]): string[] {
  const isMeterAssumed = readings.some(
    ({ ohms, uncertaintyOhms }) => ohms !== null && uncertaintyOhms === undefined,
  );
  return [
    'limits are the worst corners of all tolerances in the harness together',
    `up to ${residualOhms.contacts} Ω of contacts, and ${residualOhms.stop} Ω at the stop of a volume, are let pass`,
    ...(isMeterAssumed ? [typicalMeterText] : []),
  ];
}
