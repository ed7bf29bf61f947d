import type { KickReading, WiringBasis } from '@/shared/wiring';
import { impliedBy } from './basis';
import type { Complaint } from './complaints';
import { type PairFact, pairKey } from './facts';

/**
 * A kick in its plain form. The rule, once, as common practice (no source): *the positive end of a coil
 * is the one whose lead is on the meter's red when steel laid on its poles makes the meter go positive.*
 * Taking the steel off reverses the sign, swapping the leads reverses it again. The rule holds within
 * one workshop's records; it compares coils with each other and claims no absolute phase.
 *
 * Because the string moves the same field as the steel does, coils in series whose positive ends all
 * face the hot side add their string signals: hot, positive … negative, joined, positive … negative, ground.
 */
export type Kick = {
  id: string;
  /** The terminals, `a` < `b`; `aIsPositive` already takes steel and leads into account. */
  a: number;
  b: number;
  row: string;
  aIsPositive: boolean;
  /** No size noted counts as a clear kick. */
  isLarge: boolean;
  basis: WiringBasis;
};

export function plainKick(reading: KickReading, terminals: readonly string[]): Kick {
  const [red, black] = [terminals.indexOf(reading.leads.red), terminals.indexOf(reading.leads.black)];
  const redIsPositive = (reading.sign === 1) === (reading.steel === 'laid on');
  return {
    id: reading.id,
    a: Math.min(red, black),
    b: Math.max(red, black),
    row: reading.row,
    aIsPositive: redIsPositive === red < black,
    isLarge: reading.size !== 'small',
    basis: reading.basis,
  };
}

/** A needle kicks only across a winding, so a kick joins its two ends where no resistance was read. */
export function kickFacts(kicks: readonly Kick[], facts: readonly PairFact[], terminals: readonly string[]) {
  const read = new Map(facts.map((fact) => [pairKey(fact.a, fact.b), fact]));
  const found: PairFact[] = [];
  const complaints: Complaint[] = [];
  for (const kick of kicks) {
    const key = pairKey(kick.a, kick.b);
    const fact = read.get(key);
    if (!fact) {
      const added = windingFromKick(kick);
      read.set(key, added);
      found.push(added);
    } else if (fact.state !== 'winding' && fact.state !== 'disputed') {
      complaints.push(kickComplaint(kick, fact, terminals));
    }
  }
  return { facts: found, complaints };
}

function windingFromKick(kick: Kick): PairFact {
  return {
    a: kick.a,
    b: kick.b,
    state: 'winding',
    ohms: null,
    uncertaintyOhms: null,
    basis: impliedBy(kick.basis),
    readings: [kick.id],
    because: 'kicks when steel meets the poles',
  };
}

function kickComplaint(kick: Kick, fact: PairFact, terminals: readonly string[]): Complaint {
  const pair = `${terminals[kick.a]} to ${terminals[kick.b]}`;
  const found = { joined: 'one point', open: 'open', leakage: 'too high for a winding' };
  const state =
    fact.state === 'joined' || fact.state === 'open' || fact.state === 'leakage' ? found[fact.state] : '';
  return {
    key: `kick:${kick.id}|${fact.readings.join('|')}`,
    text: `${pair} kicked under the ${kick.row} row, but reads ${state}: only a sound winding can kick.`,
    readings: [kick.id, ...fact.readings],
  };
}
