import type {
  HarnessInput,
  JackCheck,
  JackExplanation,
  JackJudgement,
  JackReading,
  JackReadingInput,
} from '@/shared/jack';
import { sayList } from '../trace/say';
import { assumptionsOf, invisibleOf, jackCautions } from './caveats';
import { explanationsOf } from './explanations';
import { listFaults } from './faults';
import { agrees, areApart } from './fit';
import { atJack, keyOf, type Model, modelOf, predict, sound } from './predict';
import { prepareHarness } from './prepare';
import { answeredOf, checkReading, prepareReading } from './readings';
import { labelOf, listSettings, toneSettings } from './settings';

/**
 * Readings at the jack against the harness: what passes, and when something does not, the single faults that
 * explain all numbers together, each with the one reading more that would tell it from the rest.
 * Order of the readings is of no meaning.
 * @throws HarnessProblem
 */
export function judgeAtJack(input: HarnessInput, readings: readonly JackReadingInput[]): JackJudgement {
  const model = modelOf(prepareHarness(input));
  const prepared = readings.map((reading) => prepareReading(model, reading));
  const checks = prepared.map((reading) => checkReading(model, reading));
  const missing = missingSettings(model, prepared);
  const explanations = checks.some(({ verdict }) => verdict === 'fail')
    ? explanationsOf(model, prepared.map(answeredOf), checks)
    : [];
  const verdict = verdictOf(checks, missing.length);
  return {
    verdict,
    text: sayVerdict(verdict, checks, missing, explanations),
    checks,
    explanations,
    notRuledOut: explanations.length || !checks.length ? [] : notRuledOut(model, prepared),
    missing,
    invisible: invisibleOf(model.harness),
    assumptions: assumptionsOf(prepared),
    cautions: [...jackCautions],
  };
}

function verdictOf(checks: readonly JackCheck[], missing: number): JackJudgement['verdict'] {
  if (checks.some(({ verdict }) => verdict === 'fail')) return 'fail';
  return missing > 0 || checks.some(({ verdict }) => verdict === 'cannot say') ? 'cannot say' : 'pass';
}

function missingSettings(model: Model, readings: readonly JackReading[]): JackJudgement['missing'] {
  const read = new Set(readings.map(keyOf));
  return listSettings(model.harness)
    .filter(({ pots, setting }) => pots === 'all up' && !read.has(keyOf(setting)))
    .map(({ setting }) => ({ setting, label: labelOf(model.harness, setting) }));
}

function sayVerdict(
  verdict: JackJudgement['verdict'],
  checks: readonly JackCheck[],
  missing: JackJudgement['missing'],
  explanations: readonly JackExplanation[],
): string {
  if (verdict === 'pass') return 'Every setting with the pots up was read and fits.';
  if (verdict === 'cannot say') {
    if (missing.length) return `Not read yet: ${missing.map(({ label }) => label).join('; ')}.`;
    return 'The meter is too coarse for some of these readings.';
  }
  const failed = checks.filter((check) => check.verdict === 'fail').map(({ label }) => `"${label}"`);
  const wrong = `${sayList(failed)} ${failed.length > 1 ? 'do' : 'does'} not fit.`;
  const [first] = explanations;
  if (!first?.explainsAll)
    return `${wrong} No single fault explains all numbers: there may be two, or a setting was another one than noted.`;
  return `${wrong} Most likely: ${first.title}.`;
}

/** Faults that agree with all readings so far, and where at the jack they would show, if anywhere. */
function notRuledOut(model: Model, readings: readonly JackReading[]): JackJudgement['notRuledOut'] {
  const { harness } = model;
  const answers = readings.map(answeredOf);
  const settings = [...listSettings(harness).map(({ setting }) => setting), ...toneSettings(harness)];
  return listFaults(harness)
    .filter((fault) => answers.every((answer) => agrees(predict(model, answer, fault), answer.measured)))
    .map((fault) => {
      const setting = settings.find((one) =>
        areApart(predict(model, atJack(one), fault), predict(model, atJack(one), sound)),
      );
      return {
        title: fault.title,
        setting: setting ?? null,
        label: setting ? labelOf(harness, setting) : null,
      };
    });
}
