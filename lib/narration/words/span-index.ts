import type { TokenSpan } from './token';

/** Spans in order of their beginning, none overlapping another, asked for by place. */
export class SpanIndex<Span extends TokenSpan> {
  readonly list: readonly Span[];

  constructor(spans: readonly Span[]) {
    this.list = [...spans].sort((a, b) => a.from - b.from);
  }

  /** How many spans begin before `at`. */
  #countBefore(at: number): number {
    let low = 0;
    let high = this.list.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.list[middle]?.from ?? at) < at) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** The first span that begins at `at` or later and fits. */
  firstFrom(at: number, fits: (span: Span) => boolean = () => true): Span | undefined {
    for (let index = this.#countBefore(at); index < this.list.length; index++) {
      const span = this.list[index];
      if (span && fits(span)) return span;
    }
    return undefined;
  }

  /** The last span that ends at `at` or before and fits. */
  lastUpTo(at: number, fits: (span: Span) => boolean = () => true): Span | undefined {
    for (let index = this.#countBefore(at) - 1; index >= 0; index--) {
      const span = this.list[index];
      if (span && span.to <= at && fits(span)) return span;
    }
    return undefined;
  }

  /** The last span that begins at `at` or before. */
  lastFrom(at: number): Span | undefined {
    return this.list[this.#countBefore(at + 1) - 1];
  }

  /** All spans that begin in `from` up to, not including, `to`. */
  within(from: number, to: number): Span[] {
    const start = this.#countBefore(from);
    return this.list.slice(start, Math.max(start, this.#countBefore(to)));
  }
}
