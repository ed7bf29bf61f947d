import { HtmlValidate } from 'html-validate';
import { parse as parseHtml } from 'parse5';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import { addMarker } from '@/lib/film/store';
import { addReading } from '@/lib/readings/store';
import { addJob, loadOlderJobs } from '@/lib/work/store';
import { exportTables, publicArchiveSchema } from '@/shared/archive-exports';
import { openTestDatabase } from '../open-test-database';
import { addLongFilm, filesOf, readCsv, tellingJob } from './pages-job';

let db: Database;
let home: string;
let close: () => void;
let zip: Buffer;
let files: Map<string, string>;
beforeAll(() => {
  ({ db, home, close } = openTestDatabase());
});
afterAll(() => close());

/** Links, sources and ids of a page, by parse5, which reads HTML as browsers do (WHATWG HTML, section 13.2). */
interface Node {
  nodeName?: string;
  attrs?: { name: string; value: string }[];
  childNodes?: Node[];
}
function attributesOf(html: string, names: readonly string[]): string[] {
  const walk = (node: Node): string[] => [
    ...(node.attrs ?? []).filter(({ name }) => names.includes(name)).map(({ value }) => value),
    ...(node.childNodes ?? []).flatMap(walk),
  ];
  return walk(parseHtml(html));
}
const hostile = [
  ...[
    '<script>alert(1)</script>',
    '</script><img src=x onerror=alert(1)>',
    '</title><b>',
    '&lt;&amp;',
    '"\' onload="x',
  ],
  ...[
    'a\u2028b\u2029c',
    '\u202egnihton',
    '🎸👨‍👩‍👧‍👦',
    '=1+2',
    '@SUM(A1)',
    '-2+3',
    '+cmd|x',
    '\u0000\u001b\ud800',
    ']]>',
    '`',
  ],
];

describe('the pages', () => {
  beforeAll(async () => {
    loadOlderJobs(db);
    tellingJob(db);
    for (const title of hostile) {
      const { id } = addJob(db, { title, instrument: { type: title.slice(0, 60) } });
      const takeId = addLongFilm(db, id);
      addMarker(db, id, { kind: 'work', title, note: title, takeId, ms: 1000, public: true });
      addReading(db, id, { kind: 'relief', value: '0.3', unit: 'mm', subject: title, note: title });
    }
    ({ zip, files } = await filesOf(db, home));
  });

  it('are valid HTML (outside check: html-validate, by the standard rules)', async () => {
    const validator = new HtmlValidate({ extends: ['html-validate:standard'] });
    const pages = [...files].filter(([name]) => name.endsWith('.html'));
    expect(pages.length).toBeGreaterThan(40);
    for (const [name, html] of pages) {
      const { results } = await validator.validateString(html);
      const told = results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${ruleId} ${line} ${message}`),
      );
      expect(told, name).toEqual([]);
    }
  });

  it('hold no markup and no handler but their own, whatever a job is called', () => {
    const own =
      /^(html|head|meta|title|link|script|body|header|nav|ul|li|a|main|h[1-3]|p|bdi|span|section|ol|div|table|caption|thead|tbody|tr|th|td|footer|search|form|label|input|button|#.*)$/;
    const walk = (node: Node): Node[] => [node, ...(node.childNodes ?? []).flatMap(walk)];
    for (const [name, html] of files) {
      if (!name.endsWith('.html')) continue;
      const nodes = walk(parseHtml(html));
      for (const { nodeName = '', attrs = [] } of nodes) {
        expect(nodeName, name).toMatch(own);
        for (const attribute of attrs) expect(attribute.name).not.toMatch(/^(on|style)/);
      }
      const scripts = nodes.filter(({ nodeName }) => nodeName === 'script');
      expect(scripts.map(({ attrs }) => attrs?.find(({ name: key }) => key === 'src')?.value)).toEqual(
        name === 'index.html' ? ['data.js', 'search.js'] : [],
      );
      for (const script of scripts) expect(script.childNodes).toEqual([]);
      expect(html).toContain("default-src 'none'");
    }
  });

  it('ask for nothing outside the set, and every link leads somewhere', () => {
    for (const [name, html] of files) {
      if (!name.endsWith('.html')) continue;
      for (const address of attributesOf(html, ['href', 'src'])) {
        const { origin, pathname, hash } = new URL(address, `file:///set/${name}`);
        expect(origin).toBe('null');
        const target = files.get(pathname.replace('/set/', ''));
        expect(target, `${address} on ${name}`).toBeDefined();
        if (hash !== '') expect(attributesOf(target ?? '', ['id'])).toContain(hash.slice(1));
      }
    }
  });

  it('are there without scripts: the first page lists every job by its type', () => {
    const links = attributesOf(files.get('index.html') ?? '', ['href']);
    const pages = [...files.keys()].filter((name) => name.startsWith('jobs/'));
    expect(links.filter((link) => link.startsWith('jobs/')).sort()).toEqual(pages.sort());
  });

  it('come in the same bytes from the same archive', async () => {
    expect((await filesOf(db, home)).zip.equals(zip)).toBe(true);
  });

  it('hold tables that another program reads as they were meant, and JSON by its contract', () => {
    const { jobs } = publicArchiveSchema.parse(JSON.parse(files.get('archive.json') ?? ''));
    const [moments, readings, conductors] = exportTables.map((name) =>
      readCsv(files.get(`${name}.csv`) ?? ''),
    );
    const guarded = (text: string) => (/^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text);
    const chapters = jobs.flatMap((job) =>
      job.chapters.map((chapter) => [String(job.number), guarded(chapter.title), String(chapter.atMs)]),
    );
    const shown = (moments ?? []).filter(({ kind = '' }) => !['joint', 'done'].includes(kind));
    expect(shown.map((row) => [row.job, row.what, row['at ms']])).toEqual(chapters);
    expect(readings?.map((row) => [row.job, row.digits, row.unit, row.basis])).toEqual(
      jobs.flatMap((job) =>
        job.readings.map(({ digits, unit, basis }) => [String(job.number), digits ?? '', unit, basis]),
      ),
    );
    const ends = jobs.flatMap((job) =>
      job.traces.flatMap(({ joined }) => (joined[0]?.lines ?? []).flatMap((line) => line.ends)),
    );
    expect(conductors?.map(({ conductor }) => conductor)).toEqual(ends);
    expect(ends.length).toBeGreaterThan(10);
    expect(moments?.map(({ what }) => what)).toEqual(
      expect.arrayContaining(["'=1+2", "'@SUM(A1)", "'-2+3", "'+cmd|x"]),
    );
  });
});
