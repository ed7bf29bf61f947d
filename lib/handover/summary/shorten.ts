import type { SummaryBlock, SummaryContent, SummarySection } from './content';
import { mapTexts } from './texts';

/** How much of everything is printed. */
export interface Limits {
  /** Rows of a table, lines of a list. */
  rows: number;
  /** Characters of a paragraph, and of a line in a list or table. */
  paragraph: number;
  line: number;
  stills: number;
  drawings: number;
  /** Parts of one section. */
  blocks: number;
}

/** From roomy to what fits on three pages whatever is in the record; `tests` hold the last one to that. */
export const limitSteps: readonly Limits[] = [
  { rows: 90, paragraph: 4000, line: 1200, stills: 6, drawings: 4, blocks: 60 },
  { rows: 60, paragraph: 3000, line: 700, stills: 6, drawings: 3, blocks: 50 },
  { rows: 40, paragraph: 2000, line: 450, stills: 6, drawings: 2, blocks: 40 },
  { rows: 30, paragraph: 1400, line: 320, stills: 6, drawings: 2, blocks: 30 },
  { rows: 24, paragraph: 1000, line: 260, stills: 6, drawings: 2, blocks: 24 },
  { rows: 20, paragraph: 800, line: 220, stills: 6, drawings: 2, blocks: 20 },
  { rows: 16, paragraph: 600, line: 200, stills: 6, drawings: 1, blocks: 16 },
  { rows: 13, paragraph: 500, line: 180, stills: 6, drawings: 1, blocks: 14 },
  { rows: 10, paragraph: 420, line: 160, stills: 6, drawings: 1, blocks: 12 },
  { rows: 8, paragraph: 360, line: 140, stills: 3, drawings: 1, blocks: 10 },
  { rows: 6, paragraph: 300, line: 120, stills: 3, drawings: 1, blocks: 8 },
  { rows: 4, paragraph: 240, line: 100, stills: 3, drawings: 1, blocks: 7 },
  { rows: 2, paragraph: 160, line: 80, stills: 3, drawings: 0, blocks: 5 },
];

/** Cautions are never cut: there is a fixed number of them, and each may save a hand. */
const whole: ReadonlySet<SummarySection['id']> = new Set(['cautions']);

/** The summary held to these limits. Every list says how many it leaves off; `isCut` where anything was. */
export function shortened(
  content: SummaryContent,
  limits: Limits,
): { content: SummaryContent; isCut: boolean } {
  const cut: Cut = { limits, drawn: 0, isCut: false };
  const sections = content.sections.map((section) =>
    whole.has(section.id) ? section : { ...section, blocks: cutBlocks(section.blocks, cut) },
  );
  const head = {
    ...content.head,
    workshop: cutText(onOneLine(content.head.workshop), 90, cut),
    heading: cutText(onOneLine(content.head.heading), 160, cut),
    address: cutAddress(content.head.address, cut),
  };
  return { content: { ...content, head, sections }, isCut: cut.isCut };
}

interface Cut {
  limits: Limits;
  drawn: number;
  isCut: boolean;
}

function cutBlocks(blocks: readonly SummaryBlock[], cut: Cut): SummaryBlock[] {
  const { kept, more } = first(
    blocks.flatMap((block) => cutBlock(block, cut)),
    cut.limits.blocks,
    cut,
  );
  return more === 0
    ? kept
    : [...kept, { is: 'words', text: 'There is more of this in the record.', small: true }];
}

function cutBlock(block: SummaryBlock, cut: Cut): SummaryBlock[] {
  if (block.is === 'drawing') {
    cut.drawn += 1;
    if (cut.drawn <= cut.limits.drawings) return [block];
    cut.isCut = true;
    return [];
  }
  if (block.is === 'words') return [{ ...block, text: cutParagraphs(block.text, cut) }];
  return [
    cutList(
      mapTexts(block, (text) => cutText(onOneLine(text), cut.limits.line, cut)),
      cut,
    ),
  ];
}

function onOneLine(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

function cutParagraphs(text: string, cut: Cut): string {
  const paragraphs = text.split('\n').filter((paragraph) => paragraph.trim() !== '');
  const { kept, more } = first(paragraphs, cut.limits.rows, cut);
  return cutText(`${kept.join('\n')}${more > 0 ? ' …' : ''}`, cut.limits.paragraph, cut);
}

function cutList(block: SummaryBlock, cut: Cut): SummaryBlock {
  if (block.is === 'list') {
    const { kept, more } = first(block.items, cut.limits.rows, cut);
    return { ...block, items: kept, more };
  }
  if (block.is === 'table') {
    const { kept, more } = first(block.rows, cut.limits.rows, cut);
    return { ...block, rows: kept, more, foot: first(block.foot, cut.limits.rows + 4, cut).kept };
  }
  if (block.is === 'stills') {
    const { kept, more } = first(block.stills, cut.limits.stills, cut);
    return { ...block, stills: kept, more };
  }
  return block;
}

function first<Item>(items: readonly Item[], most: number, cut: Cut): { kept: Item[]; more: number } {
  if (items.length <= most) return { kept: [...items], more: 0 };
  cut.isCut = true;
  return { kept: items.slice(0, most), more: items.length - most };
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Cut at a word, with "…"; letters with their accents stay whole. */
function cutText(text: string, most: number, cut: Cut): string {
  if (text.length <= most) return text;
  cut.isCut = true;
  let kept = '';
  for (const { segment } of graphemes.segment(text.slice(0, most + 64))) {
    if (kept.length + segment.length > most - 1) break;
    kept += segment;
  }
  const atWord = kept.replace(/\s\S*$/, '');
  return `${(atWord.length > most / 2 ? atWord : kept).trimEnd()}…`;
}

const mostAddressLines = 5;

function cutAddress(lines: readonly string[], cut: Cut): string[] {
  const kept = lines.length > mostAddressLines ? lines.slice(0, mostAddressLines) : lines;
  if (kept.length < lines.length) cut.isCut = true;
  return kept.map((line) => cutText(line, 80, cut));
}
