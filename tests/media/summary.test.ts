import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { HandoverFacts } from '@/lib/handover/facts';
import { chosenStills, summaryOf } from '@/lib/handover/summary';
import { type SummaryMaterial, type WrittenSummary, writeSummary } from '@/lib/handover/summary/write';
import type { JobRecord } from '@/shared/jobs';
import { keptSummarySchema, type NewKeptSummary } from '@/shared/summary';
import { at, factsOf, fullRecord, part, reading, traceView, work } from '../handover/notes-job';

let folder = '';
let still: Uint8Array;
let logo: Uint8Array;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'summary-'));
  still = picture('still.jpg', 'testsrc2=s=640x360');
  logo = picture('logo.png', 'color=c=teal@0.5:s=300x200,format=rgba');
});
afterAll(() => rmSync(folder, { recursive: true }));

function picture(name: string, source: string): Uint8Array {
  const path = join(folder, name);
  execFileSync('ffmpeg', ['-y', '-v', 'error', '-f', 'lavfi', '-i', source, '-frames:v', '1', path]);
  return readFileSync(path);
}

const workshop = { name: 'Alder Bench', address: '4 Kiln Lane\nPenhallow', currency: 'EUR' };
const factsFor = (record: JobRecord, traces = [traceView()]): HandoverFacts => ({
  ...factsOf(record, traces),
  workshop,
});

async function written(
  facts: HandoverFacts,
  kept: NewKeptSummary = {},
  material: Partial<SummaryMaterial> = {},
): Promise<WrittenSummary & { path: string }> {
  const parsed = keptSummarySchema.parse(kept);
  const stills = new Map(chosenStills(facts, parsed).map(({ key }) => [key as string, still]));
  const summary = await writeSummary(summaryOf(facts, parsed), { paper: 'a4', stills, logo, ...material });
  const path = join(folder, 'summary.pdf');
  writeFileSync(path, summary.pdf);
  return { ...summary, path };
}

/** What poppler, an independent reader, finds in the file. */
function info(path: string): Record<string, string> {
  const lines = execFileSync('pdfinfo', [path], { encoding: 'utf8' }).trim().split('\n');
  return Object.fromEntries(lines.map((line) => [line.split(':')[0] ?? '', line.replace(/^[^:]*:\s*/, '')]));
}
const textOf = (path: string) =>
  execFileSync('pdftotext', ['-enc', 'UTF-8', path, '-'], { encoding: 'utf8' });
const oneLine = (text: string) => text.replace(/\s+/g, ' ');

const times = <Item>(count: number, make: (at: number) => Item): Item[] =>
  Array.from({ length: count }, (_, index) => make(index));
const emptyRecord = (): JobRecord => ({
  ...fullRecord(),
  client: null,
  markers: [],
  readings: [],
  work: [],
  parts: [],
});
const enormous = 'A very long word and many of them, '.repeat(120);
const unbroken = 'x'.repeat(4000);

const records: [string, () => HandoverFacts, NewKeptSummary?][] = [
  ['nothing', () => factsFor(emptyRecord(), [])],
  ['a full record', () => factsFor(fullRecord())],
  [
    '500 readings',
    () =>
      factsFor({
        ...fullRecord(),
        readings: times(500, (index) =>
          reading({ ...at(1, index), subject: `coil ${index}`, between: ['hot', 'ground'] }),
        ),
      }),
  ],
  [
    '40 work items',
    () =>
      factsFor({
        ...fullRecord(),
        work: times(40, (index) =>
          work({ what: `work number ${index}`, outcome: index % 3 ? 'done' : 'open' }),
        ),
      }),
  ],
  [
    'enormous words in every place',
    () => ({
      ...factsFor(
        {
          ...fullRecord(),
          job: {
            ...fullRecord().job,
            title: enormous.slice(0, 200),
            cameWith: times(30, () => 'w'.repeat(80)),
          },
          work: times(60, () =>
            work({ what: unbroken.slice(0, 300), outcome: 'not done', why: 'line\n'.repeat(400) }),
          ),
          parts: times(60, () =>
            part({
              what: unbroken.slice(0, 300),
              deed: 'fitted',
              doubt: enormous.slice(0, 1000),
              evidence: enormous.slice(0, 2000),
            }),
          ),
          instrument: { ...fullRecord().instrument, features: enormous.slice(0, 4000) },
        },
        times(6, () => traceView()),
      ),
      workshop: { name: unbroken.slice(0, 200), address: enormous.slice(0, 1000), currency: 'EUR' },
      cautions: times(9, () => enormous.slice(0, 230)),
    }),
    { greeting: 'a\n'.repeat(1900), closing: unbroken, aftercare: times(400, () => 'line').join('\n') },
  ],
];

