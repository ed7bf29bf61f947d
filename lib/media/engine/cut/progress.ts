import type { CutProgress } from '@/shared/cut-engine';
import { Pace, type Watch } from '../pace';

/** What one millisecond of film costs in each stage, roughly, against the others. */
const weights: Readonly<Record<CutProgress['stage'], number>> = {
  looking: 0,
  encoding: 30,
  measuring: 1,
  writing: 2,
  closing: 0,
};

/** Tells how far a cut is, over all its stages. */
export class ProgressTeller {
  readonly #pace: Pace<CutProgress>;
  readonly #totals: Readonly<Partial<Record<CutProgress['stage'], number>>>;
  #stage: CutProgress['stage'] = 'looking';
  /** Milliseconds of the stage that are behind. */
  #passed = 0;

  /** @param totals milliseconds of film that each stage has to do */
  constructor(watch: Watch<CutProgress>, totals: Readonly<Partial<Record<CutProgress['stage'], number>>>) {
    this.#pace = new Pace(watch);
    this.#totals = totals;
  }

  /** Tells at once, and throws when the work was called off. */
  async begin(stage: CutProgress['stage']): Promise<void> {
    this.#stage = stage;
    this.#passed = 0;
    await this.rest(0);
  }

  get due(): boolean {
    return this.#pace.due;
  }

  passed(ms: number): void {
    this.#passed += ms;
  }

  /** @param ms done of what is under way */
  async rest(ms: number): Promise<void> {
    const totalMs = Math.round(this.#totals[this.#stage] ?? 0);
    const doneMs = Math.min(totalMs, Math.max(0, Math.round(this.#passed + (Number.isFinite(ms) ? ms : 0))));
    await this.#pace.rest(this.#share(doneMs), { stage: this.#stage, doneMs, totalMs });
  }

  #share(doneMs: number): number {
    const stages = ['looking', 'encoding', 'measuring', 'writing', 'closing'] as const;
    const cost = (stage: CutProgress['stage'], ms: number) => weights[stage] * ms;
    const before = stages.slice(0, stages.indexOf(this.#stage));
    const sum = (of: readonly CutProgress['stage'][]) =>
      of.reduce((total, stage) => total + cost(stage, this.#totals[stage] ?? 0), 0);
    return (sum(before) + cost(this.#stage, doneMs)) / sum(stages);
  }
}
