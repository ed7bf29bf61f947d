import type { PlanDrawing } from '@/lib/wiring';
import type { StillKey } from '@/shared/summary';

/** The client summary in plain values, before it is laid out on paper. */
export interface SummaryContent {
  /** BCP 47; what the program writes is English. */
  language: string;
  /** Of the document, in its properties. */
  title: string;
  head: SummaryHead;
  sections: SummarySection[];
  /** At the foot of every page, before the page number. */
  footer: string;
  /** Private words of other people that stood in the record and are not printed. */
  heldBack: string[];
  /** Private words of other people in what was typed for this paper: printed as they are, for somebody meant them. */
  findings: { where: string; words: string }[];
}

export interface SummaryHead {
  workshop: string;
  address: string[];
  job: string;
  day: string;
  heading: string;
}

export const sectionIds = [
  'greeting',
  'facts',
  'asked',
  'done',
  'not done',
  'readings',
  'wiring',
  'parts',
  'stills',
  'aftercare',
  'cautions',
  'collection',
  'closing',
] as const;
export type SectionId = (typeof sectionIds)[number];

export interface SummarySection {
  id: SectionId;
  /** Null for one that needs no heading. */
  title: string | null;
  blocks: SummaryBlock[];
}

export type SummaryBlock = WordsBlock | ListBlock | PairsBlock | TableBlock | DrawingBlock | StillsBlock;

/** Paragraphs, parted by line breaks. */
export interface WordsBlock {
  is: 'words';
  text: string;
  small?: boolean;
}

/** `more`: how many were left off; 0 for none. */
export interface ListBlock {
  is: 'list';
  mark: 'dot' | 'tick' | 'dash' | 'care';
  items: string[];
  more: number;
}

/** Short facts by name: "Serial: 1234". */
export interface PairsBlock {
  is: 'pairs';
  pairs: { label: string; value: string }[];
}

export interface TableColumn {
  head: string;
  /** Share of the width. */
  share: number;
  figures?: boolean;
}

export interface TableBlock {
  is: 'table';
  columns: TableColumn[];
  /** A cell for each column; the first one names the row. */
  rows: string[][];
  more: number;
  /** Rows that close it, such as a total: the last to be left off. */
  foot: string[][];
}

export interface DrawingBlock {
  is: 'drawing';
  drawing: PlanDrawing;
  /** The drawing in words, for who does not see it. */
  alt: string;
}

export interface ChosenStill {
  key: StillKey;
  caption: string;
}

export interface StillsBlock {
  is: 'stills';
  stills: ChosenStill[];
  more: number;
}
