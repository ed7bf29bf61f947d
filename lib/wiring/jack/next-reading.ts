import type { JackNextReading, JackSetting } from '@/shared/jack';
import { sayOhms } from '../trace/say';
import { plainRange } from './expected';
import type { Fault } from './fault';
import { areApart, openFromOhms } from './fit';
import { atJack, keyOf, type Model, predict, type Question, type Range } from './predict';
import { probesOf } from './probes';
import { labelOf, listSettings, toneSettings } from './settings';

type Candidate = Question & { kind: JackNextReading['kind']; where: string };

/** Readings not taken yet: at the jack first, since nothing has to be opened for them, then inside. */
export function candidatesOf(model: Model, taken: readonly JackSetting[], at: JackSetting): Candidate[] {
  const { harness } = model;
  const known = new Set(taken.map(keyOf));
  const settings = [...listSettings(harness).map(({ setting }) => setting), ...toneSettings(harness)];
  const atTheJack = settings
    .filter((setting) => !known.has(keyOf(setting)))
    .map((setting) => ({
      ...atJack(setting),
      kind: 'jack' as const,
      where: `At the jack: ${labelOf(harness, setting)}`,
    }));
  const inside = probesOf(harness).map(({ between, words }) => ({
    setting: at,
    between,
    kind: 'inside' as const,
    where: `${words}, set to ${labelOf(harness, at)}`,
  }));
  return [...atTheJack, ...inside];
}

/** A reading at the jack needs nothing opened: it may rule out only half as much and still be the better one. */
const worth = { jack: 2, inside: 1 } as const;

/** For each fault the one reading that rules out the most of the others if it is true; null where none does. */
export function nextReadings(
  model: Model,
  faults: readonly Fault[],
  candidates: readonly Candidate[],
): (JackNextReading | null)[] {
  const table = candidates.map((candidate) => ({
    candidate,
    ranges: faults.map((fault) => predict(model, candidate, fault)),
  }));
  return faults.map((_, i) => {
    const choices = table.map((row) => choiceFor(i, row));
    const best = choices.reduce<Choice | null>(
      (kept, one) => (one.worth > (kept?.worth ?? 0) ? one : kept),
      null,
    );
    return best && sayNext(best, i, faults);
  });
}

type Choice = { candidate: Candidate; own: Range; isRuledOut: boolean[]; worth: number };

function choiceFor(i: number, { candidate, ranges }: { candidate: Candidate; ranges: Range[] }): Choice {
  const own = ranges[i];
  if (!own) throw new RangeError(`no fault ${i}`);
  const isRuledOut = ranges.map((its, other) => other !== i && areApart(own, its));
  return { candidate, own, isRuledOut, worth: isRuledOut.filter(Boolean).length * worth[candidate.kind] };
}

function sayNext(
  { candidate, own, isRuledOut }: Choice,
  i: number,
  faults: readonly Fault[],
): JackNextReading {
  const { kind, where, setting, between } = candidate;
  const titlesOf = (which: boolean) =>
    faults.filter((_, at) => at !== i && isRuledOut[at] === which).map(({ title }) => title);
  return {
    kind,
    where,
    setting,
    between: [between[0], between[1]],
    expects: sayRange(own),
    ...plainRange(own),
    rulesOut: titlesOf(true),
    leaves: titlesOf(false),
  };
}

/** "7.74 to 8.12 kΩ", "open", "next to nothing (below 22 Ω)" */
export function sayRange({ ohms, leastOhms, mostOhms }: Range): string {
  if (ohms >= openFromOhms) return 'open';
  if (ohms === 0) return `next to nothing (below ${sayOhms(mostOhms)})`;
  const [least, most] = [leastOhms, mostOhms].map((limit) => sayOhms(Number(limit.toPrecision(3))));
  return `${least} to ${mostOhms >= openFromOhms ? 'open' : most}`;
}
