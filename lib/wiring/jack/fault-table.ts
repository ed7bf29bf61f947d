import type { HarnessInput, JackFaultKind, JackSetting, OhmsRange } from '@/shared/jack';
import { plainRange } from './expected';
import type { Fault } from './fault';
import { listFaults } from './faults';
import { atJack, type Model, modelOf, predict, type Range, sound } from './predict';
import { prepareHarness } from './prepare';
import { labelOf, listSettings } from './settings';

export type FaultTable = {
  columns: { setting: JackSetting; label: string; expected: OhmsRange }[];
  rows: { key: string; kind: JackFaultKind; title: string; cells: OhmsRange[]; isVisible: boolean }[];
};

/**
 * What every single fault would read in every setting worth reading. A fault is not visible when its nominal
 * values are those of a sound harness everywhere.
 * @throws HarnessProblem
 */
export function faultTable(input: HarnessInput): FaultTable {
  const model = modelOf(prepareHarness(input));
  const settings = listSettings(model.harness).map(({ setting }) => setting);
  return {
    columns: settings.map((setting) => ({
      setting,
      label: labelOf(model.harness, setting),
      expected: plainRange(predict(model, atJack(setting), sound)),
    })),
    rows: listFaults(model.harness).map((fault) => ({
      key: fault.key,
      kind: fault.kind,
      title: fault.title,
      cells: settings.map((setting) => plainRange(predict(model, atJack(setting), fault))),
      isVisible: isVisible(model, settings, fault),
    })),
  };
}

export function isVisible(model: Model, settings: readonly JackSetting[], fault: Fault): boolean {
  return settings.some(
    (setting) => !areSame(predict(model, atJack(setting), fault), predict(model, atJack(setting), sound)),
  );
}

/** The same circuit, give or take the last digits of the arithmetic. */
export function areSame(one: Range, other: Range): boolean {
  if (one.ohms === other.ohms) return true;
  if (!Number.isFinite(one.ohms + other.ohms)) return false;
  return Math.abs(one.ohms - other.ohms) <= 1e-6 * Math.max(one.ohms, other.ohms);
}
