import { conductorInks, type PlanDrawing } from '@/lib/wiring';
import { basisWords } from '../bases';
import type { DrawingBlock } from '../content';
import { ink } from './ink';
import { linesOf } from './lines';
import type { Making } from './making';
import { type Pen, styled } from './pen';
import { type Piece, plainTag } from './pieces';

/** Letters of the drawing, in its own lengths. */
const size = { label: 11, place: 10.5, code: 11 } as const;
const highest = 240;
/** The geometry leaves this free below. */
const emptyFoot = 22;

/** The drawing of a wiring, as large as its place allows. */
export function drawingPieces({ drawing, alt }: DrawingBlock, { widthPt }: Making): Piece[] {
  const scale = Math.min(0.86, widthPt / drawing.width, highest / drawing.height);
  const [width, height] = [drawing.width * scale, (drawing.height - emptyFoot) * scale];
  return [
    {
      height,
      before: 4,
      keepWithNext: false,
      parts: [
        {
          path: [plainTag('Figure', { alt, placement: 'Block' })],
          box: { x: 0, y: 0, width, height },
          draw: (pen, x, y) => {
            pen.doc.save().translate(x, y).scale(scale);
            draw(pen, drawing);
            pen.doc.restore();
          },
        },
      ],
    },
  ];
}

function draw(pen: Pen, { coils, wires, nodes }: PlanDrawing): void {
  for (const coil of coils) drawCoil(pen, coil);
  for (const wire of wires) drawWire(pen, wire);
  for (const node of nodes) drawNode(pen, node);
}

/** A dashed edge where it was not measured. */
function drawCoil(
  pen: Pen,
  { x, y, width, height, label, value, positiveAt, basis }: PlanDrawing['coils'][number],
) {
  const { doc } = pen;
  doc.roundedRect(x, y, width, height, 6).lineWidth(1.4);
  if (basis !== 'measured') doc.dash(6, { space: 4 });
  doc.fillAndStroke(ink.paper, ink.text).undash();
  const turns = Math.max(3, Math.floor(height / 9));
  const step = height / turns;
  doc.lineWidth(1).strokeColor(ink.rule);
  for (let turn = 0; turn < turns; turn++) {
    const top = y + turn * step + 3;
    doc
      .moveTo(x + 8, top)
      .quadraticCurveTo(x + 20, top + step / 2 - 3, x + 8, top + step - 3)
      .stroke();
  }
  text(pen, label, x + 4, y - 7, size.place, ink.soft);
  const style = styled({ size: size.label, leading: size.label }, ink.text, 'figures');
  const valueWidth = pen.type.width(value, style.face, style.size);
  pen.line(value, x + 14 + (width - 18 - valueWidth) / 2, y + height / 2 - size.label / 2, style);
  if (positiveAt) text(pen, '+', positiveAt.x - 11, positiveAt.y, 15, ink.alarm);
}

function drawWire({ doc, ...pen }: Pen, { points, colours, dash, label }: PlanDrawing['wires'][number]) {
  const [ground, stripe] = colours;
  const stroke = (color: string, width: number, pattern: number[] | null) => {
    points.forEach((point, at) => {
      if (at === 0) doc.moveTo(point.x, point.y);
      else doc.lineTo(point.x, point.y);
    });
    doc.lineJoin('round').lineWidth(width).strokeColor(color);
    if (pattern) doc.addContent(`[${pattern.join(' ')}] 0 d`);
    doc.stroke().undash();
  };
  stroke(ink.text, 7, null);
  stroke(ground ? conductorInks[ground] : ink.paper, 5, null);
  if (stripe) stroke(conductorInks[stripe], 2.5, [8, 8]);
  stroke(ground === 'black' ? '#ffffff' : '#000000', 1, dash);
  text({ doc, ...pen }, label.text, label.x, label.y - 4, size.code, ink.text);
}

/** Flag for hot, knot for a joint, bars for ground, cap for an insulated end. */
const shapes = {
  flag: 'M0 10V-12L16 -6 0 0',
  knot: 'M-7 0a7 7 0 1 0 14 0a7 7 0 1 0 -14 0',
  earth: 'M0 -8V2M-9 2H9M-6 6H6M-3 10H3',
  cap: 'M-2 -6H8A6 6 0 0 1 8 6H-2z',
} as const;

function drawNode(pen: Pen, { x, y, shape, label, place, basis }: PlanDrawing['nodes'][number]) {
  const { doc } = pen;
  doc.save().translate(x, y);
  doc.path(shapes[shape]).lineWidth(1.6);
  if (shape === 'earth') doc.strokeColor(ink.text).stroke();
  else doc.fillAndStroke(shape === 'cap' ? ink.paper : ink.verdigris, ink.text);
  doc.restore();
  const bold = styled({ size: size.label, leading: size.label }, ink.text, 'strong');
  pen.line(label, x + 22, y - size.label, bold);
  const style = styled({ size: size.place, leading: size.place + 1 }, ink.soft);
  const lines = linesOf(`${place} (${basisWords[basis]})`, style, 250, pen.type);
  lines.slice(0, 2).forEach((line, at) => {
    pen.line(line, x + 22, y + 1 + at * style.leading, style);
  });
}

/** y is the middle of the letters. */
function text(pen: Pen, words: string, x: number, y: number, letters: number, color: string) {
  pen.line(words, x, y - letters / 2, styled({ size: letters, leading: letters }, color, 'strong'));
}
