import { describe, expect, it } from 'vitest';
import {
  chosenStills,
  type SummaryContent,
  stillMoments,
  summaryOf,
  usualAftercare,
} from '@/lib/handover/summary';
import type { JobRecord } from '@/shared/jobs';
import { keptSummarySchema, type NewKeptSummary } from '@/shared/summary';
import { at, factsOf, fullRecord, part, type Reading, reading, traceView, work } from './notes-job';

const open = { open: true, valueText: null, baseValue: null } as const;
const whole = (some: Partial<Reading>) => reading({ between: ['hot', 'ground'], ...some });

/** The record of the notes, with the neck pickup read at its old joint and again when it was done. */
function wholeRecord(): JobRecord {
  const record = fullRecord();
  const readings = record.readings.slice(0, 4);
  return {
    ...record,
    readings: [
      ...readings,
      whole({ ...at(1, 39_000), ...open, subject: 'neck pickup, old joint' }),
      whole({ ...at(1, 30_500), subject: 'bridge pickup', valueText: '8.80', baseValue: 8800 }),
      whole({ ...at(2, 50_000), valueText: '8.08', baseValue: 8080 }),
    ],
  };
}

const made = (record = wholeRecord(), kept: NewKeptSummary = {}, traces = [traceView()]) =>
  summaryOf(factsOf(record, traces), keptSummarySchema.parse(kept));

/** Every text of a section, a line each; cells parted by bars. */
function wordsOf(content: SummaryContent, id: string): string[] {
  return content.sections.find((one) => one.id === id)?.blocks.flatMap(textsOf) ?? [];
}

function textsOf(block: SummaryContent['sections'][number]['blocks'][number]): string[] {
  switch (block.is) {
    case 'words':
      return [block.text];
    case 'list':
      return block.items;
    case 'pairs':
      return block.pairs.map(({ label, value }) => `${label}: ${value}`);
    case 'table':
      return [...block.rows, ...block.foot].map((row) => row.join(' | '));
    case 'stills':
      return block.stills.map(({ caption }) => caption);
    case 'drawing':
      return [block.alt];
  }
}
const allWords = (content: SummaryContent) =>
  content.sections.flatMap(({ id }) => wordsOf(content, id)).join('\n');

describe('the client summary of a whole record', () => {
  const content = made();

  it('says whose it is and what it is about', () => {
    expect(content.title).toBe(
      'Summary of the work: Marla’s electric guitar: a crackle, and a rewire (job 117)',
    );
    expect(wordsOf(content, 'facts')).toEqual([
      'For: Marla Quillfeather',
      'Instrument: Electric guitar, maker not known, model not known',
      'Serial number: 40417283',
      'Known by: sea-green top; two two-coil pickups',
      'Received: 16 March 2026',
      'Promised: 20 March 2026',
    ]);
  });

  it('says what was asked, done and not done, and why', () => {
    expect(wordsOf(content, 'asked')).toEqual([
      'Find and mend the crackle',
      'Rewire the neck pickup for €45',
      'New strings for Marla',
      'We offered: Set-up',
      'We offered: String clean',
      'Came up at the bench: Loose jack nut',
      'Came up at the bench: Worn second fret',
    ]);
    expect(wordsOf(content, 'done')).toEqual([
      'Find and mend the crackle',
      'Rewire the neck pickup for €45',
      'Loose jack nut',
    ]);
    expect(wordsOf(content, 'not done')).toEqual([
      'New strings for Marla: declined. She changes them herself.',
      'Set-up: not done. No time before Friday.',
      'String clean: not done. No reason was written down.',
      'Worn second fret: still open when this was written.',
    ]);
  });

  it('holds the readings before against those now', () => {
    expect(wordsOf(content, 'readings')).toEqual([
      'The neck pickup read open (a broken connection) and reads 8.08 kΩ now.',
      'Neck pickup | open | 8.08 kΩ | measured',
      'String height, low E string, fret 12 | – | 6/64 in (2.38 mm) | as told to us, not measured',
      'Bridge pickup | – | 8.80 kΩ | measured',
      '3 more readings were taken to find out which wire is which.',
    ]);
  });

  it('says how it is wired, and what of it nobody measured', () => {
    expect(wordsOf(content, 'wiring')).toEqual([
      'Neck pickup, wired as: series. Not measured here, but taken over or told: white, green, black and shield.',
      'Wiring of the neck pickup. Carries the sound (hot): red, the input lug of the volume pot (measured). Joined together: white and green, a splice of its own, sleeved (taken over, not measured). Ground: black and the bare shield, the back of the volume pot (taken over, not measured).',
      'Carries the sound (hot): red, the input lug of the volume pot (measured)',
      'Joined together: white and green, a splice of its own, sleeved (taken over, not measured)',
      'Ground: black and the bare shield, the back of the volume pot (taken over, not measured)',
      'The finished pickup was measured: it reads what its coils together should.',
    ]);
  });

  it('lists parts with what became of them and what is in doubt', () => {
    expect(wordsOf(content, 'parts')).toEqual([
      'Sleeve, 3 mm | fitted, from the workshop’s stock | ',
      'Volume pot, 500 kΩ | fitted, the one you brought | The date stamp looks wrong for the year (as told to us, not measured). Marla bought it as old stock.',
      'Old volume pot | taken out, goes back to you | ',
      'Neck pickup screws | put back in, from the instrument itself | ',
    ]);
  });

  it('says when it goes home, with what, and for how much', () => {
    expect(wordsOf(content, 'collection')).toEqual([
      'It is ready to be collected. It was promised for 20 March 2026. It came in with: soft case and strap. Please see that this goes home with it.',
      'Find and mend the crackle |  | €45.00',
      'Rewire the neck pickup for €45 |  | €45.00',
      'Loose jack nut |  | €45.00',
      'New strings for Marla | declined; €45.00 not counted | –',
      'Set-up | not done; €45.00 not counted | –',
      'String clean | not done; €45.00 not counted | –',
      'Worn second fret | still open; €45.00 not counted | –',
      'Agreed for what was done |  | €135.00',
    ]);
  });

  it('shows the first diagnosis, the joint, the measured total and the result, in film order', () => {
    expect(wordsOf(content, 'stills')).toEqual([
      'Tap test: the neck pickup crackles',
      'The joint: white and green',
      'Neck pickup: 8.08 kΩ',
      'Sound check',
    ]);
  });
});

