import { sayOhms } from '@/lib/wiring';
import type { LooseEnd } from '@/shared/loose-ends';
import type { TotalCheck } from '@/shared/wiring';
import { isAfter, newest } from './after';
import type { LooseEndFacts, OutcomeFacts, ReadingFacts, TraceFacts } from './facts';
import { quoted, sayList, sayPickup, sentence } from './say';

/** Checks after wiring that fail, and wiring that nobody checked. */
export function checkEnds(facts: LooseEndFacts): LooseEnd[] {
  const traces = facts.traces.flatMap((trace) => {
    const outcome = newest(trace.outcomes);
    return outcome ? checksOf(trace, outcome, facts) : [];
  });
  return [...traces, ...jackEnds(facts)];
}

function checksOf(trace: TraceFacts, outcome: OutcomeFacts, facts: LooseEndFacts): LooseEnd[] {
  const totals = totalsOf(trace, facts.readings);
  const last = newest(totals);
  const after = (reading: ReadingFacts) => isAfter(reading, outcome, facts.takes);
  if (trace.check?.verdict === 'fail' && last && after(last))
    return [failedTotal(trace, trace.check, last.createdAt)];
  const judged = new Set(facts.jack?.checks.map(({ readingId }) => readingId));
  const atJack = facts.readings.filter((reading) => reading.atJack && after(reading));
  if (totals.some(after) || atJack.some(({ id }) => judged.has(id))) return [];
  return [missingCheck(trace, outcome, atJack.length > 0)];
}

function totalsOf({ analysis }: TraceFacts, readings: readonly ReadingFacts[]): ReadingFacts[] {
  const ids = new Set(
    analysis.conclusions
      .filter(({ kind, basis }) => kind === 'total' && basis === 'measured')
      .flatMap((conclusion) => conclusion.readings),
  );
  return readings.filter(({ id }) => ids.has(id));
}

function failedTotal({ worksheet }: TraceFacts, check: TotalCheck, since: number): LooseEnd {
  return {
    id: `failed check:${worksheet.id}`,
    kind: 'failed check',
    sentence: `${sentence(sayPickup(worksheet.subject))} ${sayFailure(check)}.`,
    since,
    place: { on: 'trace', traceId: worksheet.id },
  };
}

function sayFailure({ measuredOhms, predictedOhms, differenceOhms }: TotalCheck): string {
  if (measuredOhms === null) return 'reads open between hot and ground since it was joined';
  const read = `reads ${sayOhms(measuredOhms)} since it was joined`;
  if (differenceOhms === null || predictedOhms === null) return `${read}: hot is shorted to ground`;
  return `${read}, where ${sayOhms(predictedOhms)} was to be expected`;
}

function missingCheck({ worksheet }: TraceFacts, outcome: OutcomeFacts, isReadAtJack: boolean): LooseEnd {
  const pickup = sentence(sayPickup(worksheet.subject));
  return {
    id: `missing check:${worksheet.id}`,
    kind: 'missing check',
    sentence: isReadAtJack
      ? `${pickup} was joined and read at the jack, but nothing is written down to hold that against.`
      : `${pickup} was joined, and neither its total nor the jack was read afterwards.`,
    since: outcome.createdAt,
    place: isReadAtJack ? { on: 'jack' } : { on: 'trace', traceId: worksheet.id },
  };
}

/** More than so many settings are counted, not named. */
const mostNamed = 3;

function jackEnds({ jack, readings, job }: LooseEndFacts): LooseEnd[] {
  const failed = jack?.checks.filter(({ verdict }) => verdict === 'fail') ?? [];
  if (jack?.verdict !== 'fail' || failed.length === 0) return [];
  const ids = new Set(failed.map(({ readingId }) => readingId));
  const noted = readings.filter(({ id }) => ids.has(id)).map(({ createdAt }) => createdAt);
  const labels = failed.map(({ label }) => quoted(label)).sort();
  const named = labels.length > mostNamed ? [...labels.slice(0, mostNamed - 1), 'others'] : labels;
  return [
    {
      id: 'failed check:jack',
      kind: 'failed check',
      sentence: `The check at the jack fails for ${sayList(named)}.`,
      since: noted.length > 0 ? Math.min(...noted) : job.createdAt,
      place: { on: 'jack' },
    },
  ];
}
