import type { SummaryBlock, SummarySection } from './content';
import type { HoldBack } from './hold-back';

/** The same block with every text of it changed; what is drawn as geometry stays. */
export function mapTexts(block: SummaryBlock, change: (text: string) => string): SummaryBlock {
  switch (block.is) {
    case 'words':
      return { ...block, text: change(block.text) };
    case 'list':
      return { ...block, items: block.items.map(change) };
    case 'pairs':
      return { ...block, pairs: block.pairs.map(({ label, value }) => ({ label, value: change(value) })) };
    case 'table':
      return { ...block, rows: block.rows.map((row) => row.map(change)) };
    case 'stills':
      return {
        ...block,
        stills: block.stills.map((still) => ({ ...still, caption: change(still.caption) })),
      };
    case 'drawing':
      return { ...block, alt: change(block.alt), drawing: drawingWith(block.drawing, change) };
  }
}

type Drawing = Extract<SummaryBlock, { is: 'drawing' }>['drawing'];

function drawingWith(drawing: Drawing, change: (text: string) => string): Drawing {
  return { ...drawing, nodes: drawing.nodes.map((node) => ({ ...node, place: change(node.place) })) };
}

export function heldBackIn(sections: readonly SummarySection[], holdBack: HoldBack): SummarySection[] {
  return sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((block) => mapTexts(block, holdBack.out)),
  }));
}
