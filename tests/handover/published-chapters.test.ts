import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chaptersOf } from '@/lib/film';
import { type CutAway, chaptersOfPublished, publishedFilm } from '@/lib/handover';
import type { Marker } from '@/shared/markers';
import { cut, cuts, filmOf, films, marker, moments } from './films';

const film = filmOf(60_000, 60_000);
const publish = (cutAway: CutAway[], markers: Marker[]) =>
  chaptersOfPublished(publishedFilm(film, cutAway), markers, 'A bass, crackling');
const starts = (made: ReturnType<typeof publish>) =>
  made.chapters.map(({ startMs, title }) => [startMs, title]);

describe('chapters of the published film', () => {
  const open = marker('Case open', 1, 0);
  const meter = marker('Meter out', 1, 20_000);
  const rewire = marker('Rewire', 2, 10_000);

  it('lie on its clock', () => {
    const made = publish([cut(1, 5_000, 15_000)], [rewire, meter, open]);
    expect(made).toEqual({
      chapters: [
        { startMs: 0, endMs: 10_000, title: 'Case open' },
        { startMs: 10_000, endMs: 60_000, title: 'Meter out' },
        { startMs: 60_000, endMs: 110_000, title: 'Rewire' },
      ],
      notes: [],
    });
  });

  it('move with their marker to where the film goes on, and it is told', () => {
    const made = publish([cut(1, 15_000, 30_000)], [open, meter, rewire]);
    expect(starts(made)).toEqual([
      [0, 'Case open'],
      [15_000, 'Meter out'],
      [55_000, 'Rewire'],
    ]);
    expect(made.notes).toEqual([
      {
        markerId: meter.id,
        what: 'moved',
        sentence: '“Meter out” lies in a cut part. It moves to where the film goes on, at 0:15.',
      },
    ]);
  });

  it('drop out where all is cut up to the next public marker; private ones do not count', () => {
    const phone = marker('Phone', 1, 40_000, false);
    const all = [open, meter, phone, rewire];
    expect(starts(publish([cut(1, 15_000, 45_000)], all))).toEqual([
      [0, 'Case open'],
      [15_000, 'Meter out'],
      [40_000, 'Rewire'],
    ]);
    const made = publish([cut(1, 15_000, 60_000), cut(2, 0, 10_000)], all);
    expect(starts(made)).toEqual([
      [0, 'Case open'],
      [15_000, 'Rewire'],
    ]);
    expect(made.notes).toEqual([
      {
        markerId: meter.id,
        what: 'dropped',
        sentence: '“Meter out” makes no chapter: all of it is cut, up to the next public marker.',
      },
    ]);
  });

  it('tell of the last one when the end is cut, and of one that a trim has cut away', () => {
    const late = marker('Beyond', 1, 70_000);
    const { notes } = publish([cut(2, 5_000, 60_000)], [open, rewire, late]);
    expect(notes.map(({ sentence }) => sentence)).toEqual([
      '“Beyond” makes no chapter: its moment is trimmed off the take.',
      '“Rewire” makes no chapter: nothing is kept from there on.',
    ]);
  });

  it('two markers on the same cut moment share a chapter', () => {
    const also = marker('Probes', 1, 20_000);
    expect(starts(publish([cut(1, 15_000, 30_000)], [open, meter, also]))).toEqual([
      [0, 'Case open'],
      [15_000, 'Meter out · Probes'],
    ]);
  });

  it('are none where nothing is public or nothing is kept', () => {
    expect(publish([], [marker('x', 1, 0, false)])).toEqual({ chapters: [], notes: [] });
    const made = publish([cut(1, 0, 60_000), cut(2, 0, 60_000)], [open, meter, rewire]);
    expect(made.chapters).toEqual([]);
    expect(made.notes).toHaveLength(3);
  });

  const markers = fc
    .array(fc.tuple(moments(40_000), fc.boolean()), { maxLength: 12 })
    .map((all) => all.map(([{ takeId, ms }, open]) => ({ ...marker(`at ${ms}`, 1, ms, open), takeId })));

  it('are those of the whole film where nothing is cut', () => {
    fc.assert(
      fc.property(films(40_000), markers, (any, all) => {
        expect(chaptersOfPublished(publishedFilm(any, []), all, 'Job').chapters).toEqual(
          chaptersOf(any, all, 'Job'),
        );
      }),
    );
  });

  it('begin at 0, follow each other to the end, and each public marker is in them or told of', () => {
    fc.assert(
      fc.property(films(40_000), cuts(40_000), markers, (any, cutAway, all) => {
        const published = publishedFilm(any, cutAway);
        const { chapters, notes } = chaptersOfPublished(published, all, 'Job');
        chapters.forEach((chapter, index) => {
          expect(chapter.startMs).toBe(chapters[index - 1]?.endMs ?? 0);
          expect(chapter.endMs).toBeGreaterThan(chapter.startMs);
        });
        expect(chapters.at(-1)?.endMs ?? published.durationMs).toBe(published.durationMs);
        const dropped = new Set(notes.filter(({ what }) => what === 'dropped').map((note) => note.markerId));
        const told = chapters.flatMap(({ title }) => title.split(' · ')).filter((title) => title !== 'Job');
        expect(told.sort()).toEqual(
          all
            .filter((one) => one.public && !dropped.has(one.id))
            .map((one) => one.title)
            .sort(),
        );
      }),
    );
  });
});