describe('readings before and after', () => {
  const record = (...readings: Reading[]): JobRecord => ({ ...wholeRecord(), readings });
  const readingsOf = (...readings: Reading[]) => wordsOf(made(record(...readings), {}, []), 'readings');

  it('go by the film, not by the order in which they were noted', () => {
    const [told] = readingsOf(
      whole({ ...at(2, 9_000), valueText: '8.1', baseValue: 8100 }),
      whole({ ...at(1, 1_000), valueText: '7.2', baseValue: 7200 }),
    );
    expect(told).toBe('The neck pickup read 7.2 kΩ and reads 8.1 kΩ now; higher than before.');
  });

  it('claim no order where one of them is not on the film', () => {
    expect(
      readingsOf(whole({ ...at(1, 1_000), ...open }), whole({ valueText: '8.1', baseValue: 8100 })),
    ).toEqual(['Neck pickup | – | open or 8.1 kΩ | order not noted']);
  });

  it('hold only the same thing in the same place against each other', () => {
    expect(
      readingsOf(
        whole({ ...at(1, 1_000), subject: 'neck pickup' }),
        whole({ ...at(1, 2_000), subject: 'bridge pickup', ...open }),
        reading({ ...at(1, 3_000), between: ['red', 'white'] }),
      ).filter((line) => line.includes('now')),
    ).toEqual([]);
  });

  it('say nothing of a broken connection where open is what two separate coils read', () => {
    const words = readingsOf(
      reading({ ...at(1, 1_000), between: ['red', 'green'] }),
      reading({ ...at(1, 2_000), between: ['green', 'red'], ...open }),
    );
    expect(words[0]).toBe('The neck pickup (red – green) read 4.08 kΩ and reads open now.');
  });

  it('say how each was known where one was not measured', () => {
    const height = { kind: 'string-height', subject: '', unit: 'mm', details: { string: 'low E' } } as const;
    const words = readingsOf(
      reading({ ...at(1, 1), ...height, valueText: '2.4', baseValue: 2.4, basis: 'stated' }),
      reading({ ...at(1, 2), ...height, valueText: '1.8', baseValue: 1.8 }),
    );
    expect(words[0]).toBe(
      'String height (low E string): 2.4 mm before, 1.8 mm now; the strings lie lower (before: as told to us, not measured; now: measured).',
    );
  });
});

