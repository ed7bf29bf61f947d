import PDFDocument from 'pdfkit';
import type { SummaryPaper } from '@/shared/summary';
import type { SummaryBlock, SummaryContent } from './content';
import { piecesOf } from './page/blocks';
import { ink, measure, paperSizes } from './page/ink';
import type { Making } from './page/making';
import { type Pen, penFor, styled } from './page/pen';
import { type Picture, pictureOf } from './page/picture';
import { type Flow, flow, type Part, type Placed, type Tag } from './page/pieces';
import { Structure } from './page/structure';
import { limitSteps, shortened } from './shorten';

export interface SummaryMaterial {
  paper: SummaryPaper;
  /** JPEG of each still, by the key of its moment. */
  stills: ReadonlyMap<string, Uint8Array>;
  /** JPEG or PNG. */
  logo: Uint8Array | null;
}

export interface WrittenSummary {
  pdf: Uint8Array;
  pages: number;
  /** What could not be printed as it should be, a sentence each. */
  told: string[];
}

const mostPages = 3;

/** The client summary as a tagged PDF 1.7 of one to three pages, fonts embedded. */
export async function writeSummary(
  content: SummaryContent,
  material: SummaryMaterial,
): Promise<WrittenSummary> {
  const told: string[] = [];
  const doc = openDocument(content, material.paper);
  const bytes = collected(doc);
  const pen = penFor(doc);
  const [width, height] = paperSizes[material.paper];
  const making: Making = {
    type: pen.type,
    widthPt: width - 2 * measure.side,
    stills: stillsOf(content, material, told),
    logo: material.logo && pictureOrTell(material.logo, 'The logo', told),
  };
  const laid = layOut(withPictures(content, making.stills), making, height);
  // What was only measured, and then left off, is not missed.
  pen.type.forgetMissing();
  drawAll(doc, pen, { ...laid, footer: content.footer, width, height });
  doc.end();
  const missing = pen.type.missing();
  if (missing.length > 0) told.push(sayMissing(missing));
  return { pdf: await bytes, pages: laid.pages, told };
}

function openDocument({ title, language, head }: SummaryContent, paper: SummaryPaper): PDFKit.PDFDocument {
  return new PDFDocument({
    autoFirstPage: false,
    size: [...paperSizes[paper]],
    margin: 0,
    tagged: true,
    lang: language,
    displayTitle: true,
    pdfVersion: '1.7',
    info: { Title: title, Author: head.workshop, Creator: 'Benchtake' },
  });
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  return new Promise((resolve, reject) => {
    doc.on('data', (chunk: Buffer) => chunks.push(chunk));
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    doc.on('error', reject);
  });
}

function pictureOrTell(bytes: Uint8Array, what: string, told: string[]): Picture | null {
  const picture = pictureOf(bytes);
  if (typeof picture !== 'string') return picture;
  told.push(`${what} is not printed: ${picture}.`);
  return null;
}

function stillsOf(
  content: SummaryContent,
  { stills }: SummaryMaterial,
  told: string[],
): Map<string, Picture> {
  const wanted = content.sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.is === 'stills' ? block.stills : [])),
  );
  return new Map(
    wanted.flatMap(({ key, caption }) => {
      const bytes = stills.get(key);
      const picture = bytes
        ? pictureOrTell(bytes, `The still “${caption}”`, told)
        : tell(`The still “${caption}” is not printed: its picture is not at hand.`, told);
      return picture ? [[key, picture] as const] : [];
    }),
  );
}

/** Without the stills that have no picture, and without a section that then has nothing. */
function withPictures(content: SummaryContent, pictures: Making['stills']): SummaryContent {
  const left = (block: SummaryBlock): SummaryBlock[] => {
    if (block.is !== 'stills') return [block];
    const stills = block.stills.filter(({ key }) => pictures.has(key));
    return stills.length > 0 ? [{ ...block, stills }] : [];
  };
  const sections = content.sections.map((section) => ({ ...section, blocks: section.blocks.flatMap(left) }));
  return { ...content, sections: sections.filter(({ blocks }) => blocks.length > 0) };
}

function tell(sentence: string, told: string[]): null {
  told.push(sentence);
  return null;
}

/** The roomiest limits that keep it to three pages. */
function layOut(content: SummaryContent, making: Making, height: number): Flow {
  for (const limits of limitSteps) {
    const { content: held, isCut } = shortened(content, limits);
    const laid = flow(piecesOf(held, isCut, making), measure.top, height - measure.bottom);
    if (laid.fits && laid.pages <= mostPages) return laid;
  }
  throw new Error('Even the shortest summary takes more than three pages.');
}

type Whole = Flow & { footer: string; width: number; height: number };

function drawAll(doc: PDFKit.PDFDocument, pen: Pen, whole: Whole): void {
  const structure = new Structure(doc);
  for (let page = 0; page < whole.pages; page++) {
    doc.addPage();
    artifact(doc, () => drawFurniture(pen, page, whole));
    for (const placed of whole.placed.filter((one) => one.page === page)) drawPlaced(pen, structure, placed);
  }
  structure.end();
}

/** Ornaments first, then what means something; a head that stands again means nothing new. */
function drawPlaced(pen: Pen, structure: Structure, { piece, y, again }: Placed): void {
  const x = measure.side;
  const ornament = piece.ornament;
  if (ornament) artifact(pen.doc, () => ornament(pen, x, y));
  for (const part of piece.parts) {
    if (again) artifact(pen.doc, () => part.draw(pen, x, y));
    else structure.part(withBox(part, x, y), () => part.draw(pen, x, y));
  }
}

function withBox({ path, box }: Part, x: number, y: number): readonly Tag[] {
  const last = path.at(-1);
  if (!box || !last) return path;
  const [left, top] = [x + box.x, y + box.y];
  const bbox: [number, number, number, number] = [left, top, left + box.width, top + box.height];
  return [...path.slice(0, -1), { ...last, options: { ...last.options, bbox } }];
}

function drawFurniture(pen: Pen, page: number, { pages, footer, width, height }: Whole): void {
  const style = styled(measure.label, ink.soft);
  const y = height - measure.bottom + 18;
  const inner = width - 2 * measure.side;
  pen.rule(measure.side, y - 5, inner, ink.brightBrass, 1.4);
  pen.rule(measure.side, y - 2.6, inner, ink.brightBrass, 0.4);
  const count = `${page + 1} of ${pages}`;
  const room = inner - 60;
  pen.line(cutToWidth(footer, room, pen, style), measure.side, y + 2, style);
  pen.lineToRight(count, width - measure.side, y + 2, styled(measure.label, ink.text, 'figures'));
}

function cutToWidth(
  text: string,
  width: number,
  { type }: Pen,
  { face, size }: ReturnType<typeof styled>,
): string {
  if (type.width(text, face, size) <= width) return text;
  let kept = [...text];
  while (kept.length > 0 && type.width(`${kept.join('')}…`, face, size) > width) kept = kept.slice(0, -1);
  return `${kept.join('').trimEnd()}…`;
}

function artifact(doc: PDFKit.PDFDocument, draw: () => void): void {
  doc.markContent('Artifact', { type: 'Layout' });
  draw();
  doc.endMarkedContent();
}

function sayMissing(missing: readonly string[]): string {
  const named = missing.slice(0, 12).join(' ');
  return `No font has these letters, so [?] stands for them: ${named}${missing.length > 12 ? ' …' : ''}`;
}
