import type { FindableKind } from '@/shared/archive';
import { rarity } from '../rank';

/** A hit as it comes from the index: its number says the rest. */
export interface RawHit {
  id: number;
  kind: FindableKind;
  met: Map<number, number>;
}

/** Hits gathered by job, word by word. */
export class Pool {
  readonly jobs = new Map<number, Map<string, RawHit>>();
  /** For each word of the question the jobs that it was met in. */
  readonly #jobsOf: Set<number>[] = [];

  add(word: number, job: number, kind: FindableKind, id: number, how = 1): void {
    const hits = this.jobs.get(job) ?? new Map<string, RawHit>();
    this.jobs.set(job, hits);
    const key = kind === 'narration' ? `said ${id}` : String(id);
    const hit = hits.get(key) ?? { id, kind, met: new Map<number, number>() };
    hits.set(key, hit);
    hit.met.set(word, Math.max(how, hit.met.get(word) ?? 0));
    const jobsOf = this.#jobsOf[word] ?? new Set<number>();
    this.#jobsOf[word] = jobsOf;
    jobsOf.add(job);
  }

  hitsOf(job: number): RawHit[] {
    return [...(this.jobs.get(job)?.values() ?? [])];
  }

  /**
   * How much a word tells, by the jobs that it was met in.
   * @param all jobs there are
   * @param isWhole whether all that hold it were read; else the rest is reckoned from the oldest job reached
   */
  rarityOf(word: number, all: number, isWhole: boolean): number {
    const met = this.#jobsOf[word] ?? new Set<number>();
    if (isWhole || met.size === 0) return rarity(met.size, all);
    const reached = this.newest() - Math.min(...met) + 1;
    return rarity(Math.min(all, (met.size * all) / Math.max(1, Math.min(all, reached))), all);
  }

  isMet(word: number): boolean {
    return (this.#jobsOf[word]?.size ?? 0) > 0;
  }

  newest(): number {
    return Math.max(0, ...this.jobs.keys());
  }

  /** Jobs by what they meet at best, wherever it stands; as good ones the newer first. */
  best(worth: (hits: readonly RawHit[]) => number, limit: number): number[] {
    return [...this.jobs.keys()]
      .map((job) => ({ job, worth: worth(this.hitsOf(job)) }))
      .sort((a, b) => b.worth - a.worth || b.job - a.job)
      .slice(0, limit)
      .map(({ job }) => job);
  }
}
