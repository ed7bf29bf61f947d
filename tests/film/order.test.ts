import { describe, expect, it } from 'vitest';
import { inFilmOrder, moved } from '@/lib/film';

const at = (name: string, recordedAt: number | null, position: number | null = null) => ({
  name,
  recordedAt,
  position,
});
const names = (takes: { name: string }[]) => takes.map((take) => take.name);

describe('film order', () => {
  it('follows the recorded-at times, undated takes last, numbers as people count', () => {
    const takes = [at('take 10', 5), at('undated', null), at('take 2', 5), at('first', 1)];
    expect(names(inFilmOrder(takes))).toEqual(['first', 'take 2', 'take 10', 'undated']);
  });

  it('is the hand’s order once a hand has ordered it', () => {
    expect(names(inFilmOrder([at('a', 1, 2), at('b', 2, 0), at('c', 3, 1)]))).toEqual(['b', 'c', 'a']);
  });

  it('moves one item and keeps the rest in order', () => {
    expect(moved(['a', 'b', 'c', 'd'], 0, 2)).toEqual(['b', 'c', 'a', 'd']);
    expect(moved(['a', 'b', 'c', 'd'], 3, 0)).toEqual(['d', 'a', 'b', 'c']);
    expect(moved(['a', 'b'], 0, 9)).toEqual(['b', 'a']);
  });
});
