import { conductorInks, type PlanDrawing } from '@/lib/wiring';
import { markupText } from '../title';

const ink = '#1b1a19';
const paper = '#ffffff';

/** A wiring drawing as one `svg` element that stands in any HTML page: no style sheet, no font, no address. */
export function drawInSvg(drawing: PlanDrawing): string {
  const { height, title, description } = drawing;
  const width = widthOf(drawing);
  const spoken = attribute(`${title}. ${description}`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${spoken}" font-family="sans-serif" font-size="12" fill="${ink}">`,
    `<rect width="${width}" height="${height}" fill="${paper}"/>`,
    ...drawing.coils.map(coil),
    ...drawing.wires.map(wire),
    ...drawing.nodes.map(node),
    '</svg>',
  ].join('');
}

/** The usual width of a letter at this size; a font is the reader's own. */
const letterWidth = 6.8;
const placeX = 22;

/** Wide enough for the longest words about a place. */
function widthOf({ width, nodes }: PlanDrawing): number {
  return Math.max(
    width,
    ...nodes.map((node) => Math.ceil(node.x + placeX + placeOf(node).length * letterWidth)),
  );
}

function placeOf({ place, basis }: PlanDrawing['nodes'][number]): string {
  return `${place} (${basis})`;
}

function coil({
  x,
  y,
  width,
  height,
  label,
  value,
  basis,
  positiveAt,
}: PlanDrawing['coils'][number]): string {
  const dashes = basis === 'measured' ? '' : ' stroke-dasharray="6 4"';
  return [
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="6" fill="none" stroke="${ink}" stroke-width="1.5"${dashes}/>`,
    text(x + 6, y - 5, label),
    text(x + width / 2, y + height / 2 + 4, value, ' text-anchor="middle" font-weight="bold"'),
    positiveAt ? text(positiveAt.x - 10, positiveAt.y + 5, '+', ' font-size="16" text-anchor="middle"') : '',
  ].join('');
}

function wire({ points, colours, dash, label }: PlanDrawing['wires'][number]): string {
  const [ground, stripe] = colours;
  const line = (stroke: string, width: number, more = '') =>
    `<polyline points="${points.map(({ x, y }) => `${x},${y}`).join(' ')}" fill="none" stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round"${more}/>`;
  return [
    line(ink, 7),
    line(ground ? conductorInks[ground] : paper, 5),
    stripe ? line(conductorInks[stripe], 2.5, ' stroke-dasharray="8 8"') : '',
    line(
      ground === 'black' ? '#ffffff' : '#000000',
      1,
      ` stroke-dasharray="${dash.join(' ')}" stroke-opacity="0.75"`,
    ),
    text(label.x, label.y, label.text, ' font-weight="bold"'),
  ].join('');
}

/** The shape stands for the role: flag for hot, knot for a joint, bars for ground, cap for an insulated end. */
const shapes: Readonly<Record<PlanDrawing['nodes'][number]['shape'], string>> = {
  flag: `<path d="M0 10V-12L16 -6 0 0" stroke="${ink}"/>`,
  knot: '<circle r="7"/>',
  earth: `<path d="M0 -8V2M-9 2H9M-6 6H6M-3 10H3" fill="none" stroke="${ink}" stroke-width="2"/>`,
  cap: '<path d="M-2 -6H8A6 6 0 0 1 8 6H-2z"/>',
};

function node(node: PlanDrawing['nodes'][number]): string {
  const { x, y, shape, label } = node;
  const words = text(placeX, 0, label, ' font-weight="bold"') + text(placeX, 14, placeOf(node));
  return `<g transform="translate(${x} ${y})">${shapes[shape]}${words}</g>`;
}

function text(x: number, y: number, words: string, more = ''): string {
  return `<text x="${x}" y="${y}"${more}>${markupText(words)}</text>`;
}

function attribute(words: string): string {
  return markupText(words).replaceAll('"', '&quot;');
}
