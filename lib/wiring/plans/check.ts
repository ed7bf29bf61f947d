import type { Plan, TotalCheck } from '@/shared/wiring';
import { expandedOhms, pairLimits, sayOhms, typicalMeterText } from '../trace';
import { inQuadrature } from '../trace/uncertainty';

type Total = { ohms: number | null; uncertaintyOhms?: number | undefined };

/**
 * The measured total against a plan's prediction, within their combined expanded uncertainty (k = 2).
 * @param others the other plans of the pickup, to say which of them the same number fits
 */
export function checkTotal(plan: Plan, total: Total, others: readonly Plan[] = []): TotalCheck {
  const numbers = {
    measuredOhms: total.ohms,
    predictedOhms: plan.predictedOhms,
    differenceOhms: null,
    allowedOhms: null,
  };
  const bare = { ...numbers, assumptions: [], alsoFits: [] };
  if (total.ohms === null) {
    return {
      ...bare,
      verdict: 'fail',
      text: 'It reads open between hot and ground: a joint or a coil is open.',
    };
  }
  if (total.ohms <= pairLimits.joinedOhms) {
    return { ...bare, verdict: 'fail', text: `It reads ${sayOhms(total.ohms)}: hot is shorted to ground.` };
  }
  if (plan.predictedOhms === null) {
    const text = `It reads ${sayOhms(total.ohms)}. Not every coil of this plan is measured, so there is no prediction to hold it against: the total is proved, the map is not.`;
    return { ...bare, verdict: 'cannot say', text };
  }
  return compare(plan, plan.predictedOhms, total.ohms, total, others);
}

function compare(
  plan: Plan,
  predictedOhms: number,
  measuredOhms: number,
  total: Total,
  others: readonly Plan[],
): TotalCheck {
  const own = expandedOhms({ ohms: measuredOhms, uncertaintyOhms: total.uncertaintyOhms });
  const allowedOhms = inQuadrature(own, plan.predictedUncertaintyOhms ?? 0);
  const differenceOhms = measuredOhms - predictedOhms;
  const isTooCoarse = allowedOhms > predictedOhms / 2;
  const isWithin = Math.abs(differenceOhms) <= allowedOhms;
  const verdict = isTooCoarse ? 'cannot say' : isWithin ? 'pass' : 'fail';
  const alsoFits = others
    .filter((other) => other.id !== plan.id && fits(other, measuredOhms, own))
    .map((other) => other.title);
  const assumptions = [
    ...plan.notes.filter((note) => note === typicalMeterText),
    ...(total.uncertaintyOhms === undefined ? [typicalMeterText] : []),
  ];
  return {
    verdict,
    measuredOhms,
    predictedOhms,
    differenceOhms,
    allowedOhms,
    text: sayVerdict(verdict, { measuredOhms, predictedOhms, differenceOhms, allowedOhms }),
    assumptions: [...new Set(assumptions)],
    alsoFits,
  };
}

function fits(plan: Plan, measuredOhms: number, own: number): boolean {
  if (plan.predictedOhms === null) return false;
  return Math.abs(measuredOhms - plan.predictedOhms) <= inQuadrature(own, plan.predictedUncertaintyOhms ?? 0);
}

type Numbers = { measuredOhms: number; predictedOhms: number; differenceOhms: number; allowedOhms: number };

function sayVerdict(verdict: TotalCheck['verdict'], numbers: Numbers): string {
  const allowed = sayOhms(Number(numbers.allowedOhms.toPrecision(2)));
  const said = `${sayOhms(numbers.measuredOhms)} measured, ${sayOhms(numbers.predictedOhms)} predicted: ${sayOhms(Math.abs(numbers.differenceOhms))} apart, ${allowed} allowed`;
  if (verdict === 'cannot say') return `${said}, which is too coarse to tell.`;
  return verdict === 'pass' ? `${said}. It passes.` : `${said}. It does not fit this plan.`;
}
