import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import { fromBase, kindOf } from '@/lib/readings';
import type { ReadingKindId, UnitId } from '@/shared/readings';
import type { ReadingGroup } from '@/shared/reference';

/** What a plot is drawn of. */
export interface PlotOf {
  kind: ReadingKindId;
  groups: readonly ReadingGroup[];
  /** A value to be seen among them, in the base unit. */
  mark?: { value: number; said: string } | undefined;
  /** In CSS pixels; the plot is drawn for it, so that its words stay readable. */
  width: number;
  /** Names the title and the description, which must be alone on the page. */
  id: string;
}

/** More rows than these say less, not more. */
const mostRows = 12;
const rowHeight = 56;
/** From this ratio of the largest to the smallest, equal steps would press the small ones together. */
const wideRatio = 40;
/** Of a row, from its top: name above, box below. */
const box = { top: 26, bottom: 12 };

interface Row {
  at: string;
  name: string;
  low: number;
  high: number;
  lower: number;
  median: number;
  upper: number;
}

/**
 * Groups of readings as boxes from quartile to quartile on one scale, an SVG of its own: no script, no style sheet, inks of
 * the page. Groups too few to judge by show their points. Null where there is no value to draw.
 */
export function readingsPlot({ kind, groups, mark, width, id }: PlotOf): string | null {
  const drawn = groups.filter(({ n }) => n > 0).slice(0, mostRows);
  if (drawn.length === 0) return null;
  const unit = unitFor(kind, drawn);
  const shown = (value: number) => fromBase(value, unit);
  const boxes = drawn.flatMap((group, at) => rowOf(group, at, shown));
  const points = drawn.flatMap(({ few }, at) =>
    few.map((value) => ({ at: String(at), value: shown(value) })),
  );
  const names = drawn.map((group, at) => ({ at: String(at), name: nameOf(group) }));
  const ends = drawn.flatMap(({ min, max }) => [min ?? 0, max ?? 0].map(shown));
  if (mark) ends.push(shown(mark.value));
  const svg = Plot.plot({
    document: parseHTML('<html></html>').document,
    width,
    height: drawn.length * rowHeight + 70,
    ...{ marginLeft: 12, marginRight: 16, marginTop: mark ? 34 : 12, marginBottom: 46 },
    x: {
      ...scaleFor(ends, width),
      label: `${kindOf(kind).label} (${unit})`,
      labelAnchor: 'center',
      labelArrow: 'none',
    },
    y: { type: 'band', domain: names.map(({ at }) => at), axis: null, padding: 0 },
    marks: [
      Plot.gridX({ strokeOpacity: 0.18 }),
      Plot.ruleY(boxes, { y: 'at', x1: 'low', x2: 'high', strokeWidth: 1.5, dy: middle }),
      Plot.tickX(boxes, { y: 'at', x: 'low', strokeWidth: 1.5, ...insets }),
      Plot.tickX(boxes, { y: 'at', x: 'high', strokeWidth: 1.5, ...insets }),
      Plot.barX(boxes, {
        y: 'at',
        x1: 'lower',
        x2: 'upper',
        fill: ground,
        stroke: 'currentColor',
        ...insets,
      }),
      Plot.tickX(boxes, { y: 'at', x: 'median', strokeWidth: 3, ...insets }),
      Plot.dot(points, { y: 'at', x: 'value', r: 5, strokeWidth: 2, dy: middle }),
      Plot.text(names, { y: 'at', text: 'name', frameAnchor: 'left', ...lettering, dy: 14 - rowHeight / 2 }),
      ...(mark ? marksOf(shown(mark.value), mark.said) : []),
    ],
  });
  return asPicture(svg, id, describe(kind, drawn, mark));
}

const ground = 'var(--brass-ground)';
const middle = (box.top - box.bottom) / 2;
const insets = { insetTop: box.top, insetBottom: box.bottom };
const lettering = { textAnchor: 'start', fontSize: 14, fill: 'currentColor' } as const;

function marksOf(value: number, said: string): Plot.Markish[] {
  const at = [{ value, said }];
  return [
    Plot.ruleX(at, { x: 'value', stroke: 'var(--verdigris)', strokeWidth: 3, strokeDasharray: '6 4' }),
    Plot.text(at, {
      x: 'value',
      text: 'said',
      frameAnchor: 'top',
      dy: -22,
      fontSize: 14,
      fill: 'var(--verdigris)',
    }),
  ];
}

function rowOf({ min, max, quartiles }: ReadingGroup, at: number, shown: (value: number) => number): Row[] {
  if (!quartiles || min === null || max === null) return [];
  const { lower, median, upper } = quartiles;
  return [
    {
      ...{ at: String(at), name: '', low: shown(min), high: shown(max) },
      ...{ lower: shown(lower), median: shown(median), upper: shown(upper) },
    },
  ];
}

function nameOf({ place, instrument, n }: ReadingGroup): string {
  return `${place}, ${instrument} (${n})`;
}

/** The usual unit of the kind in which the middle of what is drawn is not below one. */
function unitFor(kind: ReadingKindId, groups: readonly ReadingGroup[]): UnitId {
  const { units, baseUnit } = kindOf(kind);
  const highest = Math.max(...groups.map(({ max }) => Math.abs(max ?? 0)));
  const usual = units[0] ?? baseUnit;
  if (Math.abs(fromBase(highest, usual)) >= 1) return usual;
  return units.find((unit) => Math.abs(fromBase(highest, unit)) >= 1) ?? usual;
}

function scaleFor(values: readonly number[], width: number): Plot.ScaleOptions {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const ticks = Math.floor(width / 80);
  if (low > 0 && high / low > wideRatio) return { type: 'log', domain: [low * 0.8, high * 1.25], ticks };
  const edge = (high - low || Math.abs(high) || 1) * 0.06;
  return { type: 'linear', domain: [low - edge, high + edge], ticks };
}

function describe(kind: ReadingKindId, groups: readonly ReadingGroup[], mark: PlotOf['mark']) {
  const few = groups.some(({ quartiles }) => quartiles === null);
  return {
    title: `${kindOf(kind).label} by what was measured`,
    description: [
      'A box reaches from the lower to the upper quartile, with the median as a line; thin lines reach to the least and the most.',
      few ? 'Circles are single readings where there are too few to judge.' : '',
      mark ? `A broken line marks ${mark.said}.` : '',
      'The table holds the same figures.',
    ]
      .filter(Boolean)
      .join(' '),
  };
}

/** Plot writes a style sheet of its own into the picture, which the page's policy refuses and its style replaces. */
function asPicture(svg: Element, id: string, { title, description }: ReturnType<typeof describe>): string {
  svg.querySelector('style')?.remove();
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  for (const part of svg.children) part.setAttribute('aria-hidden', 'true');
  for (const [name, text] of [
    ['desc', description],
    ['title', title],
  ] as const) {
    const node = svg.ownerDocument.createElementNS('http://www.w3.org/2000/svg', name);
    node.setAttribute('id', `${id}-${name}`);
    node.textContent = text;
    svg.prepend(node);
  }
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-labelledby', `${id}-title`);
  svg.setAttribute('aria-describedby', `${id}-desc`);
  svg.removeAttribute('font-family');
  return svg.outerHTML;
}
