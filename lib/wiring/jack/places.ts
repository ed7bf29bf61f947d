import type { Harness } from '@/shared/jack';

/** Names of the points of a harness, as nodes of its network. Ids cannot hold a full stop, so nothing collides. */
export const jackTip = 'tip';
export const jackSleeve = 'sleeve';
export const ground = 'ground';
export const selectorOutput = 'selector';
/** What reaches the jack's tip lead, after a shared volume. */
export const outputLead = 'output';

export const coilEnd = (pickup: string, coil: number, end: 'hot' | 'ground') =>
  `${pickup}.coil${coil}.${end}`;
export const linkOf = (pickup: string, after: number) => `${pickup}.link${after}`;
/** Where a pickup's own two leads come out. */
export const hotLead = (pickup: string) => `${pickup}.hot`;
export const groundLead = (pickup: string) => `${pickup}.ground`;
/** After a phase switch. */
export const live = (pickup: string) => `${pickup}.live`;
export const base = (pickup: string) => `${pickup}.base`;
/** After a volume of its own, and at the selector's contact. */
export const pickupOutput = (pickup: string) => `${pickup}.out`;
export const contact = (pickup: string) => `${pickup}.contact`;
export const lug = (volume: string, which: 'input' | 'wiper' | 'ground') => `${volume}.${which}`;

export type Place = { place: string; words: string };

/** The places that a fixed resistor may be soldered to. */
export function placesOf(harness: Harness): Place[] {
  return [
    ...harness.pickups.flatMap(({ id, subject, coils }) => [
      { place: hotLead(id), words: `${subject}'s hot lead` },
      { place: groundLead(id), words: `${subject}'s ground lead` },
      ...coils.slice(1).map((_, at) => ({ place: linkOf(id, at), words: `${subject}'s link` })),
      { place: contact(id), words: `the selector's contact for ${subject}` },
    ]),
    ...harness.volumes.flatMap(({ id, name }) => [
      { place: lug(id, 'input'), words: `${name}, outer lug that is loud` },
      { place: lug(id, 'wiper'), words: `${name}, wiper` },
      { place: lug(id, 'ground'), words: `${name}, grounded lug` },
    ]),
    { place: selectorOutput, words: "the selector's output" },
    { place: jackTip, words: "the jack's tip" },
    { place: ground, words: 'ground' },
  ];
}
