import type { HandoverFacts } from '@/lib/handover/facts';
import { drawPlan } from '@/lib/wiring';
import type { OutcomeRecord, TraceView } from '@/shared/traces';
import type { Plan, PlanLine, WiringOutcome } from '@/shared/wiring';
import { basisWords, sayList, sentence, stopped } from './bases';
import type { SummaryBlock, SummarySection } from './content';

const roles: Readonly<Record<PlanLine['role'], string>> = {
  hot: 'Carries the sound (hot)',
  joined: 'Joined together',
  ground: 'Ground',
  insulated: 'Put away',
};

/** How each pickup is wired now, what that rests on, and whether it was proved. Null without a joint on record. */
export function wiringSection(facts: HandoverFacts): SummarySection | null {
  const joined = facts.traces.flatMap((trace) => {
    const newest = newestOutcome(trace);
    return newest ? [{ trace, outcome: newest.outcome }] : [];
  });
  if (joined.length === 0) return null;
  return {
    id: 'wiring',
    title: 'How it is wired now',
    blocks: [...joined.flatMap(({ trace, outcome }) => blocksOf(trace, outcome)), ...jackBlocks(facts)],
  };
}

/** Outcomes come newest first. */
export function newestOutcome({ outcomes }: TraceView): OutcomeRecord | undefined {
  return outcomes[0];
}

function blocksOf(trace: TraceView, outcome: WiringOutcome): SummaryBlock[] {
  const title = outcome.title.charAt(0).toLocaleLowerCase('en') + outcome.title.slice(1);
  const lines = outcome.lines.map(sayLine);
  const plan = planOf(trace, outcome);
  return [
    {
      is: 'words',
      text: `${sentence(outcome.subject)}, wired as: ${stopped(title)} ${assumedWords(outcome)}`,
    },
    ...(plan ? [drawingOf(trace, plan, outcome.subject)] : []),
    { is: 'list', mark: 'dot', items: lines, more: 0 },
    ...proofOf(trace),
  ];
}

/** The plan with the joints as they were really made. */
function planOf({ plans }: TraceView, { plan: id, title, lines }: WiringOutcome): Plan | null {
  const plan = plans.find((one) => one.id === id);
  return plan ? { ...plan, title, lines } : null;
}

function drawingOf({ analysis }: TraceView, plan: Plan, subject: string): SummaryBlock {
  const drawing = drawPlan(plan, analysis);
  return { is: 'drawing', drawing, alt: `Wiring of the ${subject}. ${plan.lines.map(sayLine).join('. ')}.` };
}

function sayLine({ role, ends, goesTo, basis }: PlanLine): string {
  const names = ends.map((end) => (end === 'shield' ? 'the bare shield' : end));
  return `${roles[role]}: ${sayList(names)}, ${goesTo} (${basisWords[basis]})`;
}

/** What of it nobody has measured, said as that. */
function assumedWords({ lines }: WiringOutcome): string {
  const ends = lines
    .filter(({ basis }) => basis === 'assumed' || basis === 'stated')
    .flatMap((line) => line.ends);
  return ends.length === 0
    ? 'Every wire in it was measured here, or follows from what was.'
    : `Not measured here, but taken over or told: ${sayList(ends)}.`;
}

function proofOf({ check }: TraceView): SummaryBlock[] {
  if (!check) return [];
  const said = {
    pass: 'The finished pickup was measured: it reads what its coils together should.',
    fail: 'The finished pickup was measured, and it does not read what its coils together should.',
    'cannot say': 'The finished pickup was measured, but there is too little to hold that reading against.',
  }[check.verdict];
  return [{ is: 'words', text: said }];
}

function jackBlocks({ jack }: HandoverFacts): SummaryBlock[] {
  const checks = jack.judgement?.checks ?? [];
  if (checks.length === 0) return [];
  const passed = checks.filter(({ verdict }) => verdict === 'pass').length;
  const failed = checks.filter(({ verdict }) => verdict === 'fail').map(({ label }) => label);
  const all = `${passed} of ${checks.length} readings at the output jack are as this wiring should read.`;
  const amiss = failed.length > 0 ? ` Not as they should be: ${sayList(failed)}.` : '';
  return [{ is: 'words', text: all + amiss }];
}
