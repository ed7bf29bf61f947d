import type { CautionKey } from '@/lib/safety';
import type { ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';

/** A range that a value is expected in, in the base unit; outside it the page asks or cautions, never refuses. */
export interface PlausibleRange {
  /** What such a value is usual for: "a pickup coil". */
  of: string;
  /** Only where the subject reads like this; left out: anywhere. */
  subject?: RegExp;
  /** Only on these instrument types; left out: on all. */
  instruments?: readonly string[];
  low: number;
  high: number;
}

export interface ReadingKind {
  id: ReadingKindId;
  label: string;
  baseUnit: UnitId;
  /** Offered in this order; the first is the usual one. */
  units: readonly UnitId[];
  /** Instrument types it is offered for; left out: all of them. */
  appliesTo?: readonly string[];
  /** Tried in order; all of them common practice, no source. */
  plausible: readonly PlausibleRange[];
  /** Digits after the point in the usual unit. */
  decimals: number;
  /** Details without which the reading says little. */
  needs?: readonly (keyof ReadingDetails)[];
  cautions?: readonly CautionKey[];
  /** How quick entry knows it, beside its unit. */
  words?: RegExp;
}
