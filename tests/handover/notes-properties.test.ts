import fc from 'fast-check';
import markdownIt from 'markdown-it';
import { type DefaultTreeAdapterTypes, type ParserError, parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { oneLine } from '@/lib/film';
import {
  composeNotes,
  noteFormats,
  noteSections,
  notesMetaOf,
  privateInNotes,
  writeNotes,
} from '@/lib/handover/notes';
import { publicWords } from '@/lib/handover/public-words';
import type { JobRecord } from '@/shared/jobs';
import type { KeptNote } from '@/shared/notes';
import { awkwardTitles, brokenTitles } from './awkward';
import { marker } from './films';
import { at, claim, factsOf, fullRecord, part, reading, traceView, work } from './notes-job';

/** An independent parser of CommonMark and tables; it lets HTML through, so that none can hide. */
const independent = markdownIt({ html: true });
type Token = ReturnType<typeof independent.parse>[number];

const address = 'https://video.example/v';
const allFormats = ['markdown', 'text', 'html'] as const;

const trace = traceView();
const draftsOf = (record: JobRecord, videoAddress: string | null = address, traces = [trace]) =>
  noteSections(factsOf(record, traces), { videoAddress });
const documents = (record: JobRecord, traces = [trace]) => {
  const facts = factsOf(record, traces);
  const notes = composeNotes(noteSections(facts, { videoAddress: address }), []);
  return allFormats.map((format) => writeNotes(notes, format, notesMetaOf(facts)));
};
const written = (text: string, format: (typeof allFormats)[number]) => {
  const own: KeptNote = { id: 'done', on: true, text, madeFrom: null };
  return writeNotes(composeNotes([], [own]), format, { title: 'Notes' });
};
const section = (record: JobRecord, id: string) =>
  draftsOf(record, address, []).find((one) => one.id === id)?.markdown ?? '';

/** The words of an inline token, without its markup. */
const shown = ({ children }: Token): string =>
  (children ?? []).map(({ content, type }) => (/break$/.test(type) ? '\n' : content)).join('');
const inlineOf = (markdown: string, opening: string): string[] => {
  const tokens = independent.parse(markdown, {});
  return tokens.flatMap((token, at) => {
    const before = tokens.slice(Math.max(0, at - 2), at).map(({ type }) => type);
    return token.type === 'inline' && before.includes(opening) ? [shown(token)] : [];
  });
};

const withFields = (words: string): ((record: JobRecord) => void)[] => [
  (record) => record.markers.push(marker(words, 2, 20_000)),
  (record) => record.markers.push({ ...marker('Step', 2, 20_000), note: words }),
  (record) => record.markers.push({ ...marker('Found', 2, 20_000), kind: 'diagnosis', note: words }),
  (record) => record.readings.push(reading({ subject: words })),
  (record) => record.readings.push(reading({ note: words })),
  (record) => record.readings.push(reading({ kind: 'relief', unit: 'mm', details: { string: words } })),
  (record) => record.work.push(work({ what: words, outcome: 'done' })),
  (record) => record.work.push(work({ what: 'Fret dress', outcome: 'declined', why: words })),
  (record) => record.work.push(work({ what: words, outcome: 'open', origin: 'found' })),
  (record) => record.parts.push(part({ what: words, deed: 'fitted' })),
  (record) => record.parts.push(part({ what: 'nut', deed: 'removed', doubt: words, evidence: words })),
  (record) => record.claims.push(claim({ kind: 'other', subject: words, value: 'so' })),
  (record) => record.claims.push(claim({ kind: 'year', value: words, evidence: words })),
  (record) => record.meters.splice(0, 1, ...record.meters.map((meter) => ({ ...meter, name: words }))),
  (record) => record.job.cameWith.push(words),
  (record) => Object.assign(record.job, { title: words }),
  (record) => Object.assign(record.instrument, { features: words, maker: words, model: words }),
];

describe('nothing private comes through', () => {
  const secrets = [
    'Marla Quillfeather',
    'Marla',
    'Quillfeather',
    '555-0142',
    '555 0142',
    'marla@quillfeather.example',
    '40417283',
    'SN40417283',
    '12 Larkspur Road',
    'Penhallow',
  ];
  const telling = /marla|quillfeather|555.?0142|40417283|larkspur|penhallow/i;

  it('wherever it stands in the record', () => {
    const before = fc.constantFrom('', 'for ', 'ring ', 'the ', '🎸', '| ', '**', 'שלום ');
    const after = fc.constantFrom('', '’s', ' wants it', '🎸', ' |', '**', ' שלום', '_2');
    const words = fc.tuple(before, fc.constantFrom(...secrets), after).map((parts) => parts.join(''));
    const places = fc.array(fc.nat(withFields('').length - 1), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(words, places, (said, fields) => {
        const record = structuredClone(fullRecord());
        for (const field of fields) withFields(said)[field]?.(record);
        for (const made of documents(record)) expect(made).not.toMatch(telling);
      }),
      { numRuns: 40 },
    );
  });

  it('in a wiring outcome, its table and its drawing', () => {
    const view = structuredClone(trace);
    const [first] = view.outcomes;
    if (!first) throw new Error('no outcome');
    first.outcome.title = 'Series, as Marla wants it';
    for (const line of first.outcome.lines) line.goesTo = 'the pot of Marla Quillfeather, 555-0142';
    const made = documents(fullRecord(), [view]);
    for (const document of made) expect(document).not.toMatch(telling);
    expect(made.at(-1)).toContain('<svg');
  });

  it('and no price', () => {
    for (const price of ['€45', '45 €', 'EUR 45.50', '45,50 euros', '£ 45', '45 USD', '¥4500'])
      expect(
        section({ ...fullRecord(), work: [work({ what: `Rewire, ${price}`, outcome: 'done' })] }, 'done'),
      ).toContain('- Rewire, (held back)');
    for (const text of ['Strings at 45 pounds', 'Cap of 45 µF', '45 eurorack screws'])
      expect(section({ ...fullRecord(), work: [work({ what: text, outcome: 'done' })] }, 'done')).toContain(
        text,
      );
  });

  it('nor a marker that is not public', () => {
    const record = fullRecord();
    record.markers.push({ ...marker('Between us', 2, 1000, false), note: 'Between us' });
    for (const made of documents(record)) expect(made).not.toContain('Between us');
  });
});

describe('every kept reading', () => {
  const bases = fc.constantFrom('measured', 'implied', 'assumed', 'stated' as const);
  const digits = fc.stringMatching(/^(\d{1,3}\.\d{0,3}|\.\d{1,3}|\d{1,4})$/);
  const readings = fc.array(
    fc.record({
      valueText: digits,
      basis: bases,
      ms: fc.nat(71_000),
      subject: fc.constantFrom('neck pickup', ''),
    }),
    { minLength: 1, maxLength: 12 },
  );

  it('stands there with its digits as they were read, its basis and its time', () => {
    fc.assert(
      fc.property(readings, (kept) => {
        const record = {
          ...fullRecord(),
          readings: kept.map((one) => reading({ ...one, ...at(2, one.ms) })),
        };
        const cells = inlineOf(section(record, 'measured'), 'td_open').filter(Boolean);
        const rows = kept.map((_, row) => cells.slice(row * 4, row * 4 + 4));
        const inTime = kept.toSorted((a, b) => a.ms - b.ms);
        expect(rows.map(([, value, basis]) => [value, basis])).toEqual(
          inTime.map(({ valueText, basis }) => [`${valueText} kΩ`, basis]),
        );
        // 51.5 s of the first take are kept.
        const seconds = inTime.map(({ ms }) => Math.floor((51_500 + ms) / 1000));
        const links = [...section(record, 'measured').matchAll(/#t=(\d+)\)/g)].map((link) => Number(link[1]));
        expect(links).toEqual(seconds);
      }),
      { numRuns: 40 },
    );
  });

  it('whose moment is cut away has no time', () => {
    const record = { ...fullRecord(), readings: [reading(at(1, 45_000)), reading(at(1, 61_400))] };
    expect(section(record, 'measured').match(/\[[\d:]+\]/g)).toEqual(['[0:51]']);
  });
});

describe('times', () => {
  it('link by W3C Media Fragments URI 1.0, section 4.2.1, or where the host of the video wants them', () => {
    const times = (videoAddress: string | null) =>
      draftsOf(fullRecord(), videoAddress).at(-1)?.markdown.split('\n')[1];
    expect(times('https://v.example/a?b=c')).toBe(
      '- [0:16](https://v.example/a?b=c#t=16) Tap test: the neck pickup crackles',
    );
    expect(times('https://v.example/a#old')).toContain('(https://v.example/a#t=16)');
    expect(times('https://v.example/a?at={seconds}s')).toContain('(https://v.example/a?at=16s)');
    expect(times(null)).toBe('- 0:16 Tap test: the neck pickup crackles');
  });
});

const rough = fc
  .array(
    fc.oneof(
      fc.constantFrom(...'|*_<>&`#-+.~[]()!\\="\':;/'),
      fc.constantFrom('a', 'neck', ' ', '1', '\n', '&amp;', '<b>', '```', '---', '| - |', '![x](y)', '<!--'),
      fc.constantFrom('🎸', 'שלום', 'عود', '琴', 'é', '\t', '\u0000', '\ud83c', '\u2028', '\uffff'),
    ),
    { minLength: 1, maxLength: 14 },
  )
  .map((parts) => parts.join(''));
const words = fc.oneof(rough, fc.constantFrom(...awkwardTitles, ...brokenTitles.map(([title]) => title)));

describe('Markdown by an independent CommonMark parser (markdown-it)', () => {
  const said = (text: string) => publicWords(oneLine(text), fullRecord());

  it('gives the same table cells', () => {
    fc.assert(
      fc.property(fc.array(words, { minLength: 1, maxLength: 4 }), (notes) => {
        const record = { ...fullRecord(), readings: notes.map((note) => reading({ note, subject: 'x' })) };
        const cells = inlineOf(section(record, 'measured'), 'td_open');
        const isNoted = notes.some((note) => note.trim() !== '');
        const columns = isNoted ? 4 : 3;
        const noted = isNoted ? cells.filter((_, index) => index % columns === 3) : notes.map(() => '');
        expect(noted).toEqual(notes.map((note) => (note.trim() === '' ? '' : said(note))));
      }),
      { numRuns: 300 },
    );
  });

  it('gives the same titles, and no HTML, picture or code that was not meant', () => {
    fc.assert(
      fc.property(words, (title) => {
        const record = fullRecord();
        const only = { ...record, markers: [marker(title, 2, 20_000)], work: [] };
        const markdown = section(only, 'done');
        const items = inlineOf(markdown, 'list_item_open');
        expect(items).toEqual([`1:11 ${said(title)}`.trim()]);
        const kinds = independent
          .parse(markdown, {})
          .flatMap(({ type, children }) => [type, ...(children ?? []).map((child) => child.type)]);
        for (const kind of [
          'html_block',
          'html_inline',
          'image',
          'fence',
          'code_block',
          'code_inline',
          'heading_open',
        ])
          expect(kinds).not.toContain(kind);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps 500 markers, 300 characters of every script, and their order', () => {
    const markers = Array.from({ length: 500 }, (_, index) =>
      marker(`${index} ${awkwardTitles[index % awkwardTitles.length]}`, 2, index * 140),
    );
    const record = { ...fullRecord(), markers, readings: [], work: [] };
    const items = inlineOf(section(record, 'done'), 'list_item_open');
    expect(items.map((item) => item.replace(/^[\d:]+ /, ''))).toEqual(
      markers.map(({ title }) => said(title)),
    );
    const lines = new Set(
      documents(record)[1]
        ?.split('\n')
        .map((line) => line.replace(/^[\d:]+ /, '')),
    );
    expect(markers.filter(({ title }) => !lines.has(said(title)))).toEqual([]);
  });
});

const elementsOf = (node: DefaultTreeAdapterTypes.Node): DefaultTreeAdapterTypes.Element[] => [
  ...('tagName' in node ? [node] : []),
  ...('childNodes' in node ? node.childNodes.flatMap(elementsOf) : []),
];
const readPage = (html: string) => {
  const errors: ParserError[] = [];
  const page = parse(html, { onParseError: (error) => errors.push(error) });
  return { elements: elementsOf(page), errors: errors.map(({ code }) => code) };
};

describe('the web page by an independent HTML parser (parse5)', () => {
  it('is well formed, asks for nothing and runs nothing, whatever the record says', () => {
    fc.assert(
      fc.property(words, fc.nat(withFields('').length - 1), (said, field) => {
        const record = structuredClone(fullRecord());
        withFields(said)[field]?.(record);
        const { elements, errors } = readPage(documents(record)[2] ?? '');
        expect(errors).toEqual([]);
        const tags = new Set(elements.map(({ tagName }) => tagName));
        for (const tag of ['script', 'img', 'link', 'iframe', 'object', 'form', 'b'])
          expect(tags).not.toContain(tag);
        const asked = elements.flatMap(({ tagName, attrs }) => (tagName === 'a' ? attrs : []));
        expect(asked.every(({ name, value }) => name === 'href' && value.startsWith(`${address}#t=`))).toBe(
          true,
        );
        expect(elements.some(({ attrs }) => attrs.some(({ name }) => /^on|^src|^style$/.test(name)))).toBe(
          false,
        );
      }),
      { numRuns: 40 },
    );
  });

  it('has the drawing as a picture that is told in words, and in letters once it was changed', () => {
    const [, , page = ''] = documents(fullRecord());
    const { elements } = readPage(page);
    const svg = elements.find(({ tagName }) => tagName === 'svg');
    expect(svg?.attrs.find(({ name }) => name === 'aria-label')?.value).toBe(
      'Series. hot: red, the input lug of the volume pot (measured). joined: white and green, a splice of its own, sleeved (assumed). ground: black and the bare shield, the back of the volume pot (assumed)',
    );
    expect(page).not.toContain('<pre>');
    const [wiring] = draftsOf(fullRecord()).filter(({ id }) => id === 'wiring');
    const text = wiring?.markdown.replace('slug coil, ', 'my coil, ') ?? '';
    const notes = composeNotes(wiring ? [wiring] : [], [
      { id: 'wiring', on: true, text, madeFrom: wiring?.markdown ?? null },
    ]);
    const changed = writeNotes(notes, 'html', { title: 'Notes' });
    expect(changed).toContain('my coil, 4.08 kΩ');
    expect(changed).not.toContain('<svg');
  });
});

describe('what was written by hand', () => {
  const hostile = [
    '<script>alert(1)</script>',
    'a <b onclick="x()">bold</b> word',
    '![pixel](https://spy.example/p.png)',
    '[press](javascript:alert(1))',
    '# [press](javascript:alert(1))',
    '[press][r]\n\n[r]: javascript:alert(1)',
    '<https://fine.example>',
    '<img src=x onerror=alert(1)>',
    '<div>\n\n*text*\n\n</div>',
  ];

  it.each(hostile)('%j comes through as words, in no format as HTML', (text) => {
    const { elements, errors } = readPage(written(text, 'html'));
    expect(errors).toEqual([]);
    const body = elements.filter(
      ({ tagName }) => !['html', 'head', 'meta', 'title', 'style', 'body'].includes(tagName),
    );
    expect(body.every(({ tagName }) => ['h1', 'h2', 'h3', 'section', 'p', 'a', 'em'].includes(tagName))).toBe(
      true,
    );
    const links = body.flatMap(({ attrs }) => attrs.map(({ value }) => value));
    expect(links.filter((link) => !/^https:/.test(link))).toEqual([]);
    const tokens = independent
      .parse(written(text, 'markdown'), {})
      .flatMap((token) => [token, ...(token.children ?? [])]);
    expect(tokens.filter(({ type }) => /html|image/.test(type))).toEqual([]);
    expect(written(text, 'markdown')).not.toMatch(/\]\(javascript/);
  });

  it('is well formed whatever it is', () => {
    fc.assert(
      fc.property(words, (text) => {
        expect(readPage(written(text, 'html')).errors).toEqual([]);
        expect(readPage(written(text, 'html')).elements.filter(({ tagName }) => tagName === 'img')).toEqual(
          [],
        );
      }),
      { numRuns: 200 },
    );
  });

  it('keeps its tables, lists, emphasis and links', () => {
    const text =
      '# Big\n\n1. one\n2. *two*\n\n> said\n\n| a | b |\n| - | - |\n| 1 | `2` |\n\n[more](https://more.example)';
    expect(written(text, 'text')).toBe(
      'Notes\n=====\n\nWhat was done\n-------------\n\nBig\n\n1. one\n2. two\n\n> said\n\na  b\n-  -\n1  2\n\nmore (https://more.example)\n',
    );
    const tags = readPage(written(text, 'html')).elements.map(({ tagName }) => tagName);
    for (const tag of ['h3', 'ol', 'em', 'blockquote', 'table', 'code', 'a']) expect(tags).toContain(tag);
  });
});

describe('little to tell', () => {
  it('makes few sections and no empty one', () => {
    const full = fullRecord();
    const bare: JobRecord = {
      ...full,
      ...{ client: null, markers: [], readings: [], work: [], parts: [], claims: [], meters: [] },
      instrument: { ...full.instrument, features: null, serial: null },
      job: { ...full.job, title: 'Ukulele', cameWith: [] },
    };
    expect(noteSections(factsOf(bare, []), { videoAddress: null })).toEqual([
      { id: 'came in', heading: 'What came in', markdown: 'An electric guitar came in.\n', drawings: [] },
    ]);
  });

  it('names the client as the repairer chose, be it like a name', () => {
    const record = fullRecord();
    const named = { ...record, client: record.client && { ...record.client, alias: 'Big Dave' } };
    expect(section(named, 'came in')).toMatch(/^Big Dave brought me an electric guitar[.]/);
    expect(section(named, 'found')).toContain('Big Dave heard it first');
    for (const made of documents(named)) expect(made).not.toContain('(held back) brought');
    const types = { ukulele: 'a ukulele', 'acoustic guitar': 'an acoustic guitar', other: 'an instrument' };
    for (const [type, words] of Object.entries(types))
      expect(section({ ...named, instrument: { ...record.instrument, type } }, 'came in')).toContain(
        `me ${words}.`,
      );
  });

  it('every draft of the whole record is free of what the check finds', () => {
    const record = fullRecord();
    const kept = draftsOf(record).map(
      ({ id, markdown }): KeptNote => ({ id, on: true, text: markdown, madeFrom: markdown }),
    );
    expect(privateInNotes(composeNotes(draftsOf(record), kept), record)).toEqual([]);
    expect(Object.keys(noteFormats)).toEqual([...allFormats]);
  });
});