describe('prices', () => {
  it('make a total for each currency, by the whole cents (ISO 4217: two digits for EUR, none for JPY)', () => {
    const record = {
      ...wholeRecord(),
      work: [
        work({ what: 'a', outcome: 'done', priceMinor: 10 }),
        work({ what: 'b', outcome: 'done', priceMinor: 20 }),
        work({ what: 'c', outcome: 'done', priceMinor: 1500, currency: 'JPY' }),
        work({ what: 'd', outcome: 'done', charge: 'free', priceMinor: null, currency: null }),
        work({ what: 'e', outcome: 'done', charge: null, priceMinor: null, currency: null }),
        work({ what: 'f', outcome: 'done', charge: 'reduced', priceMinor: 500, why: 'first visit' }),
      ],
    };
    const words = wordsOf(made(record), 'collection');
    expect(words).toContain('D |  | free');
    expect(words).toContain('F | reduced: first visit | €5.00');
    expect(words.slice(-3)).toEqual([
      'Agreed for what was done |  | €5.30',
      'Agreed for what was done |  | JP¥1,500',
      'No price is noted for e; the total does not hold it.',
    ]);
  });
});

describe('what was typed for it', () => {
  it('stands in the place of what is usual, line by line', () => {
    const content = made(wholeRecord(), {
      aftercare: 'Oil the fretboard.\n\nPlay it.',
      greeting: 'Dear Marla',
    });
    expect(wordsOf(content, 'aftercare')).toEqual(['Oil the fretboard.', 'Play it.']);
    expect(content.sections[0]).toMatchObject({ id: 'greeting' });
    expect(wordsOf(made(), 'aftercare')).toEqual(usualAftercare(factsOf(wholeRecord())));
    expect(made(wholeRecord(), { aftercare: '' }).sections.some(({ id }) => id === 'aftercare')).toBe(false);
  });

  it('chooses stills, and none of what was cut out of the film or is not public', () => {
    const record = wholeRecord();
    const hidden = whole({ ...at(1, 41_000), subject: 'in the cut' });
    const facts = factsOf({ ...record, readings: [...record.readings, hidden] });
    const moments = stillMoments(facts);
    const keys = moments.map(({ key }) => key);
    expect(moments.map(({ caption }) => caption)).not.toContain('What Marla asked for');
    expect(keys).not.toContain(`reading:${hidden.id}`);
    const kept = keptSummarySchema.parse({ stills: keys.slice(0, 2) });
    expect(chosenStills(facts, kept).map(({ key }) => key)).toEqual(keys.slice(0, 2));
    expect(made(wholeRecord(), { stills: [] }).sections.some(({ id }) => id === 'stills')).toBe(false);
  });
});

describe('private words', () => {
  const record = {
    ...wholeRecord(),
    parts: [part({ what: 'pot from Bertolt Grimsby, phone 555-0199', deed: 'fitted' })],
    work: [work({ what: 'Ring Marla Quillfeather on 555-0142', outcome: 'done' })],
  };

  it('of other people are held back; the client’s own stay', () => {
    const content = made(record);
    const words = allWords(content);
    expect(words).toContain('Ring Marla Quillfeather on 555-0142');
    expect(words).not.toContain('555-0199');
    expect(words).toContain('(held back)');
    expect(content.heldBack.join(' ')).toContain('555-0199');
  });

  it('in typed words stay, and are reported', () => {
    const content = made(record, { closing: 'Ring my brother on 555-0177.' });
    expect(wordsOf(content, 'closing')).toEqual(['Ring my brother on 555-0177.']);
    expect(content.findings).toEqual([{ where: 'closing', words: '555-0177' }]);
  });
});

describe('an empty record', () => {
  it('claims nothing', () => {
    const { client: _, ...rest } = wholeRecord();
    const empty = { ...rest, client: null, markers: [], readings: [], work: [], parts: [] };
    const content = made(
      { ...empty, job: { ...empty.job, state: 'on the bench', promisedOn: null, cameWith: [] } },
      {},
      [],
    );
    expect(content.sections.map(({ id }) => id)).toEqual([
      'facts',
      'asked',
      'done',
      'aftercare',
      'collection',
    ]);
    expect(wordsOf(content, 'done')).toEqual(['No work is written down as done.']);
    expect(wordsOf(content, 'collection')).toEqual([
      'It is not ready yet. No day was promised. Nothing was noted that came in with it.',
      'No price was written down.',
    ]);
  });
});
