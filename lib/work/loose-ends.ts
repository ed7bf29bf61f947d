import { type LooseEnd, looseEndKinds } from '@/shared/loose-ends';
import { assumedEnds } from './loose-ends/assumed';
import { checkEnds } from './loose-ends/checks';
import { contradictionEnds } from './loose-ends/contradictions';
import type { LooseEndFacts } from './loose-ends/facts';
import { privateTextEnds } from './loose-ends/private-texts';
import { promiseEnd } from './loose-ends/promise';
import { proposalEnds } from './loose-ends/proposals';
import { takeEnds } from './loose-ends/takes';
import { workEnds } from './loose-ends/work';

export type { LooseEndFacts } from './loose-ends/facts';
export { promiseEnd };

const rules = [
  workEnds,
  contradictionEnds,
  assumedEnds,
  checkEnds,
  privateTextEnds,
  takeEnds,
  proposalEnds,
] as const;

/**
 * What is loose in a job: a pure function of the record, most pressing first.
 * @param today the day at the workshop, by ISO 8601
 */
export function looseEnds(facts: LooseEndFacts, today: string): LooseEnd[] {
  const promise = promiseEnd(facts.job, today);
  return [...(promise ? [promise] : []), ...lastingEnds(facts)];
}

/**
 * All but the promised day: what stays the same from one day to the next. What was never tied up stays loose when the
 * job is collected or goes back undone; only its promise is over then.
 */
export function lastingEnds(facts: LooseEndFacts): LooseEnd[] {
  return rules.flatMap((rule) => rule(facts)).sort(byPressure);
}

/** By kind as `looseEndKinds` puts them, then the one that has been loose longest. */
function byPressure(a: LooseEnd, b: LooseEnd): number {
  const byKind = looseEndKinds.indexOf(a.kind) - looseEndKinds.indexOf(b.kind);
  return byKind || a.since - b.since || (a.id < b.id ? -1 : 1);
}
