import { mix, type Point } from './geometry';
import { apart, circle, cord, cordShadow, hatch, type Pen, rounded, shadow, shape } from './ink';
import { plugs } from './meters';
import { palette } from './palette';

export type Held = Point & { lift: number };

const probeTurn = { red: -0.2, black: 0.2 } as const;

/** A meter probe with its lead: tip at `at`, handle away to the right, lead to the plug of either meter. */
export function drawProbe(
  pen: Pen,
  colour: 'red' | 'black',
  at: Held,
  needleShare: number,
  sway: number,
): void {
  const fill = colour === 'red' ? palette.leadRed : palette.leadBlack;
  const turn = probeTurn[colour];
  const tail = { x: at.x + 158 * Math.cos(turn), y: at.y + 158 * Math.sin(turn) };
  const plug = {
    x: mix(plugs.digital[colour].x, plugs.needle[colour].x, needleShare),
    y: mix(plugs.digital[colour].y, plugs.needle[colour].y, needleShare),
  };
  const reach = 46 + 0.16 * Math.abs(plug.x - tail.x);
  const lead = new Path2D(
    `M${tail.x} ${tail.y} C${tail.x + reach * Math.cos(turn)} ${tail.y + reach * Math.sin(turn) + 26 + sway} ` +
      `${plug.x - reach} ${plug.y + 24 + sway} ${plug.x} ${plug.y}`,
  );
  cordShadow(pen, lead, 8);
  cord(pen, lead, fill, 8);
  shape(pen, rounded(plug.x - 20, plug.y - 9, 26, 18, 5), fill, 3);
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.rotate(turn);
    shadow(pen, rounded(34, -10, 124, 20, 9), 7 + 8 * at.lift);
    cord(pen, new Path2D('M1 0 L38 0'), '#d9d2c0', 4);
    shape(pen, new Path2D('M34 -5 L52 -11 L150 -10 Q160 0 150 10 L52 11 L34 5 Z'), fill);
    shape(pen, rounded(56, -14, 11, 28, 4), fill, 3);
    for (let x = 84; x < 132; x += 11) cord(pen, new Path2D(`M${x} -5 L${x} 5`), palette.ink, 0.5);
  });
}

/** A screwdriver with a wooden handle; `at` is its tip, the handle goes up and away. */
export function drawScrewdriver(pen: Pen, at: Held): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.rotate(-1.98);
    shadow(pen, rounded(150, -17, 150, 34, 16), 12 + 10 * at.lift);
    cord(pen, new Path2D('M12 0 L160 0'), palette.steel, 9);
    shape(pen, new Path2D('M0 -3 L16 -7 L16 7 L0 3 Z'), palette.steel, 2);
    const handle = new Path2D('M150 -12 Q176 -24 196 -16 L296 -20 Q318 0 296 20 L196 16 Q176 24 150 12 Z');
    shape(pen, handle, '#9c4f2c', 4);
    hatch(pen, handle, new DOMRect(150, -24, 168, 48), { gap: 8, turn: 0, alpha: 0.35, seed: 71 });
    shape(pen, rounded(146, -13, 14, 26, 4), palette.brass, 3);
  });
}

/** A soldering iron; `at` is its tip, the handle goes up to the right. */
export function drawIron(pen: Pen, at: Held): void {
  apart(pen, () => {
    pen.translate(at.x, at.y);
    pen.rotate(-0.72);
    shadow(pen, rounded(60, -15, 230, 30, 14), 14 + 8 * at.lift);
    shape(pen, new Path2D('M0 -2 L30 -8 L30 8 L0 2 Z'), '#c9b27a', 3);
    shape(pen, rounded(28, -10, 78, 20, 4), palette.steel, 3);
    hatch(pen, rounded(28, -10, 78, 20, 4), new DOMRect(28, -10, 78, 20), {
      gap: 7,
      turn: 1.57,
      alpha: 0.35,
      seed: 81,
    });
    shape(pen, rounded(102, -20, 14, 40, 5), palette.black, 3);
    shape(
      pen,
      new Path2D('M114 -14 Q150 -20 170 -15 L280 -17 Q296 0 280 17 L170 15 Q150 20 114 14 Z'),
      '#2f5a63',
      4,
    );
    cord(pen, new Path2D('M288 0 C340 -10 380 40 460 10'), palette.black, 9);
  });
}

/** A curl of smoke that climbs, widens and fades. */
export function drawSmoke(pen: Pen, from: Point, strength: number, ms: number): void {
  if (strength <= 0.01) return;
  apart(pen, () => {
    pen.lineCap = 'round';
    for (let i = 0; i < 60; i += 1) {
      const share = i / 60;
      const t = ms / 620 - share * 5.2;
      const x = from.x + share * 34 * Math.sin(t) + share * share * 60 - 8;
      const y = from.y - 8 - share * 210;
      pen.fillStyle = `rgba(250, 243, 228, ${0.13 * strength * (1 - share) ** 1.2})`;
      pen.fill(circle(x, y, 4 + share * 22));
    }
  });
}

/** A plectrum that goes down over the strings as `share` runs from 0 to 1. */
export function drawPlectrum(pen: Pen, share: number): void {
  if (share <= 0 || share >= 1) return;
  apart(pen, () => {
    pen.translate(430 + 26 * share, mix(400, 690, share));
    pen.rotate(0.5 - share * 0.4);
    const pick = new Path2D('M-34 -38 Q0 -58 34 -38 Q32 4 0 34 Q-32 4 -34 -38 Z');
    shadow(pen, pick, 16);
    shape(pen, pick, '#b5652f', 4);
    hatch(pen, pick, new DOMRect(-34, -50, 68, 84), { gap: 9, turn: 0.6, alpha: 0.3, seed: 91 });
  });
}

/** Short ink bolts around a place that crackles. */
export function drawCrackle(pen: Pen, around: Point, ms: number): void {
  apart(pen, () => {
    pen.translate(around.x, around.y);
    pen.rotate(Math.floor(ms / 90) * 0.37);
    for (let i = 0; i < 7; i += 1) {
      pen.rotate((Math.PI * 2) / 7);
      cord(pen, new Path2D('M142 0 L164 -12 L162 9 L190 -5'), '#f3c14a', 6);
    }
  });
}
