import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rebuildArchive, searchArchive } from '@/lib/archive/store';
import { archiveQuerySchema } from '@/shared/archive';
import { openTestDatabase } from '../open-test-database';
import { loadSet } from './load-set';
import { scoredJobs } from './scored-set/jobs';

/** Never done in the scored jobs: other trades, other instruments, plausible words of this one. */
const unanswerable = [
  ...['saxophone octave key bent', 'replaced the oboe reed', 'trombone slide dented', 'bagpipe bag leaking'],
  ...['piano hammer felts reshaped', 'church organ pipe voiced', 'harpsichord plectra trimmed'],
  ...['drum kit bearing edges recut', 'cymbal crack stopped', 'theremin antenna', 'turntable belt changed'],
  ...['bicycle chain oiled', 'washing machine drain pump', 'dishwasher pump seal', 'car alternator bearings'],
  ...[
    'boiler pressure valve',
    'kitchen tap washer',
    'roof tiles',
    'sewing machine timing',
    'lawn mower carburettor',
  ],
  ...['clavichord tangents', 'kalimba tines', 'vibraphone motor', 'glockenspiel bars retuned'],
  ...['euphonium third valve', 'synthesiser filter chip', 'tape machine heads demagnetised', 'timpani pedal'],
  ...['sitar bridge jawari', 'bridge pickup over 90k'],
];

/** Said in other words than the jobs use, or in the order of a hurry. */
const answerable = [
  ...[
    'hum goes away when I touch the strings',
    'noisy volume control',
    'jack drops out',
    'four wire pickup traced',
  ],
  ...[
    'tubes glow red',
    'fret dress',
    'new frets',
    'nut slots too low',
    'neck reset',
    'bridge coming off acoustic',
  ],
  ...[
    'crack in the top',
    'loose brace',
    'violin post fell over',
    'pegs slipping',
    'banjo skin',
    'cello seam',
  ],
  ...['amp hums', 'filter caps replaced', 'amp bias', 'speaker blown', 'reverb dead', 'pedal footswitch'],
  ...['battery drains', 'pickup rewound', 'squealing pickup', 'headstock broken', 'truss rod stuck'],
  ...['action too high', 'intonation out', 'sharp fret ends'],
];

let home: ReturnType<typeof openTestDatabase>;
beforeAll(() => {
  home = openTestDatabase();
  loadSet(home.db, scoredJobs);
  rebuildArchive(home.db);
}, 60_000);
afterAll(() => home.close());

const answered = (questions: readonly string[]) =>
  questions.filter((q) => !searchArchive(home.db, archiveQuerySchema.parse({ q, today: '2026-11-25' })).none);

describe('what was never done in the shop', () => {
  it('is seldom taken for what was', () => {
    const wrongly = answered(unanswerable);
    expect(wrongly.length, wrongly.join('; ')).toBeLessThanOrEqual(6);
  });

  it('is not said of what was done', () => {
    const known = answered(answerable);
    const wrongly = answerable.filter((q) => !known.includes(q));
    expect(wrongly.length, wrongly.join('; ')).toBeLessThanOrEqual(1);
  });
});
