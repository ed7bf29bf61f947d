import { drawPlan, type PlanDrawing } from '@/lib/wiring';
import type { NoteDrawing } from '@/shared/notes';
import type { TraceView } from '@/shared/traces';
import type { WiringOutcome } from '@/shared/wiring';
import { drawInSvg } from './drawing-svg';
import { drawInText } from './drawing-text';
import type { Making } from './making';

/** What was joined, drawn; null where the trace no longer knows the plan or the ends, so that only the table tells it. */
export function drawOutcome(
  { say }: Making,
  outcome: WiringOutcome,
  { plans, analysis }: TraceView,
): NoteDrawing | null {
  const plan = plans.find(({ id }) => id === outcome.plan);
  const ends = new Set(analysis.strands.flatMap(({ points }) => points.flat()));
  if (!plan || !outcome.lines.every((line) => line.ends.every((end) => ends.has(end)))) return null;
  const joined = { ...plan, title: outcome.title, lines: outcome.lines };
  const drawing = publicDrawing(drawPlan(joined, analysis), say);
  return { text: drawInText(drawing, analysis), svg: drawInSvg(drawing) };
}

function publicDrawing(drawing: PlanDrawing, say: Making['say']): PlanDrawing {
  return {
    ...drawing,
    title: say(drawing.title),
    description: say(drawing.description),
    coils: drawing.coils.map((coil) => ({ ...coil, label: say(coil.label) })),
    nodes: drawing.nodes.map((node) => ({ ...node, place: say(node.place) })),
  };
}
