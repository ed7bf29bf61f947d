import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SummaryContent } from '@/lib/handover/summary';
import { limitSteps, shortened } from '@/lib/handover/summary/shorten';

const contentOf = (
  blocks: SummaryContent['sections'][number]['blocks'],
  id = 'asked' as const,
): SummaryContent => ({
  language: 'en-GB',
  title: 'a title',
  head: { workshop: 'Alder Bench', address: [], job: '1', day: 'today', heading: 'a heading' },
  sections: [{ id, title: 'a section', blocks }],
  footer: '',
  heldBack: [],
  findings: [],
});
const [roomy] = limitSteps;
if (!roomy) throw new Error('there are no limits');
const limits = { ...roomy, rows: 3, line: 20, paragraph: 30 };

describe('a summary that is held to limits', () => {
  it('stays as it is where it fits', () => {
    const content = contentOf([{ is: 'list', mark: 'dot', items: ['a', 'b', 'c'], more: 0 }]);
    expect(shortened(content, limits)).toEqual({ content, isCut: false });
  });

  it('says how many were left off, and keeps the rows that close a table', () => {
    const columns = [{ head: 'What', share: 1 }];
    const rows = Array.from({ length: 10 }, (_, at) => [`row ${at}`]);
    const foot = [['total']];
    const { content, isCut } = shortened(contentOf([{ is: 'table', columns, rows, more: 0, foot }]), limits);
    expect(content.sections[0]?.blocks).toEqual([
      { is: 'table', columns, rows: rows.slice(0, 3), more: 7, foot },
    ]);
    expect(isCut).toBe(true);
  });

  it('never cuts a caution', () => {
    const caution = 'lethal voltage, also switched off and unplugged: qualified people only';
    const content = contentOf([
      { is: 'list', mark: 'care', items: [caution, caution, caution, caution], more: 0 },
    ]);
    const careful = {
      ...content,
      sections: content.sections.map((one) => ({ ...one, id: 'cautions' as const })),
    };
    expect(shortened(careful, limits)).toEqual({ content: careful, isCut: false });
  });

  it('counts the lines of a text, and sets what stands in a list on one line', () => {
    const { content } = shortened(
      contentOf([
        { is: 'words', text: 'a\n\nb\nc\nd' },
        { is: 'list', mark: 'dot', items: ['a\nb'], more: 0 },
      ]),
      limits,
    );
    expect(content.sections[0]?.blocks).toEqual([
      { is: 'words', text: 'a\nb\nc …' },
      { is: 'list', mark: 'dot', items: ['a b'], more: 0 },
    ]);
  });

  it('cuts long words with … and leaves letters whole', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (graphemes) => {
        const text = graphemes.trim();
        const { content } = shortened(contentOf([{ is: 'words', text }]), limits);
        const [block] = content.sections[0]?.blocks ?? [];
        const cut = block?.is === 'words' ? block.text : '';
        expect(cut.length).toBeLessThanOrEqual(limits.paragraph);
        if (text.length <= limits.paragraph) expect(cut).toBe(text);
        else expect(cut.endsWith('…') && text.startsWith(cut.slice(0, -1))).toBe(true);
        expect(cut).not.toMatch(/\p{Surrogate}/u);
      }),
    );
  });
});
