import { edit } from '@/db/changes';
import type { Database } from '@/db/open';
import { exactStillOf } from '@/lib/media/store';
import { refuseIfChanged } from '@/lib/work';
import type { HandOverView, SummaryPatch } from '@/shared/hand-over';
import type { ChangeId, JobId } from '@/shared/ids';
import type { SummaryPaper } from '@/shared/summary';
import type { HandoverFacts } from './facts';
import { handoverFactsOf } from './facts-store';
import { keep, keptOf } from './kept-store';
import { logoOf } from './logo-store';
import { chosenStills, type StillMoment, stillMoments, summaryOf, usualAftercare } from './summary';
import { writeSummary } from './summary/write';

/** What was chosen for the client summary, and what there is to choose from. */
export function summaryView(db: Database, facts: HandoverFacts): HandOverView['summary'] {
  const kept = keptOf(db, facts.record.job.id).summary;
  const usual = new Set(chosenStills(facts, { ...kept, stills: null }).map(({ key }) => key));
  return {
    kept,
    stills: stillMoments(facts).map(({ key, caption, moment }) => ({
      key,
      caption,
      moment,
      usual: usual.has(key),
    })),
    usualAftercare: usualAftercare(facts).join('\n'),
  };
}

export function patchSummary(db: Database, jobId: JobId, { was, ...patch }: SummaryPatch): ChangeId {
  const { summary } = keptOf(db, jobId);
  refuseIfChanged(summary, patch, was);
  return edit(db, jobId, 'client summary changed', (e) =>
    keep(db, e, jobId, { summary: { ...summary, ...patch } }),
  ).change;
}

/** The client summary as a PDF. A still whose recording is not there is left out, and the paper does without. */
export async function summaryPdfOf(
  db: Database,
  jobId: JobId,
  paper: SummaryPaper | undefined,
): Promise<{ fileName: string; pdf: Uint8Array; told: string[] }> {
  const facts = handoverFactsOf(db, jobId);
  const kept = keptOf(db, jobId).summary;
  const content = summaryOf(facts, kept);
  const written = await writeSummary(content, {
    paper: paper ?? kept.paper,
    stills: await picturesOf(db, facts, chosenStills(facts, kept)),
    logo: logoOf(),
  });
  return {
    fileName: `job-${facts.record.job.number}-summary`,
    pdf: written.pdf,
    told: written.told,
  };
}

async function picturesOf(
  db: Database,
  { record }: HandoverFacts,
  moments: readonly StillMoment[],
): Promise<Map<string, Uint8Array>> {
  const pictures = new Map<string, Uint8Array>();
  for (const { key, moment } of moments) {
    const take = record.takes.find(({ id }) => id === moment.takeId);
    if (!take?.probe?.video) continue;
    try {
      pictures.set(key, await exactStillOf(db, take.recordingId, moment.ms));
    } catch (error) {
      // The supervisor may be bundled apart from this, so its DomainError is known by its shape. What is missing is
      // told by whoever writes the paper.
      if (!(error instanceof Error && 'detail' in error)) throw error;
    }
  }
  return pictures;
}
