import BetterSqlite from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newId } from '@/db/ids';
import { stemOf } from '@/lib/archive/lexicon/stem';
import { matchAny } from '@/lib/archive/match';
import {
  jobOfThing,
  kindOfThing,
  msOfPassage,
  passageNumber,
  takeOfPassage,
  thingNumber,
} from '@/lib/archive/numbers';
import { rankMoments, rarity, recency } from '@/lib/archive/rank';
import type { Hit } from '@/lib/archive/rank/hits';
import { answering, clearestMoments, countsOf, withOneOf } from '@/lib/archive/rank/jobs';
import { mostSlips, slipsBetween } from '@/lib/archive/rank/slips';
import { closeness, valueBounds } from '@/lib/archive/rank/values';
import { snippet } from '@/lib/archive/snippet';
import { findableKinds } from '@/shared/archive';
import { clientIdSchema } from '@/shared/ids';

const none = { kinds: [], markerKinds: [] };
let id = 0;
function hit(kind: Hit['kind'], words: number[], ms: number | null, more: Partial<Hit> = {}): Hit {
  id += 1;
  const place = ms === null ? null : { takeId: 'one', ms };
  return {
    id,
    kind,
    markerKind: null,
    basis: null,
    recordId: null,
    place,
    met: new Map(words.map((word) => [word, 1])),
    ...more,
  };
}
const best = (hits: Hit[], weights: number[], wished: Parameters<typeof rankMoments>[2] = none) =>
  rankMoments(hits, weights, wished)[0];

