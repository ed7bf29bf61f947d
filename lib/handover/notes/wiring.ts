import { isConductorColour, letterCode } from '@/lib/wiring';
import type { TraceView } from '@/shared/traces';
import type { PlanLine, WiringOutcome } from '@/shared/wiring';
import { type Block, type Inline, paragraph, setOut, subheading, table, told, words } from './blocks';
import { drawOutcome } from './drawing';
import type { Making, SectionDraft, SectionMaker } from './making';
import { capital, explained, sayList, sentence } from './say';

export const wiring: SectionMaker = (making) => {
  const told = making.facts.traces.flatMap((view) => {
    const draft = ofTrace(making, view);
    return draft ? [{ view, draft }] : [];
  });
  if (told.length === 0) return null;
  const isOne = told.length === 1;
  return {
    blocks: told.flatMap(({ view, draft }) => [
      ...(isOne ? [] : [subheading(capital(making.say(view.worksheet.subject)))]),
      ...draft.blocks,
    ]),
    drawings: told.flatMap(({ draft }) => draft.drawings ?? []),
  };
};

function ofTrace(making: Making, view: TraceView): SectionDraft | null {
  const [newest, ...earlier] = view.outcomes;
  if (!newest) return tracedOnly(making, view);
  const drawing = drawOutcome(making, newest.outcome, view);
  return {
    blocks: [
      paragraph(...opening(making, newest, earlier.length > 0)),
      lineTable(making, newest.outcome),
      ...(drawing ? [paragraph(words('Here it is as a drawing.')), setOut(drawing.text)] : []),
      ...closing(making, view, newest.outcome),
    ],
    drawings: drawing ? [drawing] : [],
  };
}

function tracedOnly({ say }: Making, { worksheet, analysis }: TraceView): SectionDraft | null {
  if (analysis.conclusions.length === 0) return null;
  return {
    blocks: told(
      `I traced the ${say(worksheet.subject)} and joined nothing yet. This follows from what I read:`,
      analysis.conclusions.map(({ text, basis }) => [words(`${sentence(say(text))} (${capital(basis)}.)`)]),
    ),
  };
}

function opening(
  { say, time }: Making,
  { takeId, ms, outcome }: TraceView['outcomes'][number],
  isChanged: boolean,
): Inline[] {
  const at = time({ takeId, ms });
  const again = isChanged ? ' in the end' : '';
  const begun = `I joined the ${say(outcome.subject)} like this${again}: ${say(outcome.title)}`;
  return at === null ? [words(`${begun}.`)] : [words(`${begun} (`), at, words(').')];
}

function lineTable({ say }: Making, { lines }: WiringOutcome): Block {
  const row = ({ role, ends, goesTo, inside, basis }: PlanLine) =>
    [
      capital(role),
      ends.map(sayEnd).join(', '),
      `${say(goesTo)}${inside && ends.length > 1 ? ', joined inside the pickup' : ''}`,
      basis,
    ].map((text) => [words(text)]);
  return table(['Role', 'Conductors', 'Where to', 'Basis'], lines.map(row));
}

/** "red (RD)", by IEC 60757. */
function sayEnd(name: string): string {
  if (name === 'shield') return 'bare shield';
  if (name === 'frame') return 'lead of the frame';
  return isConductorColour(name) ? `${name} (${letterCode(name)})` : name;
}

function closing({ say }: Making, view: TraceView, outcome: WiringOutcome): Block[] {
  const plan = view.plans.find(({ id }) => id === outcome.plan);
  const sentences = [...explained(outcome.lines.map(({ basis }) => basis)), ...checked(view, outcome)];
  return [
    ...(sentences.length === 0
      ? []
      : [paragraph(words(sentences.map((one) => sentence(say(one))).join(' ')))]),
    ...told(
      'This stays unknown:',
      (plan?.unknowns ?? []).map((unknown) => [words(sentence(say(unknown)))]),
    ),
    ...told(
      'These readings contradict each other:',
      view.analysis.contradictions.map(({ text }) => [words(sentence(say(text)))]),
    ),
  ];
}

/** The total against the prediction, where it was held against the plan that was joined. */
function checked({ check, worksheet }: TraceView, { plan }: WiringOutcome): string[] {
  if (!check || worksheet.planId !== plan) return [];
  const others = check.alsoFits.map((title) => `“${title}”`);
  return [
    `I held the total against the prediction: ${check.text}`,
    ...(others.length === 0 ? [] : [`The same number would also fit ${sayList(others)}.`]),
    ...check.assumptions,
  ];
}
