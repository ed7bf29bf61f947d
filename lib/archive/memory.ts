/** Keeps what was worked out for a text. Where it holds its fill it begins anew: it never grows beyond that. */
export class Memory<T> {
  private readonly known = new Map<string, T>();

  constructor(private readonly most: number) {}

  /** What is kept for a key, or what `make` gives for it. */
  of(key: string, make: () => T): T {
    const before = this.known.get(key);
    if (before !== undefined) return before;
    if (this.known.size >= this.most) this.known.clear();
    const value = make();
    this.known.set(key, value);
    return value;
  }
}

/** A memory for each list of words of one's own; another list is another memory, and the old one goes with its list. */
export function memoryByWords<T>(most: number): (own: readonly object[]) => Memory<T> {
  const memories = new WeakMap<readonly object[], Memory<T>>();
  return (own) => {
    const memory = memories.get(own) ?? new Memory<T>(most);
    memories.set(own, memory);
    return memory;
  };
}
