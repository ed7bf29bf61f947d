import type { HandoverFacts } from '@/lib/handover/facts';
import { type KeptSummary, mostStills } from '@/shared/summary';
import { usualAftercare } from './aftercare';
import { sentence } from './bases';
import { collectionSection } from './collection';
import type { ListBlock, SectionId, SummaryBlock, SummaryContent, SummarySection } from './content';
import { dayInWords } from './days';
import { type HoldBack, holdBackFor } from './hold-back';
import { partsSection } from './parts';
import { readingsSection } from './readings';
import { type StillMoment, stillMoments, usualStills } from './stills';
import { heldBackIn } from './texts';
import { wiringSection } from './wiring';
import { askedSection, doneSection, notDoneSection } from './work';

/**
 * The client summary of a job in plain words, complete: what does not fit on three pages is shortened when it is
 * laid out. Private words of other people in the record are held back; those in typed words are found and reported.
 */
export function summaryOf(facts: HandoverFacts, kept: KeptSummary): SummaryContent {
  const { record, workshop, today } = facts;
  const holdBack = holdBackFor(record);
  const heading = `Summary of the work: ${record.job.title}`;
  const sections = [
    typed('greeting', kept.greeting),
    ...heldBackIn(recordSections(facts, kept), holdBack),
    aftercareSection(facts, kept),
    cautionsSection(facts),
    ...heldBackIn([collectionSection(facts)], holdBack),
    typed('closing', kept.closing),
  ].filter((section) => section !== null);
  return {
    language: 'en-GB',
    title: `${holdBack.out(heading)} (job ${record.job.number})`,
    head: {
      workshop: workshop.name || 'The workshop',
      address: workshop.address.split('\n').flatMap((line) => line.trim() || []),
      job: String(record.job.number),
      day: dayInWords(today),
      heading: holdBack.out(sentence(record.job.title)),
    },
    sections,
    footer: `${workshop.name ? `${workshop.name} · ` : ''}Job ${record.job.number} · ${dayInWords(today)}`,
    heldBack: holdBack.taken(),
    findings: findingsIn(kept, holdBack),
  };
}

/** The stills that go on the paper, with their moments on the film. */
export function chosenStills(facts: HandoverFacts, kept: KeptSummary): StillMoment[] {
  const moments = stillMoments(facts);
  if (kept.stills === null) return usualStills(facts, moments);
  const wanted = new Set<string>(kept.stills.slice(0, mostStills));
  return moments.filter(({ key }) => wanted.has(key));
}

function recordSections(facts: HandoverFacts, kept: KeptSummary): SummarySection[] {
  const { record } = facts;
  return [
    factsSection(facts),
    askedSection(record.work),
    doneSection(record.work),
    notDoneSection(record.work),
    readingsSection(facts),
    wiringSection(facts),
    partsSection(record.parts),
    stillsSection(chosenStills(facts, kept)),
  ].filter((section) => section !== null);
}

function factsSection({ record }: HandoverFacts): SummarySection {
  const { job, instrument, client } = record;
  const make = [instrument.maker ?? 'maker not known', instrument.model ?? 'model not known'].join(', ');
  const pairs = [
    { label: 'For', value: client?.name ?? 'no name noted' },
    { label: 'Instrument', value: `${sentence(instrument.type)}, ${make}` },
    { label: 'Serial number', value: instrument.serial ?? 'not noted' },
    ...(instrument.features ? [{ label: 'Known by', value: instrument.features.replace(/\n+/g, '; ') }] : []),
    { label: 'Received', value: dayInWords(job.receivedOn) },
    { label: 'Promised', value: job.promisedOn ? dayInWords(job.promisedOn) : 'no day promised' },
  ];
  return { id: 'facts', title: null, blocks: [{ is: 'pairs', pairs }] };
}

function stillsSection(stills: readonly StillMoment[]): SummarySection | null {
  if (stills.length === 0) return null;
  const shown = stills.map(({ key, caption }) => ({ key, caption: sentence(caption) }));
  return { id: 'stills', title: 'From the film', blocks: [{ is: 'stills', stills: shown, more: 0 }] };
}

function aftercareSection(facts: HandoverFacts, { aftercare }: KeptSummary): SummarySection | null {
  const lines = aftercare === null ? usualAftercare(facts) : linesOf(aftercare);
  return listed('aftercare', 'What to look after', 'dot', lines);
}

function cautionsSection({ cautions }: HandoverFacts): SummarySection | null {
  const section = listed('cautions', 'Please take care', 'care', [...cautions]);
  const intro = 'For whoever opens it or works on it next. Local codes and licensed practice come first.';
  return section && { ...section, blocks: [{ is: 'words', text: intro, small: true }, ...section.blocks] };
}

function listed(
  id: SectionId,
  title: string,
  mark: ListBlock['mark'],
  items: string[],
): SummarySection | null {
  return items.length > 0 ? { id, title, blocks: [{ is: 'list', mark, items, more: 0 }] } : null;
}

function typed(id: SectionId, text: string): SummarySection | null {
  const blocks: SummaryBlock[] = text ? [{ is: 'words', text }] : [];
  return text ? { id, title: null, blocks } : null;
}

function linesOf(text: string): string[] {
  return text.split('\n').flatMap((line) => line.trim() || []);
}

function findingsIn(kept: KeptSummary, holdBack: HoldBack): SummaryContent['findings'] {
  const { greeting, closing, aftercare } = kept;
  return Object.entries({ greeting, aftercare: aftercare ?? '', closing }).flatMap(([where, text]) =>
    holdBack.find(text).map((words) => ({ where, words })),
  );
}
