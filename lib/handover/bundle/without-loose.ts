import type { BundleRecord } from '@/shared/bundle';
import type { MarkerId, ReadingId, WorkItemId } from '@/shared/ids';

/** A record as its rows tell it: an accepted proposal may name what was deleted since. */
export type LooseRecord = Omit<BundleRecord, 'proposals'> & {
  proposals: (Omit<BundleRecord['proposals'][number], 'recordId'> & { recordId: string | null })[];
};

/** Lets go of what names a deleted take, reading or record: without the undo history nothing can bring it back. */
export function withoutLoose(record: LooseRecord): BundleRecord {
  const takes = new Set<string>(record.takes.map(({ id }) => id));
  const held = <T extends { takeId: string }>(moment: T | null): T | null =>
    moment && takes.has(moment.takeId) ? moment : null;
  const kept = <T extends { takeId: string }>(spans: readonly T[]) =>
    spans.filter((span) => held(span) !== null);
  const readings = new Set(record.readings.map(({ id }) => id));
  const made = madeIn(record);
  const { handOver } = record;
  return {
    ...record,
    claims: record.claims.map((claim) => ({
      ...claim,
      moment: held(claim.moment),
      readingId: claim.readingId !== null && readings.has(claim.readingId) ? claim.readingId : null,
    })),
    outcomes: record.outcomes.map((row) => ({
      ...row,
      outcome: { ...row.outcome, moment: held(row.outcome.moment) },
    })),
    proposals: record.proposals.map((row) => ({
      ...row,
      promisedAt: held(row.promisedAt),
      recordId: row.recordId === null ? null : (made.get(row.recordId) ?? null),
    })),
    work: record.work.map((row) => ({ ...row, begun: held(row.begun), ended: held(row.ended) })),
    parts: record.parts.map((row) => ({ ...row, moment: held(row.moment) })),
    handOver: handOver && {
      ...handOver,
      cut: {
        ...handOver.cut,
        cutAway: kept(handOver.cut.cutAway),
        muted: kept(handOver.cut.muted),
        covers: kept(handOver.cut.covers),
      },
    },
  };
}

/** What acceptance can have made, by its id. */
function madeIn({ markers, readings, work }: LooseRecord): Map<string, MarkerId | ReadingId | WorkItemId> {
  return new Map<string, MarkerId | ReadingId | WorkItemId>(
    [...markers, ...readings, ...work].map(({ id }) => [id, id]),
  );
}
