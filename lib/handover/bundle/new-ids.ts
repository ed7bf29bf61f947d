import { type BundleRecord, bundleRecordSchema } from '@/shared/bundle';
import type { TakeId } from '@/shared/ids';
import type { HeardProposal } from '@/shared/narration';
import { idsOf } from './check-record';

/** How ids are made and what hangs on them. */
export interface IdWays {
  /** A new opaque id. */
  fresh(): string;
  /** The key under which the same words at the same place are known. */
  keyOf(takeId: TakeId, ms: number, heard: HeardProposal): string;
  /** Ids of entries that are there already, by the ids that they have in the record. */
  known: ReadonlyMap<string, string>;
}

/**
 * A record in order (`checkRecord`) with new ids all through, or those of entries that are there already. Ids are
 * found wherever they stand, for they also stand inside other words ("chapter:…", "marker:…").
 */
export function withNewIds(record: BundleRecord, { fresh, keyOf, known }: IdWays): BundleRecord {
  const ids = renewed(record, fresh, known);
  const inText = (text: string) =>
    text.replace(/(?<![0-9a-z])[0-9a-z]{20}(?![0-9a-z])/g, (old) => ids.get(old) ?? old);
  const moved = bundleRecordSchema.parse(mapTexts(record, inText));
  return {
    ...moved,
    proposals: moved.proposals.map((proposal, at) => {
      const before = record.proposals[at];
      // What was put right by hand keeps the key of what was heard at first, which nobody can work out any more.
      if (!before || keyOf(before.takeId, before.startMs, before.heard) !== before.key) return proposal;
      return { ...proposal, key: keyOf(proposal.takeId, proposal.startMs, proposal.heard) };
    }),
  };
}

/** Rows made in the same millisecond stand in the order of their ids: the new ones keep it. */
function renewed(
  record: BundleRecord,
  fresh: () => string,
  known: ReadonlyMap<string, string>,
): Map<string, string> {
  const ids = new Map<string, string>();
  for (const old of Object.values(idsOf(record))) {
    const made = old.map(fresh).sort();
    [...old].sort().forEach((one, at) => {
      ids.set(one, known.get(one) ?? made[at] ?? fresh());
    });
  }
  return ids;
}

function mapTexts(value: unknown, change: (text: string) => string): unknown {
  if (typeof value === 'string') return change(value);
  if (Array.isArray(value)) return value.map((each) => mapTexts(each, change));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, mapTexts(each, change)]));
}
