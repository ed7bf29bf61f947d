import type { Shown } from '../display';
import { drawDigits } from './digits';
import { apart, circle, cord, hatch, label, type Pen, rounded, shape, softShadow } from './ink';
import { digitalMeter, needleMeter } from './layout';
import { palette } from './palette';

const window = { x: digitalMeter.x + 20, y: digitalMeter.y + 24, width: 218, height: 128 };

const dial = { x: digitalMeter.x + 160, y: digitalMeter.y + 244 };
const ranges = [
  ['kΩ', 0],
  ['Ω', -0.65],
  ['V', -1.3],
] as const;

/** Plugs of the leads, on the left flank of each meter: red above, black below. */
export const plugs = {
  digital: { red: { x: digitalMeter.x - 4, y: 706 }, black: { x: digitalMeter.x - 4, y: 744 } },
  needle: { red: { x: needleMeter.x - 4, y: 868 }, black: { x: needleMeter.x - 4, y: 908 } },
} as const;

export function drawDigitalCase(pen: Pen): void {
  const { x, y, width, height } = digitalMeter;
  const outer = rounded(x, y, width, height, 30);
  softShadow(pen, outer, 14);
  shape(pen, outer, palette.meterCase, 5);
  hatch(pen, outer, new DOMRect(x, y, width, height), { gap: 12, turn: 0.8, alpha: 0.13, seed: 51 });
  shape(pen, rounded(x + 12, y + 14, width - 24, height - 28, 20), palette.meterFace, 3);
  shape(
    pen,
    rounded(window.x - 5, window.y - 5, window.width + 10, window.height + 10, 10),
    palette.black,
    3,
  );
  for (let i = 0; i < 9; i += 1) {
    const turn = -2.6 + i * 0.65;
    const at = (r: number) => `${dial.x + r * Math.sin(turn)} ${dial.y - r * Math.cos(turn)}`;
    cord(pen, new Path2D(`M${at(47)} L${at(52)}`), palette.ink, 1);
  }
  for (const [text, turn] of ranges) {
    label(pen, text, dial.x + 69 * Math.sin(turn), dial.y - 67 * Math.cos(turn), 17);
  }
}

function drawDial(pen: Pen, unit: Shown['unit']): void {
  apart(pen, () => {
    pen.translate(dial.x, dial.y);
    pen.rotate(unit === 'kΩ' ? 0 : -0.65);
    shape(pen, circle(0, 0, 40), palette.black, 3);
    shape(pen, rounded(-8, -38, 16, 74, 7), '#5a4c41', 2);
    cord(pen, new Path2D('M0 -32 L0 -20'), palette.cream, 3);
  });
}

/** The lit glass with what stands on it now, and the dial turned to its range. */
export function drawDisplay(pen: Pen, shown: Shown): void {
  drawDial(pen, shown.unit);
  const glass = rounded(window.x, window.y, window.width, window.height, 7);
  pen.fillStyle = palette.glass;
  pen.fill(glass);
  drawDigits(pen, shown.digits, window.x + 176, window.y + 15, 37);
  apart(pen, () => {
    pen.fillStyle = palette.segment;
    pen.font = 'bold 27px "DejaVu Sans"';
    pen.textAlign = 'right';
    pen.fillText(shown.unit, window.x + window.width - 8, window.y + window.height - 10);
    pen.clip(glass);
    pen.strokeStyle = 'rgba(255, 255, 240, 0.2)';
    pen.lineWidth = 26;
    pen.stroke(new Path2D(`M${window.x + 20} ${window.y + 150} L${window.x + 110} ${window.y - 20}`));
    pen.strokeStyle = 'rgba(40, 46, 30, 0.35)';
    pen.lineWidth = 7;
    pen.stroke(glass);
  });
}

const pivot = { x: needleMeter.x + needleMeter.width / 2, y: needleMeter.y + 150 };
const fullScaleTurn = 0.86;

function onArc(turn: number, radius: number): string {
  return `${pivot.x + radius * Math.sin(turn)} ${pivot.y - radius * Math.cos(turn)}`;
}

export function drawNeedleCase(pen: Pen): void {
  const { x, y, width, height } = needleMeter;
  const outer = rounded(x, y, width, height, 18);
  softShadow(pen, outer, 14);
  shape(pen, outer, palette.bakelite, 5);
  hatch(pen, outer, new DOMRect(x, y, width, height), { gap: 9, turn: -0.6, alpha: 0.3, seed: 61 });
  shape(pen, rounded(x + 14, y + 13, width - 28, 130, 10), palette.cream, 3);
  pen.strokeStyle = palette.ink;
  pen.lineWidth = 3;
  pen.beginPath();
  pen.arc(pivot.x, pivot.y, 108, -Math.PI / 2 - fullScaleTurn, -Math.PI / 2 + fullScaleTurn);
  pen.stroke();
  for (let i = -5; i <= 5; i += 1) {
    const turn = (i / 5) * fullScaleTurn;
    pen.lineWidth = i % 5 === 0 ? 4 : 2;
    pen.stroke(new Path2D(`M${onArc(turn, 108)} L${onArc(turn, i % 5 === 0 ? 122 : 117)}`));
  }
  apart(pen, () => {
    pen.fillStyle = palette.ink;
    pen.textAlign = 'center';
    pen.textBaseline = 'middle';
    pen.font = 'bold 27px "DejaVu Sans"';
    pen.fillText('−', x + 44, y + 106);
    pen.fillText('+', x + width - 44, y + 106);
    pen.font = 'bold 17px "DejaVu Sans"';
    pen.fillText('0', pivot.x, y + 62);
  });
}

/** The needle, the cover over its pivot and the adjusting screw. `swing` from -1 to 1. */
export function drawNeedle(pen: Pen, swing: number): void {
  const turn = swing * fullScaleTurn;
  apart(pen, () => {
    pen.clip(rounded(needleMeter.x + 14, needleMeter.y + 13, needleMeter.width - 28, 130, 10));
    pen.lineCap = 'round';
    pen.strokeStyle = 'rgba(80, 50, 25, 0.35)';
    pen.lineWidth = 5;
    pen.stroke(new Path2D(`M${pivot.x + 5} ${pivot.y + 7} L${onArc(turn + 0.03, 108)}`));
    pen.strokeStyle = palette.leadRed;
    pen.lineWidth = 5;
    pen.stroke(new Path2D(`M${pivot.x} ${pivot.y} L${onArc(turn, 116)}`));
  });
  shape(pen, rounded(pivot.x - 44, pivot.y - 16, 88, 30, 12), palette.bakelite, 3);
  shape(pen, circle(pivot.x, pivot.y - 2, 8), palette.brass, 2);
}
