import type { SummaryHead } from '../content';
import { ink, measure } from './ink';
import { linesOf } from './lines';
import type { Making } from './making';
import { type Pen, styled } from './pen';
import { type Part, type Piece, plainTag } from './pieces';

const stub = 104;
const inset = { left: 30, other: 14 };
const logoBox = { width: 96, height: 52 };
const name = styled({ size: 16, leading: 20 }, ink.text, 'strong');
const line = styled(measure.small, ink.soft);
const label = styled(measure.label, ink.brass, 'strong');
const number = styled({ size: 22, leading: 26 }, ink.text, 'figures');

/** The job ticket with the workshop's name, its stub with the number, and the heading of the paper below. */
export function ticketHead(head: SummaryHead, making: Making): Piece[] {
  return [ticket(head, making), ...title(head.heading, making)];
}

function ticket(head: SummaryHead, { type, widthPt, logo }: Making): Piece {
  const logoWidth = logo ? logoBox.width + inset.other : 0;
  const width = widthPt - stub - inset.left - inset.other - logoWidth;
  const names = linesOf(head.workshop, name, width, type).slice(0, 3);
  const address = head.address.flatMap((words) => linesOf(words, line, width, type)).slice(0, 6);
  const words = names.length * name.leading + address.length * line.leading;
  const height = Math.max(words, logo ? logoBox.height : 0, 48) + 2 * inset.other;
  const logoPart = (picture: NonNullable<typeof logo>): Part => {
    const x = widthPt - stub - inset.other - logoBox.width;
    const y = (height - logoBox.height) / 2;
    return {
      path: [plainTag('Figure', { alt: `Logo of ${head.workshop}`, placement: 'Block' })],
      box: { x, y, ...logoBox },
      draw: (pen, left, top) => pen.picture(picture, left + x, top + y, logoBox.width, logoBox.height),
    };
  };
  const block: Part[] = [
    {
      path: [plainTag('P')],
      draw: (pen, x, y) =>
        names.forEach((words, at) => {
          pen.line(
            words,
            x + inset.left,
            y + (height - wordsHeight(names, address)) / 2 + at * name.leading,
            name,
          );
        }),
    },
    ...addressParts(names, address, height),
  ];
  return {
    height,
    before: 0,
    keepWithNext: true,
    ornament: (pen, x, y) => drawTicket(pen, { x, y, width: widthPt, height }),
    parts: [...block, ...(logo ? [logoPart(logo)] : []), stubPart(head, { widthPt, height, type })],
  };
}

function wordsHeight(names: readonly string[], address: readonly string[]): number {
  return names.length * name.leading + address.length * line.leading;
}

function addressParts(names: readonly string[], address: readonly string[], height: number): Part[] {
  if (address.length === 0) return [];
  const top = (height - wordsHeight(names, address)) / 2 + names.length * name.leading;
  return [
    {
      path: [plainTag('P')],
      draw: (pen, x, y) =>
        address.forEach((words, at) => {
          pen.line(`${words} `, x + inset.left, y + top + at * line.leading, line);
        }),
    },
  ];
}

function stubPart(
  { job, day }: SummaryHead,
  { widthPt, height, type }: { widthPt: number; height: number; type: Making['type'] },
): Part {
  const left = widthPt - stub + 14;
  const fitting = Math.min(1, (stub - 24) / type.width(job, number.face, number.size));
  const top = (height - label.leading - number.leading - line.leading) / 2;
  return {
    path: [plainTag('P')],
    draw: (pen, x, y) => {
      pen.line('Job ', x + left, y + top, label);
      pen.line(`${job} `, x + left, y + top + label.leading, { ...number, size: number.size * fitting });
      pen.line(day, x + left, y + top + label.leading + number.leading, { ...line, size: 8 });
    },
  };
}

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** A card with a punched hole, a perforated stub, and an engraved scale along its foot. */
function drawTicket({ doc }: Pen, { x, y, width, height }: Box): void {
  doc.roundedRect(x, y, width, height, 5).lineWidth(0.9).fillAndStroke(ink.paper, ink.strongRule);
  doc
    .circle(x + 14, y + height / 2, 5)
    .lineWidth(0.9)
    .fillAndStroke('#ffffff', ink.strongRule);
  const cut = x + width - stub;
  doc
    .moveTo(cut, y)
    .lineTo(cut, y + height)
    .lineWidth(1)
    .dash(1.2, { space: 3 })
    .strokeColor(ink.strongRule);
  doc.stroke().undash();
  doc.lineWidth(0.5).strokeColor(ink.brightBrass);
  for (let at = 0; at * 5 <= width - 12; at++) {
    const long = at % 10 === 0 ? 6 : at % 5 === 0 ? 4.5 : 3;
    doc.moveTo(x + 6 + at * 5, y + height - long).lineTo(x + 6 + at * 5, y + height - 0.5);
  }
  doc.stroke();
}

function title(heading: string, { type, widthPt }: Making): Piece[] {
  const style = styled(measure.title, ink.text, 'strong');
  const path = [plainTag('H1')];
  const over = styled(measure.label, ink.brass, 'strong');
  const lines = linesOf(heading, style, widthPt, type);
  return [
    {
      height: over.leading,
      before: 16,
      keepWithNext: true,
      parts: [{ path: [plainTag('P')], draw: (pen, x, y) => pen.line('Summary of the work', x, y, over) }],
    },
    ...lines.map((words, at) => ({
      height: style.leading,
      before: at === 0 ? 1 : 0,
      keepWithNext: true,
      parts: [{ path, draw: (pen: Pen, x: number, y: number) => pen.line(words, x, y, style) }],
    })),
  ];
}
