import type { BundleRecord } from '@/shared/bundle';
import type { TakeId } from '@/shared/ids';

/** Something of the record that is pinned to a take, with where it stands in the record. */
export interface Pinned {
  where: string;
  takeId: TakeId;
  /** Null where only the take is named. */
  ms: number | null;
}

type PinnedParts = Pick<
  BundleRecord,
  'claims' | 'markers' | 'readings' | 'outcomes' | 'lines' | 'proposals' | 'work' | 'parts' | 'handOver'
>;
type Place = { takeId: TakeId; ms: number } | null;

/** Everything that is pinned to the film, spans by their ends. */
export function pinnedIn(record: PinnedParts): Pinned[] {
  const { claims, markers, readings, outcomes, lines, proposals, work, parts, handOver } = record;
  return [
    ...claims.flatMap(({ moment }, at) => placed(`claims/${at}`, moment)),
    ...markers.map(({ takeId, ms, endMs }, at) => ({ where: `markers/${at}`, takeId, ms: endMs ?? ms })),
    ...[...readings.map(asPlace('readings')), ...outcomes.map(asPlace('outcomes'))].flat(),
    ...lines.map(({ takeId, startMs, endMs }, at) => span(`lines/${at}`, takeId, startMs, endMs)),
    ...proposals.flatMap(({ takeId, startMs, endMs, promisedAt }, at) => [
      span(`proposals/${at}`, takeId, startMs, endMs),
      ...placed(`proposals/${at}`, promisedAt),
    ]),
    ...work.flatMap(({ begun, ended }, at) => [
      ...placed(`work/${at}`, begun),
      ...placed(`work/${at}`, ended),
    ]),
    ...parts.flatMap(({ moment }, at) => placed(`parts/${at}`, moment)),
    ...spansOf(handOver).map(({ takeId, toMs }) => ({ where: 'handOver/cut', takeId, ms: toMs })),
  ];
}

/** How far into each take something is pinned. */
export function reachOf(record: PinnedParts): Map<TakeId, number> {
  const reach = new Map<TakeId, number>();
  for (const { takeId, ms } of pinnedIn(record)) reach.set(takeId, Math.max(reach.get(takeId) ?? 0, ms ?? 0));
  return reach;
}

function spansOf(handOver: BundleRecord['handOver']) {
  return handOver ? [...handOver.cut.cutAway, ...handOver.cut.muted, ...handOver.cut.covers] : [];
}

function placed(where: string, moment: Place): Pinned[] {
  return moment ? [{ where, ...moment }] : [];
}

function asPlace(part: string) {
  return ({ takeId, ms }: { takeId: TakeId | null; ms: number | null }, at: number): Pinned[] =>
    takeId === null ? [] : [{ where: `${part}/${at}`, takeId, ms }];
}

function span(where: string, takeId: TakeId, startMs: number, endMs: number): Pinned {
  return { where, takeId, ms: Math.max(startMs, endMs) };
}
