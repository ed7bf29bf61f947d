import { AV_BUFFERSRC_FLAG_KEEP_REF } from 'node-av/constants';
import { type FilterContext, FilterGraph, Frame } from 'node-av/lib';
import { check } from './native';

/** One chain of libavfilter: frames go in, frames come out. */
export class FilterChain {
  readonly #graph = new FilterGraph();
  readonly #source: FilterContext;
  readonly #sink: FilterContext;
  readonly #out = new Frame();

  /**
   * @param source `buffer` or `abuffer` with its arguments: what goes in
   * @param filters what is done, in libavfilter's notation
   */
  constructor(source: 'buffer' | 'abuffer', input: string, filters: string) {
    this.#graph.alloc();
    const sink = source === 'buffer' ? 'buffersink' : 'abuffersink';
    check(this.#graph.parsePtr(`${source}@in=${input},${filters},${sink}@out`), 'setting filters up');
    check(this.#graph.configSync(), 'setting filters up');
    this.#source = this.#named(`${source}@in`);
    this.#sink = this.#named(`${sink}@out`);
    this.#out.alloc();
  }

  /** Hands every frame that comes out to `use`; it is used again afterwards. Null ends the stream. */
  push(frame: Frame | null, use: (frame: Frame) => void): void {
    check(this.#source.buffersrcAddFrameSync(frame, AV_BUFFERSRC_FLAG_KEEP_REF), 'filtering');
    while (this.#sink.buffersinkGetFrameSync(this.#out) >= 0) {
      use(this.#out);
      this.#out.unref();
    }
  }

  free(): void {
    this.#out.free();
    this.#graph.free();
  }

  #named(name: string): FilterContext {
    const filter = this.#graph.getFilter(name);
    if (!filter) throw new Error(`libavfilter has no ${name}`);
    return filter;
  }
}

/**
 * A value within a chain's description: libavfilter reads it twice, once as an option's value and once as a part of the
 * description (FFmpeg documentation, "Notes on filtergraph escaping").
 */
export function filterValue(text: string): string {
  return text.replace(/[\\':]/g, '\\$&').replace(/[\\'[\],;]/g, '\\$&');
}
