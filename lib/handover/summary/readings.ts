import type { HandoverFacts } from '@/lib/handover/facts';
import { asSayable, kindOf, sayPlace, sayValue } from '@/lib/readings';
import { sameSubject } from '@/lib/wiring';
import type { Reading } from '@/shared/readings';
import { basisWords, sentence } from './bases';
import type { SummaryBlock, SummarySection } from './content';
import { groupReadings, type ReadingGroup, subjectOf } from './pairing';
import { changeWordsOf } from './reading-words';

/** More changes than this are told by the table alone. */
const mostSentences = 6;

/** Readings before and after, the changes in plain words first. Null where none is for the client. */
export function readingsSection(facts: HandoverFacts): SummarySection | null {
  const groups = groupReadings(facts).filter(({ readings }) => !isOfTracing(readings[0], facts));
  const traced =
    facts.record.readings.length - groups.reduce((sum, { readings }) => sum + readings.length, 0);
  if (groups.length === 0) return null;
  const changed = groups.filter(isChanged);
  const rows = [...changed, ...groups.filter((group) => !isChanged(group))];
  const told = changed.slice(0, mostSentences).map(sayChange);
  return {
    id: 'readings',
    title: 'Readings, before and after',
    blocks: [
      ...(told.length > 0 ? [{ is: 'list' as const, mark: 'dot' as const, items: told, more: 0 }] : []),
      readingsTable(rows),
      ...(traced > 0 ? [tracingNote(traced)] : []),
    ],
  };
}

function readingsTable(groups: readonly ReadingGroup[]): SummaryBlock {
  return {
    is: 'table',
    columns: [
      { head: 'What', share: 0.32 },
      { head: 'Before', share: 0.21, figures: true },
      { head: 'Now', share: 0.21, figures: true },
      { head: 'How it is known', share: 0.26 },
    ],
    rows: groups.map(rowOf),
    more: 0,
    foot: [],
  };
}

function tracingNote(traced: number): SummaryBlock {
  const more = traced === 1 ? 'One more reading was' : `${traced} more readings were`;
  return { is: 'words', text: `${more} taken to find out which wire is which.`, small: true };
}

/** Wire to wire inside a pickup, and which way a needle kicks: they served to find the wires. */
function isOfTracing(reading: Reading, { traces }: HandoverFacts): boolean {
  if (reading.kind === 'polarity-kick') return true;
  if (reading.kind !== 'resistance' || !reading.between) return false;
  const subject = subjectOf(reading);
  const isTraced = traces.some(({ worksheet }) => sameSubject(worksheet.subject, subject));
  return isTraced && !isWhole(reading);
}

const outputEnds: ReadonlySet<string> = new Set([
  'hot',
  'ground',
  'tip',
  'sleeve',
  'jack',
  'earth',
  'output',
]);

/** Read across the whole thing, so that "open" means that it gives no sound. */
function isWhole({ between }: Reading): boolean {
  return between === null || between.every((end) => outputEnds.has(end.toLocaleLowerCase('en')));
}

function isChanged({ readings, ordered }: ReadingGroup): boolean {
  const [first, last] = [readings[0], readings.at(-1)];
  if (!ordered || last === undefined || readings.length === 1) return false;
  return first.open !== last.open || first.baseValue !== last.baseValue;
}

function rowOf({ readings, ordered }: ReadingGroup): string[] {
  const [first, last] = [readings[0], readings.at(-1) ?? readings[0]];
  const { thing, place } = nameOf(first);
  const what = sentence([thing, place].filter(Boolean).join(', '));
  if (readings.length === 1) return [what, '–', saidValue(first), basisWords[first.basis]];
  if (!ordered) return [what, '–', [...new Set(readings.map(saidValue))].join(' or '), 'order not noted'];
  return [what, saidValue(first), saidValue(last), bothBases(first, last)];
}

function bothBases(first: Reading, last: Reading): string {
  if (first.basis === last.basis) return basisWords[last.basis];
  return `before: ${basisWords[first.basis]}; now: ${basisWords[last.basis]}`;
}

/** "The neck pickup read open (a broken connection) and reads 8.08 kΩ now." */
function sayChange({ readings }: ReadingGroup): string {
  const [first, last] = [readings[0], readings.at(-1) ?? readings[0]];
  const isDoubted = [first, last].some(({ basis }) => basis !== 'measured');
  const doubt = isDoubted ? ` (${bothBases(first, last)})` : '';
  const { thing, place } = nameOf(first);
  const name = `${thing}${place ? ` (${place})` : ''}`;
  const meant = `${meaning(first, last)}${doubt}.`;
  if (first.kind === 'resistance')
    return `${sentence(`the ${name}`)} read ${told(first)} and reads ${told(last)} now${meant}`;
  return `${sentence(name)}: ${told(first)} before, ${told(last)} now${meant}`;
}

function told(reading: Reading): string {
  return reading.open && reading.kind === 'resistance' && isWhole(reading)
    ? 'open (a broken connection)'
    : saidValue(reading);
}

function meaning(first: Reading, last: Reading): string {
  if (first.baseValue === null || last.baseValue === null) return '';
  const { more, less } = changeWordsOf(first.kind);
  return `; ${last.baseValue > first.baseValue ? more : less}`;
}

/** What was measured, and where on it: "neck pickup"; "string height", "low E string, fret 12". */
function nameOf(reading: Reading): { thing: string; place: string } {
  const { between, ...rest } = asSayable(reading);
  const place = sayPlace(isWhole(reading) ? rest : { ...rest, between: between ?? null });
  const label = kindOf(reading.kind).label.toLocaleLowerCase('en');
  const called = reading.kind === 'resistance' ? '' : changeWordsOf(reading.kind).called || label;
  const subject = subjectOf(reading) || (reading.details.jack ? 'output at the jack' : '');
  const isSaid = subject.toLocaleLowerCase('en').includes(called);
  return { thing: [subject, isSaid ? '' : called].filter(Boolean).join(' ') || label, place };
}

function saidValue(reading: Reading): string {
  return sayValue(asSayable(reading));
}
