import { type NoteDrawing, type NoteSectionId, noteSectionIds } from '@/shared/notes';
import type { HandoverFacts } from '../facts';
import { cameIn } from './came-in';
import { cautions } from './cautions';
import { chapters } from './chapters';
import { found } from './found';
import { makingOf, type NoteOptions, type SectionMaker } from './making';
import { writeMarkdown } from './markdown';
import { measured } from './measured';
import { parts } from './parts';
import { tools } from './tools';
import { wiring } from './wiring';
import { workDone, workNotDone } from './work';

/** A section as the record tells it. */
export interface NoteSection {
  readonly id: NoteSectionId;
  readonly heading: string;
  readonly markdown: string;
  readonly drawings: readonly NoteDrawing[];
}

/** Add a section here and its id in `shared/notes.ts`. */
const makers: Readonly<Record<NoteSectionId, { heading: string; make: SectionMaker }>> = {
  'came in': { heading: 'What came in', make: cameIn },
  found: { heading: 'What was found', make: found },
  measured: { heading: 'What was measured', make: measured },
  wiring: { heading: 'How it is wired', make: wiring },
  done: { heading: 'What was done', make: workDone },
  'not done': { heading: 'What was not done', make: workNotDone },
  parts: { heading: 'Parts', make: parts },
  tools: { heading: 'Tools', make: tools },
  cautions: { heading: 'Before you do it yourself', make: cautions },
  chapters: { heading: 'Chapters', make: chapters },
};

export function headingOf(id: NoteSectionId): string {
  return makers[id].heading;
}

/** The episode notes as the record tells them, in their usual order. A section with nothing to say is left out. */
export function noteSections(facts: HandoverFacts, options: NoteOptions): NoteSection[] {
  const making = makingOf(facts, options);
  return noteSectionIds.flatMap((id) => {
    const draft = makers[id].make(making);
    if (!draft) return [];
    const markdown = writeMarkdown(draft.blocks);
    return [{ id, heading: headingOf(id), markdown, drawings: draft.drawings ?? [] }];
  });
}