describe('moments of a job', () => {
  it('a marker comes before narration that meets the same', () => {
    const marker = hit('marker', [0], 0);
    expect(best([hit('narration', [0], 500_000), marker], [1])?.hit).toBe(marker);
  });

  it('words near each other in time count together, far apart less', () => {
    const share = (ms: number) => best([hit('marker', [0], 0), hit('marker', [1], ms)], [1, 1])?.share ?? 0;
    expect(share(20_000)).toBeGreaterThan(share(40_000));
    expect(share(40_000)).toBe(share(4_000_000));
  });

  it('the same time in another take is not near', () => {
    const elsewhere = hit('marker', [1], 0, { place: { takeId: 'two', ms: 0 } });
    const here = hit('marker', [1], 0);
    const share = (other: Hit) => best([hit('marker', [0], 0), other], [1, 1])?.share ?? 0;
    expect(share(here)).toBeGreaterThan(share(elsewhere));
  });

  it('what tells more weighs more', () => {
    const rare = hit('marker', [0], 0);
    const common = hit('marker', [1], 500_000);
    expect(best([common, rare], [3, 1])?.hit).toBe(rare);
    expect(best([common, rare], [1, 3])?.hit).toBe(common);
  });

  it('kinds that are asked for come first', () => {
    const reading = hit('reading', [0], 0);
    const marker = hit('marker', [0], 500_000, { markerKind: 'diagnosis' });
    expect(best([reading, marker], [1], { kinds: ['reading'], markerKinds: [] })?.hit).toBe(reading);
    expect(best([reading, marker], [1], { kinds: [], markerKinds: ['diagnosis'] })?.hit).toBe(marker);
  });

  it('the ticket that names a thing makes the job a better answer', () => {
    const ticket = hit('ticket', [0], null);
    const score = (hits: Hit[]) => best(hits, [1])?.score ?? 0;
    expect(score([hit('marker', [0], 0), ticket])).toBeGreaterThan(score([hit('marker', [0], 0)]));
  });

  it('never meet more than there is, and all of it at most once', () => {
    const kinds = fc.constantFrom(...findableKinds);
    const anyHit = fc
      .tuple(kinds, fc.array(fc.nat(3), { minLength: 1 }), fc.option(fc.nat(200_000)))
      .map(([kind, words, ms]) => hit(kind, words, ms));
    const weights = fc.array(fc.double({ min: 0.1, max: 5, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(anyHit, { minLength: 1, maxLength: 20 }), weights, (hits, weighed) => {
        const ranked = rankMoments(hits, weighed, none);
        expect(new Set(ranked.map((each) => each.hit))).toEqual(new Set(hits));
        for (const { share } of ranked) {
          expect(share).toBeGreaterThan(0);
          expect(share).toBeLessThanOrEqual(1 + 1e-9);
        }
        for (const [at, { score }] of ranked.entries())
          expect(score).toBeLessThanOrEqual(ranked[at - 1]?.score ?? Number.POSITIVE_INFINITY);
      }),
    );
  });

  it('are shown once: narration beside a marker that is shown says the same', () => {
    const hits = [hit('marker', [0], 0), hit('narration', [0], 20_000), hit('narration', [0], 500_000)];
    const shown = clearestMoments(rankMoments(hits, [1], none));
    expect(shown.map((each) => each.hit)).toEqual([hits[0], hits[2]]);
  });
});

describe('what a word tells', () => {
  it('is more, the fewer jobs hold it, and never nothing', () => {
    for (let jobs = 3; jobs < 1000; jobs++)
      expect(rarity(jobs, 1000)).toBeGreaterThan(rarity(jobs + 1, 1000));
    expect(rarity(1000, 1000)).toBeGreaterThan(1);
  });

  it('newer is a light touch', () => {
    expect(recency('2026-11-01', '2026-11-25')).toBeGreaterThan(recency('2020-11-01', '2026-11-25'));
    expect(recency('2026-11-25', '2026-11-25')).toBeLessThan(0.05);
    expect(recency('2030-01-01', '2026-11-25')).toBe(recency('2026-11-25', '2026-11-25'));
  });
});

describe('a value that is asked for', () => {
  const asked = {
    id: '',
    kindIds: null,
    low: null,
    high: null,
    near: 8100,
    subject: 'neck pickup',
    words: [],
  };
  const read = (value: number, of = 'neck pickup DC resistance') => ({ value, of, isPart: false });

  it('is answered the better, the nearer', () => {
    const fits = [8100, 8120, 8500, 9000, 12_000].map((value) => closeness(asked, read(value)));
    expect(fits).toEqual([...fits].sort((a, b) => b - a));
    expect(fits[0]).toBe(1);
    expect(fits.at(-1)).toBe(0);
  });

  it('of another thing counts little, and "pickup" does not tell one from another', () => {
    expect(closeness(asked, read(8100, 'bridge pickup DC resistance'))).toBe(0.25);
  });

  it('in a range is met or not', () => {
    const { low, high } = valueBounds({ ...asked, near: null, low: null, high: 7000 });
    expect([low, high]).toEqual([-Number.MAX_VALUE, 7000]);
    expect(valueBounds(asked)).toMatchObject({ low: 8100 * 0.8, high: 8100 * 1.2 });
  });
});

describe('a number in the index', () => {
  it('says job and kind, or take and passage', () => {
    const kinds = fc.constantFrom(...findableKinds);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 28 }), kinds, fc.nat(2 ** 20 - 1), (job, kind, nth) => {
        const number = thingNumber(job, kind, nth);
        expect(Number.isSafeInteger(number)).toBe(true);
        expect([jobOfThing(number), kindOfThing(number)]).toEqual([job, kind]);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 30 }), fc.nat(1_000_000_000), (take, ms) => {
        const passage = passageNumber(take, ms);
        expect(takeOfPassage(passage)).toBe(take);
        expect(ms - msOfPassage(passage)).toBeGreaterThanOrEqual(0);
        expect(ms - msOfPassage(passage)).toBeLessThan(20_000);
      }),
    );
  });
});

describe('slips of typing', () => {
  // Worked by hand from the definition of the optimal string alignment distance.
  it.each([
    ['pickup', 'pikcup', 1],
    ['solder', 'soldre', 1],
    ['bridge', 'brige', 1],
    ['scratchy', 'scrathcyy', 2],
    ['hum', 'gum', 1],
    ['nut', 'nut', 0],
  ])('%s and %s are %i apart', (a, b, slips) => {
    expect(slipsBetween(a, b, 3)).toBe(slips);
    expect(slipsBetween(b, a, 3)).toBe(slips);
  });

  it('are not looked for in short words and numbers', () => {
    expect([mostSlips('hum'), mostSlips('8p1'), mostSlips('wire'), mostSlips('potentiometer')]).toEqual([
      0, 0, 1, 2,
    ]);
  });
});

