import { edit } from '@/db/changes';
import type { Database } from '@/db/open';
import { refuseIfChanged } from '@/lib/work';
import type { HandOverView, NotesPatch } from '@/shared/hand-over';
import type { ChangeId, JobId } from '@/shared/ids';
import type { HandoverFacts } from './facts';
import { handoverFactsOf } from './facts-store';
import { findingsOf, refuseFindings } from './findings-store';
import { keep, keptOf } from './kept-store';
import { composeNotes, type NoteFormatName, noteSections, notesMetaOf, writeNotes } from './notes';

/** The episode notes as they stand: the record's draft, and what was written by hand. */
export function notesView(db: Database, facts: HandoverFacts): HandOverView['notes'] {
  const { sections: kept, videoAddress } = keptOf(db, facts.record.job.id).notes;
  return { sections: composeNotes(noteSections(facts, { videoAddress }), kept), kept, videoAddress };
}

export function patchNotes(db: Database, jobId: JobId, { was, ...patch }: NotesPatch): ChangeId {
  const { notes } = keptOf(db, jobId);
  refuseIfChanged(notes, patch, was);
  return edit(db, jobId, 'episode notes changed', (e) =>
    keep(db, e, jobId, { notes: { ...notes, ...patch } }),
  ).change;
}

/**
 * The episode notes as a file.
 * @throws FindingsError where they hold something private on which nobody has decided
 */
export function notesOf(
  db: Database,
  jobId: JobId,
  format: NoteFormatName,
): { fileName: string; text: string } {
  const facts = handoverFactsOf(db, jobId);
  refuseFindings(findingsOf(db, jobId, facts), 'notes');
  const { sections } = notesView(db, facts);
  return {
    fileName: `job-${facts.record.job.number}-notes`,
    text: writeNotes(sections, format, notesMetaOf(facts)),
  };
}
