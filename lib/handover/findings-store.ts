import { and, eq } from 'drizzle-orm';
import { edit, GoneError } from '@/db/changes';
import type { Database } from '@/db/open';
import { proposals } from '@/db/schema';
import { proposalsOf } from '@/lib/narration/store';
import type { Finding, PublicDocument } from '@/shared/cut';
import { type ChangeId, type JobId, proposalIdSchema } from '@/shared/ids';
import { DomainError } from '@/shared/problem';
import type { HandoverFacts } from './facts';
import { handoverFactsOf } from './facts-store';
import { type FindingFacts, findingsIn } from './findings';
import { keep, keptOf } from './kept-store';
import { composeNotes, privateInNotes } from './notes';

/** Something private would go public, and nobody has decided that it may. */
export class FindingsError extends DomainError {
  constructor(findings: readonly Finding[]) {
    super(
      'conflict',
      'Something private would go public.',
      'Decide on each finding first: write other words, mute what is spoken, or allow it on purpose.',
      { findings },
    );
  }
}

/** All private findings of a job with what was decided. */
export function findingsOf(db: Database, jobId: JobId, facts = handoverFactsOf(db, jobId)): Finding[] {
  const { record, published } = facts;
  const { allowed } = keptOf(db, jobId);
  return findingsIn({
    known: knownOf(facts),
    title: record.job.title,
    markers: record.markers,
    notes: editedNotes(db, facts),
    proposals: proposalsOf(db, jobId),
    published,
    allowed,
  });
}

/** Sections that were written by hand, with what is private in each as it will be read. */
function editedNotes(db: Database, { record }: HandoverFacts): FindingFacts['notes'] {
  const edited = composeNotes([], keptOf(db, record.job.id).notes.sections).filter(
    (note) => note.on && note.edited,
  );
  const found = privateInNotes(edited, record);
  return edited.map(({ id, heading, text }) => ({
    id,
    heading,
    text,
    found: found.filter(({ section }) => section === id),
  }));
}

/** @throws FindingsError where a document still holds a finding on which nobody has decided */
export function refuseFindings(findings: readonly Finding[], document: PublicDocument): void {
  const open = findings.filter(
    ({ decision, documents }) => decision === 'open' && documents.includes(document),
  );
  if (open.length > 0) throw new FindingsError(open);
}

/** Decides on one finding. Written words are held back by writing other ones, not here. */
export function decideFinding(
  db: Database,
  jobId: JobId,
  { id, decision }: Pick<Finding, 'id' | 'decision'>,
): ChangeId {
  const finding = findingsOf(db, jobId).find((each) => each.id === id);
  if (!finding) throw new GoneError('finding');
  const label = decision === 'open' ? 'private finding to be decided' : `private words ${decision}`;
  if (finding.what === 'spoken') return decideSpoken(db, jobId, id, decision, label);
  if (decision === 'held back') {
    throw new DomainError(
      'invalid',
      'Written words are not muted.',
      'Write other words in their place, or allow them on purpose.',
      { place: finding.place },
    );
  }
  const others = keptOf(db, jobId).allowed.filter((each) => each !== id);
  const allowed = decision === 'allowed' ? [...others, id] : others;
  return edit(db, jobId, label, (e) => keep(db, e, jobId, { allowed })).change;
}

const asProposal = { open: 'open', 'held back': 'accepted', allowed: 'dismissed' } as const;

function decideSpoken(
  db: Database,
  jobId: JobId,
  id: string,
  decision: Finding['decision'],
  label: string,
): ChangeId {
  const proposalId = proposalIdSchema.parse(id.slice('spoken:'.length));
  const known = db
    .select({ id: proposals.id })
    .from(proposals)
    .where(and(eq(proposals.id, proposalId), eq(proposals.jobId, jobId)))
    .get();
  if (!known) throw new GoneError('proposal');
  return edit(db, jobId, label, (e) => e.update('proposals', proposalId, { decision: asProposal[decision] }))
    .change;
}

/** What is known to be private in a job. */
export function knownOf({ record }: Pick<HandoverFacts, 'record'>) {
  return {
    clientName: record.client?.name ?? null,
    reach: record.client?.reach ?? null,
    serial: record.instrument.serial,
  };
}
