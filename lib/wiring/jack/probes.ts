import type { Harness, HarnessVolume } from '@/shared/jack';
import * as at from './places';

/** A reading inside the instrument, for what the jack cannot tell. */
export type Probe = { between: readonly [string, string]; words: string };

/** Places where a meter's two leads reach without unsoldering anything. */
export function probesOf(harness: Harness): Probe[] {
  return [
    ...harness.pickups.flatMap(({ id, subject, coils }) => [
      ...coils.map(
        (coil, i): Probe => ({
          between: [at.coilEnd(id, i, 'hot'), at.coilEnd(id, i, 'ground')],
          words: `Across ${coils.length === 1 ? `${subject}'s coil` : `${subject}'s ${coil.name} coil`}, at its own two leads`,
        }),
      ),
      probe(at.hotLead(id), at.groundLead(id), `Between ${subject}'s hot lead and its ground lead`),
      probe(at.groundLead(id), at.ground, `From ${subject}'s ground lead to the ground on the pots`),
      probe(at.contact(id), at.selectorOutput, `From ${subject}'s selector contact to the selector's output`),
      probe(at.hotLead(id), at.contact(id), `From ${subject}'s hot lead to its selector contact`),
    ]),
    ...harness.volumes.flatMap(volumeProbes),
    probe(at.selectorOutput, at.jackTip, "From the selector's output to the jack's tip"),
    probe(at.ground, at.jackSleeve, "From the ground on the pots to the jack's sleeve"),
  ];
}

function volumeProbes({ id, name }: HarnessVolume): Probe[] {
  return [
    probe(at.lug(id, 'input'), at.lug(id, 'ground'), `Across ${name}'s two outer lugs`),
    probe(at.lug(id, 'ground'), at.ground, `From ${name}'s grounded lug to the ground on its case`),
    probe(at.lug(id, 'input'), at.ground, `From ${name}'s other outer lug to ground`),
    probe(at.lug(id, 'wiper'), at.ground, `From ${name}'s wiper to ground`),
  ];
}

function probe(from: string, to: string, words: string): Probe {
  return { between: [from, to], words };
}
