import type { JackCheck, JackExplanation, JackSetting } from '@/shared/jack';
import { sayValue, sentence } from '../trace/say';
import { type Answered, otherValues } from './another-value';
import { plainRange } from './expected';
import type { Fault } from './fault';
import { areSame } from './fault-table';
import { listFaults } from './faults';
import { candidatesOf, nextReadings, sayRange } from './next-reading';
import { atJack, keyOf, type Model, predict, type Range } from './predict';
import { type Ranked, rankFaults, sharesOf } from './rank';
import { listSettings, toneSettings } from './settings';

/** More than this nobody reads; another reading thins them out. */
const mostExplanations = 24;
/** When no fault explains everything: how many of the nearest are told. */
const mostNearest = 5;

/** The faults that explain the readings, most likely first, and how to tell them apart. */
export function explanationsOf(
  model: Model,
  readings: readonly Answered[],
  checks: readonly JackCheck[],
): JackExplanation[] {
  const faults = [...listFaults(model.harness), ...otherValues(model, readings)];
  const ranked = rankFaults(model, faults, readings);
  const full = ranked.filter(({ explainsAll }) => explainsAll).slice(0, mostExplanations);
  const shown = full.length ? full : ranked.filter(({ explained }) => explained > 0).slice(0, mostNearest);
  const failed = checks.filter(({ verdict }) => verdict === 'fail');
  const [firstFailed] = failed;
  if (!shown.length || !firstFailed) return [];
  const told = tellApart(model, readings, firstFailed.setting, shown);
  const shares = sharesOf(shown);
  return shown.map((one, i) => ({
    key: one.fault.key,
    kind: one.fault.kind,
    title: one.fault.title,
    explainsAll: one.explainsAll,
    explained: one.explained,
    likelihood: shares[i] ?? 0,
    fit: one.fit,
    solved: one.fault.edit.value ? plainRange(one.fault.edit.value.range) : null,
    text: sayExplanation(model, one.fault, failed),
    ...(told[i] ?? { alikeAtJack: [], next: null }),
  }));
}

/** For each fault shown: those alike at the jack, and the next reading. */
function tellApart(model: Model, readings: readonly Answered[], at: JackSetting, shown: readonly Ranked[]) {
  const taken = readings.map(({ setting }) => setting);
  const faults = shown.map(({ fault }) => fault);
  const next = nextReadings(model, faults, candidatesOf(model, taken, at));
  const settings = [
    ...listSettings(model.harness).map(({ setting }) => setting),
    ...toneSettings(model.harness),
  ];
  const rows = faults.map((fault) => settings.map((setting) => predict(model, atJack(setting), fault)));
  const areAlike = (one: readonly Range[], other: readonly Range[]) =>
    one.every((range, at) => areSame(range, other[at] ?? range));
  return faults.map((_, i): Pick<JackExplanation, 'alikeAtJack' | 'next'> => {
    const alike = faults.filter((_, other) => other !== i && areAlike(rows[i] ?? [], rows[other] ?? []));
    return { alikeAtJack: alike.map(({ title }) => title), next: next[i] ?? null };
  });
}

function sayExplanation(model: Model, fault: Fault, failed: readonly JackCheck[]): string {
  const told = new Map(failed.map((check) => [keyOf(check.setting), check]));
  const numbers = [...told.values()].slice(0, 3).map(({ setting, label, measuredOhms }) => {
    const range = predict(model, atJack(setting), fault);
    return `"${label}" would read ${sayRange(range)}, and read ${sayValue(measuredOhms)}`;
  });
  return `${sentence(fault.title)}: ${numbers.join('; ')}.`;
}
