import type { ExpectedReading, HarnessInput, OhmsRange } from '@/shared/jack';
import { explainSetting } from './explain';
import { atJack, keyOf, type Model, modelOf, predict, type Range, sound } from './predict';
import { prepareHarness } from './prepare';
import { type ListedSetting, labelOf, listSettings } from './settings';

/**
 * What a sound harness reads at the jack in every setting worth reading. Limits are the worst corners of all
 * tolerances, and a few ohms of contacts.
 * @throws HarnessProblem
 */
export function expectedAtJack(input: HarnessInput): ExpectedReading[] {
  const model = modelOf(prepareHarness(input));
  return listSettings(model.harness).map((listed) => expectedIn(model, listed));
}

function expectedIn(model: Model, { setting, pots }: ListedSetting): ExpectedReading {
  const range = predict(model, atJack(setting), sound);
  return {
    key: keyOf(setting),
    setting,
    label: labelOf(model.harness, setting),
    pots,
    outcome: range.ohms === 0 ? 'short' : Number.isFinite(range.ohms) ? 'ohms' : 'open',
    ...plainRange(range),
    explanation: explainSetting(model, setting, range),
  };
}

/** Infinity does not travel in JSON. */
export function plainRange({ ohms, leastOhms, mostOhms }: Range): OhmsRange {
  const plain = (value: number) => (Number.isFinite(value) ? value : null);
  return { ohms: plain(ohms), leastOhms: plain(leastOhms), mostOhms: plain(mostOhms) };
}
