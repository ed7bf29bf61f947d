import type { Point } from './geometry';
import { apart, circle, cord, cordShadow, hatch, type Pen, rounded, shadow, shape } from './ink';
import { type CableState, cableAt, pickupAt } from './layout';
import { type Conductor, conductorColours, conductors, palette } from './palette';

function drawBobbin(pen: Pen, x: number, colour: string, pole: (y: number) => void): void {
  const bobbin = rounded(x - 22, -96, 44, 192, 20);
  shape(pen, bobbin, colour);
  hatch(pen, bobbin, new DOMRect(x - 22, -96, 44, 192), { gap: 11, turn: 0.9, alpha: 0.13, seed: 41 + x });
  for (let i = 0; i < 6; i += 1) pole(-70 + i * 28);
}

/** A two-coil pickup about its middle: screws in the cream bobbin, slugs in the black one. */
export function drawPickupBody(pen: Pen): void {
  const plate = rounded(-56, -106, 112, 212, 9);
  shape(pen, plate, palette.brass);
  drawBobbin(pen, -25, palette.cream, (y) => {
    shape(pen, circle(-25, y, 8.5), palette.steel, 2);
    cord(pen, new Path2D(`M-30 ${y - 3} L-20 ${y + 3}`), palette.steelDark, 0.6);
  });
  drawBobbin(pen, 24, '#37302b', (y) => shape(pen, circle(24, y, 8.5), '#d4cdbd', 2));
}

/** The pickup where it now lies, with a longer shadow while it is lifted. */
export function drawPickup(pen: Pen, pickupOut: number): void {
  const at = pickupAt(pickupOut);
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.rotate(at.turn);
    if (pickupOut > 0) shadow(pen, rounded(-56, -106, 112, 212, 9), 8 + 26 * at.lift);
    drawPickupBody(pen);
  });
}

function tipOf(from: Point, to: Point, lengthPx: number): Point {
  const far = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: to.x - ((to.x - from.x) / far) * lengthPx, y: to.y - ((to.y - from.y) / far) * lengthPx };
}

/** How far each conductor bends from the straight way, so that two that meet do not hide each other. */
const bow: Record<Conductor, number> = { red: -10, white: -24, green: 20, black: 10, bare: 6 };

function drawConductor(pen: Pen, name: Conductor, split: Point, end: Point, sway: number): void {
  const middle = { x: (split.x + end.x * 1.4) / 2.4, y: split.y * 0.35 + end.y * 0.65 + bow[name] + sway };
  const bared = tipOf(middle, end, name === 'bare' ? 0 : 17);
  cordShadow(pen, new Path2D(`M${split.x} ${split.y} Q${middle.x} ${middle.y} ${end.x} ${end.y}`), 7, 4);
  const wire = new Path2D(`M${split.x} ${split.y} Q${middle.x} ${middle.y} ${bared.x} ${bared.y}`);
  if (name !== 'bare') cord(pen, new Path2D(`M${bared.x} ${bared.y} L${end.x} ${end.y}`), '#d9a35c', 3);
  cord(pen, wire, conductorColours[name], name === 'bare' ? 5 : 8);
  if (name !== 'bare') return;
  apart(pen, () => {
    pen.strokeStyle = palette.ink;
    pen.globalAlpha = 0.6;
    pen.lineWidth = 5;
    pen.setLineDash([1.5, 5]);
    pen.stroke(wire);
  });
}

/** The grey cable from the pickup and its five ends. Hidden under the top while the pickup is at home. */
export function drawCable(pen: Pen, state: CableState, ms: number): void {
  const { split, ends } = cableAt(state);
  const at = pickupAt(state.pickupOut);
  if (state.pickupOut > 0.02) {
    const start = { x: at.x + 52, y: at.y + 82 };
    const jacket = new Path2D(
      `M${start.x} ${start.y} C${start.x + 46} ${start.y + 54} ${split.x - 84} ${split.y + 40} ${split.x} ${split.y}`,
    );
    cordShadow(pen, jacket, 15);
    cord(pen, jacket, '#8b8478', 15);
  }
  for (const [i, name] of conductors.entries()) {
    drawConductor(pen, name, split, ends[name], 2.2 * Math.sin(ms / 1700 + i));
  }
  if (state.pickupOut > 0.02) shape(pen, circle(split.x, split.y, 10), palette.black, 2);
}

/** Bright bead of solder where white and green meet, and the sleeve that is slid over it. */
export function drawJoint(pen: Pen, state: CableState, solder: number, sleeve: number): void {
  const { x, y } = cableAt(state).ends.white;
  if (solder > 0) {
    shape(pen, circle(x - 1, y, 3 + 6 * solder), '#d8d4c6', 2);
    pen.fillStyle = '#fffbe9';
    pen.fill(circle(x - 3, y - 3, 2.4 * solder));
  }
  if (sleeve <= 0) return;
  apart(pen, () => {
    pen.globalAlpha = Math.min(1, sleeve * 4);
    pen.translate(x + 60 * (1 - sleeve) - 5, y);
    const tube = rounded(-24, -12, 46, 24, 8);
    shadow(pen, tube, 4);
    shape(pen, tube, '#4d4640');
    cord(pen, new Path2D('M-14 -5 L14 -5'), '#8d8477', 0.6);
  });
}
