import { isConductorColour, readMetal } from '@/lib/wiring';
import type { Reading } from '@/shared/readings';

export type Placed = Pick<Reading, 'kind' | 'subject' | 'between' | 'details'>;

const pickupPlaces = /^(?:neck|middle|bridge)$/;
const pickupKinds: ReadonlySet<Reading['kind']> = new Set(['resistance', 'inductance', 'pickup-height']);
/** Ends of a finished pickup: between them it is measured whole. */
const wholeEnds: ReadonlySet<string> = new Set(['hot', 'ground', 'earth', 'lead', 'output', 'total']);

/**
 * What was measured, so that only like is held against like: "neck pickup", "neck pickup, between conductors",
 * "low e string, fret 12", "at the jack, bridge". A coil inside a pickup is never taken for the pickup.
 */
export function placeOf({ kind, subject, between, details }: Placed): string {
  const { string, fret, side, testFrequencyHz, jack } = details;
  if (jack) {
    const { position, thrown, down } = jack;
    const others = [...thrown.map((id) => `${id} thrown`), ...down.map((id) => `${id} down`)];
    return ['at the jack', position, ...others].join(', ').toLowerCase();
  }
  const parts = [
    subjectPlace(subject, kind),
    between && endsPlace(between),
    string && `${string} string`,
    fret !== undefined && `fret ${fret}`,
    side && `${side} side`,
    testFrequencyHz !== undefined && `at ${testFrequencyHz} Hz`,
  ];
  return parts.filter(Boolean).join(', ') || 'nothing named';
}

function subjectPlace(subject: string, kind: Reading['kind']): string {
  const plain = subject.toLowerCase().replace(/\s+/g, ' ').trim();
  return pickupKinds.has(kind) && pickupPlaces.test(plain) ? `${plain} pickup` : plain;
}

function endsPlace(between: readonly [string, string]): string {
  const ends = between.map((end) => end.toLowerCase());
  if (ends.every((end) => wholeEnds.has(end))) return '';
  if (ends.every((end) => readMetal(end) ?? isConductorColour(end)))
    return ends.some((end) => readMetal(end)) ? 'conductor to shield or frame' : 'between conductors';
  return ends.sort().join(' – ');
}

/** How many of what, for a sentence: "readings of the neck pickup on the electric guitar". */
export function sayGroup(place: string, instrument: string, n: number): string {
  const count = n === 1 ? 'reading' : 'readings';
  return `${count} of “${place}”${instrument === '' ? '' : ` (${instrument})`}`;
}
