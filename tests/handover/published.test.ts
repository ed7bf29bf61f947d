import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Film, filmTimeOf, momentAt } from '@/lib/film';
import { type CutAway, type PublishedFilm, publishedFilm, publishedTimeOf } from '@/lib/handover';
import { cut, cuts, filmOf, films, moments, takeId } from './films';

const spans = (published: PublishedFilm) =>
  published.pieces.map(({ takeId: id, fromMs, toMs, startMs }) => [Number(id), fromMs, toMs, startMs]);
const at = (take: number, ms: number) => ({ takeId: takeId(take), ms });

/** Every shown millisecond of the film in order, and whether it is kept: the slow way, to compare with. */
const milliseconds = (film: Film, cutAway: readonly CutAway[]) =>
  Array.from({ length: film.durationMs }, (_, filmMs) => momentAt(film, filmMs)).map((moment) => ({
    moment,
    kept: !cutAway.some(
      (one) => one.takeId === moment?.takeId && moment.ms >= one.fromMs && moment.ms < one.toMs,
    ),
  }));

describe('the published film', () => {
  it('is the film where nothing is cut', () => {
    const published = publishedFilm(filmOf(100, 50), []);
    expect(spans(published)).toEqual([
      [1, 0, 100, 0],
      [2, 0, 50, 100],
    ]);
    expect(published.durationMs).toBe(150);
  });

  it.each<[string, CutAway[], number[][]]>([
    [
      'a part in the middle',
      [cut(1, 20, 30)],
      [
        [1, 0, 20, 0],
        [1, 30, 100, 20],
        [2, 0, 50, 90],
      ],
    ],
    [
      'overlapping and touching parts',
      [cut(1, 20, 40), cut(1, 30, 50), cut(1, 50, 60)],
      [
        [1, 0, 20, 0],
        [1, 60, 100, 20],
        [2, 0, 50, 60],
      ],
    ],
    [
      'parts out of order, one within another',
      [cut(1, 50, 60), cut(1, 10, 80), cut(1, 0, 5)],
      [
        [1, 5, 10, 0],
        [1, 80, 100, 5],
        [2, 0, 50, 25],
      ],
    ],
    [
      'nothing: empty and backwards parts',
      [cut(1, 20, 20), cut(1, 40, 30)],
      [
        [1, 0, 100, 0],
        [2, 0, 50, 100],
      ],
    ],
    ['a whole take', [cut(1, 0, 100)], [[2, 0, 50, 0]]],
    [
      'beyond the end, and takes that are not there',
      [cut(2, 40, 9_000), cut(7, 0, 10)],
      [
        [1, 0, 100, 0],
        [2, 0, 40, 100],
      ],
    ],
    ['everything', [cut(1, -5, 900), cut(2, 0, 50)], []],
  ])('leaves out %s', (_what, cutAway, kept) => {
    expect(spans(publishedFilm(filmOf(100, 50), cutAway))).toEqual(kept);
  });

  it('has a moment on every kept millisecond, in order, and no other', () => {
    fc.assert(
      fc.property(films(40), cuts(40), (film, cutAway) => {
        const published = publishedFilm(film, cutAway);
        const kept = milliseconds(film, cutAway).filter((one) => one.kept);
        expect(published.durationMs).toBe(kept.length);
        const shown = published.pieces.flatMap((piece) => {
          expect(piece.filmStartMs).toBe(
            filmTimeOf(film, { takeId: piece.takeId, ms: piece.fromMs })?.filmMs,
          );
          return Array.from({ length: piece.toMs - piece.fromMs }, (_, ms) => ({
            moment: { takeId: piece.takeId, ms: piece.fromMs + ms },
            ms: piece.startMs + ms,
          }));
        });
        expect(shown).toEqual(kept.map(({ moment }, ms) => ({ moment, ms })));
      }),
    );
  });
});

describe('a moment on the published clock', () => {
  const published = publishedFilm(filmOf(100, 50, 50), [cut(1, 20, 30), cut(1, 90, 100), cut(3, 10, 50)]);

  it.each([
    ['before all cuts', at(1, 10), { what: 'kept', ms: 10 }],
    ['after a cut', at(1, 40), { what: 'kept', ms: 30 }],
    ['in a cut part: on to where the film goes on', at(1, 25), { what: 'moved', ms: 20 }],
    ['on the first cut moment', at(1, 20), { what: 'moved', ms: 20 }],
    ['on the first moment kept again', at(1, 30), { what: 'kept', ms: 20 }],
    ['in the cut end of a take: into the next take', at(1, 95), { what: 'moved', ms: 80 }],
    ['on the end of a take: the seam', at(1, 100), { what: 'kept', ms: 80 }],
    ['where nothing is kept any more', at(3, 20), { what: 'dropped', why: 'nothing after it' }],
    ['beyond its take', at(1, 101), { what: 'dropped', why: 'trimmed' }],
    ['of another take', at(8, 0), { what: 'dropped', why: 'not in the film' }],
  ])('%s', (_where, moment, time) => {
    expect(publishedTimeOf(published, moment)).toEqual(time);
  });

  it('drops out where the next one comes before the film goes on, or just then', () => {
    const gone = { what: 'dropped', why: 'cut up to the next' };
    expect(publishedTimeOf(published, at(1, 22), at(1, 25))).toEqual(gone);
    expect(publishedTimeOf(published, at(1, 22), at(1, 30))).toEqual(gone);
    expect(publishedTimeOf(published, at(1, 22), at(1, 31))).toEqual({ what: 'moved', ms: 20 });
    expect(publishedTimeOf(published, at(1, 95), at(2, 0))).toEqual(gone);
    expect(publishedTimeOf(published, at(1, 10), at(1, 15))).toEqual({ what: 'kept', ms: 10 });
  });

  it('is the count of kept milliseconds before it, and kept only where it is shown', () => {
    fc.assert(
      fc.property(films(40), cuts(40), moments(40), (film, cutAway, moment) => {
        const time = publishedTimeOf(publishedFilm(film, cutAway), moment);
        const filmTime = filmTimeOf(film, moment);
        const all = milliseconds(film, cutAway);
        const before = all.slice(0, filmTime?.filmMs).filter((one) => one.kept).length;
        const from = all.slice(filmTime?.filmMs);
        if (!filmTime?.shown) expect(time.what).toBe('dropped');
        else if (from[0]?.kept) expect(time).toEqual({ what: 'kept', ms: before });
        else if (from.some((one) => one.kept)) expect(time).toEqual({ what: 'moved', ms: before });
        else expect(time).toEqual({ what: 'dropped', why: 'nothing after it' });
      }),
    );
  });
});