describe('the paper of', () => {
  for (const [what, facts, kept] of records) {
    for (const paper of ['a4', 'letter'] as const) {
      it(`${what} has one to three pages on ${paper}`, async () => {
        const { path, pages } = await written(facts(), kept, { paper });
        const found = info(path);
        expect(Number(found.Pages)).toBe(pages);
        expect(pages).toBeGreaterThanOrEqual(1);
        expect(pages).toBeLessThanOrEqual(3);
        // ISO 216 A4 and US Letter in points, as poppler names them.
        expect(found['Page size']).toBe(
          paper === 'a4' ? '595.28 x 841.89 pts (A4)' : '612 x 792 pts (letter)',
        );
        expect(textOf(path)).toContain(`${pages} of ${pages}`);
      });
    }
  }

  it('a long record says how much was left off', async () => {
    const long = records.find(([what]) => what === '500 readings');
    const { path } = await written(long?.[1]() ?? factsFor(fullRecord()));
    const text = oneLine(textOf(path));
    expect(text).toMatch(/and \d+ more/);
    expect(text).toContain('The whole record is at the workshop');
  });
});

describe('what poppler reads back', () => {
  it('is tagged, has a title and a language, and embeds every font', async () => {
    const { path, pdf } = await written(factsFor(fullRecord()));
    const found = info(path);
    expect(found).toMatchObject({ Tagged: 'yes', 'PDF version': '1.7', Author: 'Alder Bench' });
    expect(found.Title).toBe(
      'Summary of the work: Marla’s electric guitar: a crackle, and a rewire (job 117)',
    );
    const fonts = execFileSync('pdffonts', [path], { encoding: 'utf8' }).trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(1);
    for (const font of fonts) expect(font).toMatch(/CID TrueType\s+Identity-H\s+yes yes yes/);
    const raw = Buffer.from(pdf).toString('latin1');
    expect(raw).toContain('/Lang (en-GB)');
    expect(raw).toContain('/DisplayDocTitle true');
  });

  it('has headings, lists, tables with heads, and pictures in words (ISO 32000-1, 14.8.4)', async () => {
    const { path, pdf } = await written(factsFor(fullRecord()));
    const tree = execFileSync('pdfinfo', ['-struct', path], { encoding: 'utf8' });
    const count = (type: string) => tree.match(new RegExp(`^ *${type}\\b`, 'gm'))?.length ?? 0;
    expect(count('H1')).toBe(1);
    expect(count('H2')).toBe(10);
    expect(count('Table')).toBe(3);
    expect(count('TH')).toBeGreaterThan(12);
    expect(count('LI')).toBe(count('LBody'));
    // The logo, the wiring and the stills.
    expect(count('Figure')).toBe(
      Buffer.from(pdf)
        .toString('latin1')
        .match(/\/Alt /g)?.length,
    );
    expect(count('Figure')).toBe(5);
  });

  it('comes in reading order', async () => {
    const { path } = await written(factsFor(fullRecord()));
    const tree = oneLine(execFileSync('pdfinfo', ['-struct-text', path], { encoding: 'utf8' }));
    const order = [
      'Alder Bench',
      'Marla Quillfeather',
      'What was asked',
      'What was done',
      'What was not done, and why',
      'Readings, before and after',
      'How it is wired now',
      'Parts',
      'From the film',
      'What to look after',
      'Please take care',
      'Collection',
    ].map((words) => tree.indexOf(words));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order).not.toContain(-1);
  });

  const names = [
    'Żaneta Łącka-Őry',
    'Nguyễn Thị Hường',
    'Ŝtelo Ĉirkaŭ',
    'Ευγενία Παπαδοπούλου',
    'Ἀλκιβιάδης',
    'Їванка Щербацька',
    'Ђорђе Ћирић',
    'Ҳабиб Ғаниев',
    'Zoe\u0308 Be\u0301ne\u0301dicte',
  ];
  it.each(names)('holds the name %s', async (name) => {
    const { client } = fullRecord();
    if (!client) throw new Error('the record has no client');
    const { path, told } = await written(factsFor({ ...fullRecord(), client: { ...client, name } }));
    expect(oneLine(textOf(path)).normalize('NFC')).toContain(name.normalize('NFC'));
    expect(told).toEqual([]);
  });

  it('holds the signs of the trade', async () => {
    const signs = 'It reads 4 Ω and 2 µF (±1 %) – “sound” → ✓, F♯ to B♭, ≤ 5 °C';
    const { path, told } = await written(factsFor(fullRecord()), { closing: signs });
    expect(oneLine(textOf(path))).toContain(signs);
    expect(told).toEqual([]);
  });

  it('shows a sign in the place of letters that no font has, and tells', async () => {
    const { path, told } = await written(factsFor(fullRecord()), { closing: 'Played by 山田 🎸 today' });
    expect(oneLine(textOf(path))).toContain('Played by [?] [?] today');
    expect(told).toEqual(['No font has these letters, so [?] stands for them: 山 田 🎸']);
  });
});