describe('what is asked of the index', () => {
  it('is plain words for FTS5, whatever is typed', () => {
    const db = new BetterSqlite(':memory:');
    db.exec("create virtual table t using fts5(words, content='', contentless_delete=1, detail=none)");
    const ask = db.prepare('select rowid from t where t match ?');
    const hostile = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '"',
        'a AND',
        'NEAR(a b)',
        'a*',
        '^a',
        'words:a',
        '-',
        '(',
        "'; drop table t",
        'a NOT b',
      ),
    );
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 5 }), (words) => {
        const match = matchAny(words, ['qqtag']);
        if (match !== null) expect(() => ask.all(match)).not.toThrow();
      }),
      { numRuns: 500 },
    );
    db.close();
  });

  it('meets the same word forms as the stemmer of FTS5', () => {
    const db = new BetterSqlite(':memory:');
    db.exec(`create virtual table t using fts5(w, tokenize='porter unicode61 remove_diacritics 2');
      create virtual table terms using fts5vocab(t, 'row')`);
    const words = `traced tracing traces trace crackling crackly crackles soldered soldering pickups wiring rewired
      shielding humming scratchy potentiometer intonation relief measured measuring assumed conductors possibly
      relational conditional vietnamization hopefulness sensibility adjustment replacement adoption controlling`;
    const stemmed = words.split(/\s+/).map((word) => {
      db.exec('delete from t');
      db.prepare('insert into t values (?)').run(word);
      return db.prepare('select term from terms').pluck().get();
    });
    expect(words.split(/\s+/).map(stemOf)).toEqual(stemmed);
    db.close();
  });
});

describe('words around what matched', () => {
  const stretches = (text: string) =>
    [...text.matchAll(/\w+/g)].map(({ 0: word, index }) => ({
      start: index,
      end: index + word.length,
      words: [word],
    }));
  const cut = (text: string, ...stems: string[]) => snippet(text, stretches(text), new Set(stems));

  it('are marked where they stand', () => {
    expect(cut('traced the red wire', 'trace', 'wire')).toEqual([
      { text: 'traced', matched: true },
      { text: ' the red ', matched: false },
      { text: 'wire', matched: true },
    ]);
  });

  it('are cut out of a long text', () => {
    const text = `${'word '.repeat(200)}hum ${'word '.repeat(200)}`.trim();
    const pieces = cut(text, 'hum');
    expect(pieces.filter(({ matched }) => matched)).toEqual([{ text: 'hum', matched: true }]);
    expect(pieces.map((piece) => piece.text).join('').length).toBeLessThan(260);
  });

  it('in pieces that together are the text', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('hum', 'wire', 'red', 'ä', '—'), { maxLength: 30 }), (words) => {
        const text = words.join(' ');
        expect(
          cut(text, 'hum')
            .map((piece) => piece.text)
            .join(''),
        ).toBe(text);
      }),
    );
  });
});

describe('filters', () => {
  it('are counted over the jobs that answer, the most first', () => {
    const clientId = newId(clientIdSchema);
    const job = { job: 1, share: 1, type: 'banjo', clientId, kinds: ['marker', 'work'], bases: ['assumed'] };
    const other = { ...job, type: 'mandolin', clientId: null, kinds: ['marker'], bases: [] };
    expect(countsOf([job, other, job])).toEqual({
      instruments: [
        { value: 'banjo', count: 2 },
        { value: 'mandolin', count: 1 },
      ],
      kinds: [
        { value: 'marker', count: 3 },
        { value: 'work', count: 2 },
      ],
      bases: [{ value: 'assumed', count: 2 }],
      clients: [{ id: clientId, count: 2 }],
    });
  });

  it('count a kind only where its hits answer by themselves', () => {
    const hits = [hit('marker', [0], 0), hit('marker', [0], 0), hit('work', [0], 0)];
    expect(
      answering(
        hits,
        ({ kind }) => [kind],
        (some) => some.length > 1,
      ),
    ).toEqual(['marker']);
  });

  it('show one of the readings that are asked for', () => {
    const [shown, low, lower] = [0.9, 0.2, 0.1].map((score) => ({
      hit: hit('reading', [], 0),
      share: score,
      score,
    }));
    if (!shown || !low || !lower) throw new Error('Three were made.');
    expect(withOneOf([shown], [shown, low, lower], new Set([low.hit, lower.hit]))).toEqual([shown, low]);
    expect(withOneOf([shown], [shown, low], new Set([shown.hit]))).toEqual([shown]);
    expect(withOneOf([shown], [shown, low], new Set())).toEqual([shown]);
  });
});
