import type { UnderstoodPart } from '@/shared/archive';
import { folded } from '../lexicon/simple-words';

const longestSlug = 24;

/** Gives parts ids that are the same for the same words: "time-last-spring". */
export function partMaker() {
  const used = new Map<string, number>();
  return (kind: UnderstoodPart['kind'], said: string, means: string): UnderstoodPart => {
    const slug = folded(said)
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '')
      .slice(0, longestSlug);
    const plain = `${kind}-${slug}`;
    const count = (used.get(plain) ?? 0) + 1;
    used.set(plain, count);
    return { id: count === 1 ? plain : `${plain}~${count}`, kind, said: said.trim(), means };
  };
}

export type MakePart = ReturnType<typeof partMaker>;