describe('a logo', () => {
  const told = async (bytes: Uint8Array) => (await written(factsFor(fullRecord()), {}, { logo: bytes })).told;
  const bent = (at: number) => logo.map((byte, index) => (index === at ? byte ^ 0xff : byte));

  it('that is no picture is left out, and told', async () => {
    expect(await told(Buffer.from('<svg/>'))).toEqual(['The logo is not printed: it is no JPEG and no PNG.']);
  });

  it.each([40, 60, 100, 300])('with a wrong byte at %i is left out, and told', async (place) => {
    expect(await told(bent(place))).toEqual(['The logo is not printed: the file is damaged.']);
  });

  it('that was cut off is left out, and told', async () => {
    expect(await told(logo.subarray(0, logo.length - 20))).toEqual([
      'The logo is not printed: the file is damaged.',
    ]);
    expect(await told(still.subarray(0, 400))).toHaveLength(1);
  });

  it.each(['rgba', 'rgb24', 'gray', 'ya8', 'pal8', 'rgb48be', 'monob'])(
    'of a sound PNG in %s is printed',
    async (format) => {
      const bytes = picture(`${format}.png`, `testsrc=s=120x80,format=${format}`);
      const { told: words, path } = await written(factsFor(fullRecord()), {}, { logo: bytes });
      expect(words).toEqual([]);
      const images = execFileSync('pdfimages', ['-list', path], { encoding: 'utf8' });
      expect(images).toMatch(/\s120\s+80\s/);
    },
  );
});

describe('a still', () => {
  it('that is not at hand is told, and its section goes with the last one', async () => {
    const { told, path } = await written(factsFor(fullRecord()), {}, { stills: new Map() });
    expect(told).toHaveLength(3);
    expect(told[0]).toMatch(/^The still “.*” is not printed: its picture is not at hand\.$/);
    expect(textOf(path)).not.toContain('From the film');
  });
});
