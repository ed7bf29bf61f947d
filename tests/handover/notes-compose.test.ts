import { describe, expect, it } from 'vitest';
import {
  composeNotes,
  type NoteSection,
  noteSections,
  privateInNotes,
  writeNotes,
} from '@/lib/handover/notes';
import {
  type KeptNote,
  keptNotesSchema,
  type NoteSectionId,
  noteSectionIds,
  videoAddressSchema,
} from '@/shared/notes';
import { factsOf, fullRecord, work } from './notes-job';

const draft = (id: NoteSectionId, markdown: string): NoteSection => ({
  id,
  heading: id,
  markdown,
  drawings: [],
});
const kept = (id: NoteSectionId, some: Partial<KeptNote> = {}): KeptNote => ({
  id,
  on: true,
  text: null,
  madeFrom: null,
  ...some,
});
const three = [draft('came in', 'A guitar.\n'), draft('done', 'Frets.\n'), draft('parts', 'A nut.\n')];
const ids = (notes: readonly { id: NoteSectionId }[]) => notes.map(({ id }) => id);

describe('sections', () => {
  it('stand in their usual order until they are placed', () => {
    expect(ids(composeNotes(three, []))).toEqual(['came in', 'done', 'parts']);
  });

  it('stand where the repairer put them, a new one after the one it usually follows', () => {
    const order = [kept('parts'), kept('came in')];
    expect(ids(composeNotes(three, order))).toEqual(['parts', 'came in', 'done']);
    const all = noteSectionIds.map((id) => draft(id, id));
    expect(ids(composeNotes(all, [kept('chapters'), kept('found')]))).toEqual([
      ...[
        'came in',
        'chapters',
        'found',
        'measured',
        'wiring',
        'done',
        'not done',
        'parts',
        'tools',
        'cautions',
      ],
    ]);
  });

  it('are left out where there is neither a draft nor words of their own', () => {
    const order = [kept('wiring'), kept('tools', { text: 'A sharp eye.' })];
    expect(ids(composeNotes(three, order))).toEqual(['came in', 'done', 'parts', 'tools']);
  });

  it('that are switched off are in no document', () => {
    const notes = composeNotes(three, [kept('done', { on: false })]);
    expect(notes.map(({ on }) => on)).toEqual([true, false, true]);
    for (const format of ['markdown', 'text', 'html'] as const)
      expect(writeNotes(notes, format, { title: 'Notes' })).not.toContain('Frets');
  });
});

describe('an edited section', () => {
  const edited = kept('done', { text: 'All the frets, by hand.', madeFrom: 'Frets.\n' });

  it('stands as it was written', () => {
    const [, done] = composeNotes(three, [kept('came in'), edited]);
    expect(done).toMatchObject({ text: edited.text, edited: true, behind: false, difference: null });
  });

  it('is behind when its draft is another one now, and stands all the same', () => {
    const now = [draft('done', 'Frets and nut.\n')];
    const [done] = composeNotes(now, [edited]);
    expect(done).toMatchObject({ text: edited.text, edited: true, behind: true });
    expect(done?.difference).toEqual([
      { what: 'same', text: 'Frets' },
      { what: 'added', text: ' and nut' },
      { what: 'same', text: '.\n' },
    ]);
  });

  it('is behind when its draft has gone, or has only come', () => {
    const [gone] = composeNotes([], [edited]);
    expect(gone?.difference).toEqual([{ what: 'removed', text: 'Frets.\n' }]);
    const [come] = composeNotes(three, [kept('done', { text: 'Mine.' })]).filter(({ id }) => id === 'done');
    expect(come?.difference).toEqual([{ what: 'added', text: 'Frets.\n' }]);
  });

  it('of the whole record falls behind with the fact that changed, and no other does', () => {
    const options = { videoAddress: null };
    const record = fullRecord();
    const before = noteSections(factsOf(record), options);
    const all = before.map(({ id, markdown }) =>
      kept(id, { text: `${markdown}\nMy own words.`, madeFrom: markdown }),
    );
    const more = {
      ...record,
      work: [...record.work, work({ what: 'Cleaned the pots', outcome: 'done', origin: 'found' })],
    };
    const notes = composeNotes(noteSections(factsOf(more), options), all);
    expect(notes.filter(({ behind }) => behind).map(({ id }) => id)).toEqual(['found', 'done']);
    const added = notes.flatMap(({ difference }) => difference ?? []).filter(({ what }) => what === 'added');
    expect(added.map(({ text }) => text.replace(/^[\s-]+|[\s-]+$/g, '')).filter(Boolean)).toEqual([
      'Cleaned the pots',
      'Cleaned the pots, which I found on the way',
    ]);
    expect(notes.every(({ text }) => text.endsWith('My own words.'))).toBe(true);
  });

  it('that has nothing in common with its draft has a difference still', () => {
    const words = (seed: string) => Array.from({ length: 4000 }, (_, at) => `${seed}${at}`).join(' ');
    const [done] = composeNotes(
      [draft('done', words('b'))],
      [kept('done', { text: 'x', madeFrom: words('a') })],
    );
    expect(done?.difference?.map(({ what }) => what)).toEqual(['removed', 'added']);
  });
});

describe('what is kept', () => {
  it('holds a section once, and a draft only beside an edited text', () => {
    expect(keptNotesSchema.safeParse([kept('done'), kept('done')]).success).toBe(false);
    expect(keptNotesSchema.safeParse([kept('done', { madeFrom: 'Frets.' })]).success).toBe(false);
    expect(keptNotesSchema.safeParse([kept('done', { text: '', madeFrom: 'Frets.' })]).success).toBe(true);
  });
});

describe('private words in sections that were written by hand', () => {
  const { client, instrument } = fullRecord();
  const found = (text: string) =>
    privateInNotes(composeNotes([], [kept('done', { text })]), { client, instrument }).map(
      ({ words }) => words,
    );

  it.each([
    ['Frets for Marla', 'Marla'],
    ['Frets for M**arl**a', 'Marla'],
    ['Frets for M&#97;rla', 'Marla'],
    ['[ring](https://calls.example/555-0142)', '555-0142'],
    ['<!-- 40417283 -->', '40417283'],
    ['A returning client’s frets', null],
  ])('%j', (text, words) => expect(found(text)).toEqual(words === null ? [] : [words]));

  it('in a section that is switched off are none', () => {
    const off = composeNotes([], [kept('done', { text: 'Marla', on: false })]);
    expect(privateInNotes(off, { client, instrument })).toEqual([]);
  });
});

describe('the address of the video', () => {
  it.each([
    'https://video.example/watch?v=abc',
    ' http://bench.example:8080/a ',
    'https://v.example/?at={seconds}s',
  ])('may be “%s”', (address) => expect(videoAddressSchema.parse(address)).toBe(address.trim()));

  it.each([
    '',
    'video.example',
    'javascript:alert(1)',
    'https://',
    'https://v.example/a b',
    'https://v.example/<b>',
  ])('may not be “%s”', (address) => expect(videoAddressSchema.safeParse(address).success).toBe(false));
});
