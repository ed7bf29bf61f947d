import type { JackFaultKind } from '@/shared/jack';
import type { Answered } from './another-value';
import type { Fault } from './fault';
import { agrees, closeness } from './fit';
import { type Model, predict } from './predict';

/** How often each is met beside the others, before anything is read. Common practice, no source. */
const ordinary = 1;
const oftenMet: Record<JackFaultKind, number> = {
  'open link': ordinary,
  'dead pickup': ordinary,
  'pickup not grounded': ordinary,
  'hot to ground': ordinary,
  'leads swapped': ordinary,
  'pickups swapped': ordinary,
  'volume wired wrong': ordinary,
  'open lead': ordinary,
  'pot not grounded': 0.5,
  'pot of another value': 0.5,
  'selector stuck': 0.5,
  'switch stuck': 0.5,
  'split lead off': 0.5,
  'jack shorted': ordinary,
  'jack lead off': ordinary,
  'coils joined otherwise': 0.5,
  'open coil': 0.3,
  'shorted coil': 0.3,
  'always on': 0.3,
  'coil of another value': 0.2,
  'resistor off': 0.3,
  'resistor of another value': 0.2,
  'capacitor passes current': 0.1,
};

/** A fault that had a value fitted to the readings has to earn it. */
const costOfFitting = Math.log(10);

export type Ranked = { fault: Fault; explained: number; explainsAll: boolean; fit: number; weight: number };

/** Faults by how many readings they explain, then by belief; those that say the same stand by their key. */
export function rankFaults(model: Model, faults: readonly Fault[], readings: readonly Answered[]): Ranked[] {
  return faults
    .map((fault) => rankFault(model, fault, readings))
    .sort((a, b) => b.explained - a.explained || b.weight - a.weight || (a.fault.key < b.fault.key ? -1 : 1));
}

function rankFault(model: Model, fault: Fault, readings: readonly Answered[]): Ranked {
  const answers = readings.map((reading) => ({
    range: predict(model, reading, fault),
    measured: reading.measured,
  }));
  const explained = answers.filter(({ range, measured }) => agrees(range, measured)).length;
  const close = answers.map(({ range, measured }) => closeness(range, measured));
  const distance = close.reduce((sum, one) => sum + one.distance, 0) / Math.max(readings.length, 1);
  const logLikelihood = close.reduce((sum, one) => sum + one.logLikelihood, 0);
  const cost = fault.edit.value ? costOfFitting : 0;
  return {
    fault,
    explained,
    explainsAll: explained === readings.length,
    fit: Math.exp(-distance / 2),
    weight: logLikelihood + Math.log(oftenMet[fault.kind]) - cost,
  };
}

/** Weights as shares that add to 1. */
export function sharesOf(ranked: readonly Ranked[]): number[] {
  const most = Math.max(...ranked.map(({ weight }) => weight));
  const parts = ranked.map(({ weight }) => Math.exp(weight - most));
  const all = parts.reduce((sum, part) => sum + part, 0);
  return parts.map((part) => part / all);
}
