import type { HandoverFacts } from '@/lib/handover/facts';
import { aftercareTable, generalAftercare } from './aftercare-table';

/** More than this is not read. */
const mostUsual = 5;

/** What is usually said after the work that was done on this job, a line for each thing. Common practice, no source. */
export function usualAftercare({ record }: Pick<HandoverFacts, 'record'>): string[] {
  const done = record.work.filter(({ outcome }) => outcome === 'done').map(({ what }) => what);
  const fitted = record.parts.filter(({ deed }) => deed !== 'removed').map(({ what }) => what);
  const words = [...done, ...fitted].join('\n');
  const said = aftercareTable
    .filter(
      ({ when, instruments }) => when.test(words) && (instruments?.test(record.instrument.type) ?? true),
    )
    .map(({ says }) => says);
  return [...said.slice(0, mostUsual), generalAftercare];
}
