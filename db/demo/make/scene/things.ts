import { noise } from './geometry';
import { apart, circle, cord, hatch, label, type Pen, rounded, shape, softShadow } from './ink';
import { bench, mat } from './layout';
import { palette } from './palette';

function drawPlank(pen: Pen, y: number, height: number, seed: number): void {
  const random = noise(seed);
  pen.fillStyle = [palette.wood, '#c1935c', '#cba26d'][seed % 3] ?? palette.wood;
  pen.fillRect(-80, y, bench.width + 160, height);
  apart(pen, () => {
    pen.strokeStyle = palette.woodDark;
    for (let i = 0; i < 13; i += 1) {
      const at = y + 8 + random() * (height - 16);
      const lean = (random() - 0.5) * 34;
      pen.globalAlpha = 0.18 + 0.3 * random();
      pen.lineWidth = 1 + random() * 2;
      const start = -80 + random() * 900;
      const length = 300 + random() * 1300;
      pen.stroke(
        new Path2D(
          `M${start} ${at} C${start + length * 0.3} ${at + lean} ${start + length * 0.6} ${at - lean} ${start + length} ${at}`,
        ),
      );
    }
    pen.globalAlpha = 0.4;
    const knot = { x: random() * bench.width, y: y + height * (0.3 + 0.4 * random()) };
    for (const r of [5, 11, 18]) {
      pen.beginPath();
      pen.ellipse(knot.x, knot.y, r * 1.9, r, 0.1, 0, Math.PI * 2);
      pen.stroke();
    }
    pen.globalAlpha = 0.75;
    pen.strokeStyle = palette.ink;
    pen.lineWidth = 3;
    pen.stroke(new Path2D(`M-80 ${y} L${bench.width + 80} ${y + 2}`));
  });
}

export function drawWood(pen: Pen): void {
  for (let i = 0; i < 7; i += 1) drawPlank(pen, -70 + i * 178, 178, i + 1);
}

export function drawMat(pen: Pen): void {
  const path = rounded(mat.x, mat.y, mat.width, mat.height, 22);
  const random = noise(77);
  softShadow(pen, path, 7);
  shape(pen, path, palette.cork, 4);
  apart(pen, () => {
    pen.clip(path);
    for (let i = 0; i < 520; i += 1) {
      pen.globalAlpha = 0.18 + 0.26 * random();
      pen.fillStyle = random() > 0.5 ? palette.corkDark : palette.corkLight;
      const size = 1.5 + random() * 4.5;
      pen.beginPath();
      pen.ellipse(
        mat.x + random() * mat.width,
        mat.y + random() * mat.height,
        size,
        size * 0.6,
        random() * 3,
        0,
        7,
      );
      pen.fill();
    }
  });
  apart(pen, () => {
    pen.strokeStyle = palette.corkDark;
    pen.setLineDash([13, 9]);
    pen.lineWidth = 2.5;
    pen.stroke(rounded(mat.x + 13, mat.y + 13, mat.width - 26, mat.height - 26, 14));
  });
}

function drawTicket(pen: Pen): void {
  apart(pen, () => {
    pen.translate(1116, 148);
    pen.rotate(-0.07);
    const card = new Path2D('M-116 -118 L92 -118 L116 -94 L116 122 L-116 122 Z');
    softShadow(pen, card, 7);
    shape(pen, card, palette.paper, 4);
    shape(pen, circle(-84, -88, 9), palette.woodDark, 3);
    label(pen, 'No. 117', 8, -84, 32);
    for (const [i, text] of ['crackle, neck', 'rewire', 'set-up: free', 'strings: clean'].entries()) {
      label(pen, text, -70, -28 + i * 38, 24, 'left');
      shape(pen, rounded(-98, -37 + i * 38, 17, 17, 3), palette.cream, 2);
    }
    cord(pen, new Path2D('M-92 -54 L96 -54'), palette.leadRed, 0.4);
  });
}

function drawTea(pen: Pen): void {
  softShadow(pen, circle(1450, 150, 84), 10);
  shape(pen, circle(1450, 150, 84), palette.paperDark, 4);
  shape(pen, circle(1450, 150, 58), palette.cream, 4);
  shape(pen, circle(1450, 150, 46), palette.tea, 3);
  pen.fillStyle = 'rgba(255, 226, 170, 0.35)';
  pen.fill(new Path2D('M1420 132 Q1440 112 1466 118 Q1440 124 1428 146 Z'));
  cord(pen, new Path2D('M1500 112 C1536 90 1548 120 1512 134'), palette.cream, 11);
}

function drawIronStand(pen: Pen): void {
  const base = rounded(1600, 196, 190, 116, 18);
  softShadow(pen, base, 9);
  shape(pen, base, '#4a4641', 4);
  shape(pen, rounded(1618, 252, 62, 46, 8), '#cda43f', 3);
  hatch(pen, rounded(1618, 252, 62, 46, 8), new DOMRect(1618, 252, 62, 46), {
    gap: 5,
    turn: 0.8,
    alpha: 0.5,
    seed: 12,
  });
  for (let i = 0; i < 5; i += 1)
    cord(pen, new Path2D(`M${1694 + i * 17} ${272 - i * 14} q16 -8 8 -26`), palette.steel, 4);
}

function drawReel(pen: Pen): void {
  const { x, y } = { x: 1614, y: 92 };
  softShadow(pen, circle(x, y, 50), 10);
  shape(pen, circle(x, y, 50), palette.steelDark, 4);
  pen.strokeStyle = '#dedac9';
  pen.lineWidth = 3;
  for (const radius of [42, 35, 28]) pen.stroke(circle(x, y, radius));
  shape(pen, circle(x, y, 16), palette.woodLight, 3);
  cord(pen, new Path2D(`M${x - 38} ${y + 34} c-36 42 -6 60 40 52`), '#dedac9', 3);
}

function drawPliers(pen: Pen): void {
  apart(pen, () => {
    pen.translate(872, 176);
    pen.rotate(0.5);
    const left = new Path2D('M-10 -20 C-44 30 -40 90 -24 132 L-8 130 C-18 88 -14 40 6 0 Z');
    const right = new Path2D('M10 -20 C44 30 40 90 24 132 L8 130 C18 88 14 40 -6 0 Z');
    const jaws = new Path2D('M-17 -4 C-22 -44 -10 -84 -3 -104 L3 -104 C10 -84 22 -44 17 -4 Z');
    for (const part of [left, right, jaws]) softShadow(pen, part, 7);
    shape(pen, left, palette.meterCase, 3);
    shape(pen, right, palette.meterCase, 3);
    shape(pen, jaws, palette.steel, 3);
    cord(pen, new Path2D('M0 -100 L0 -16'), palette.steelDark, 0.6);
    shape(pen, circle(0, -6, 9), palette.steelDark, 3);
  });
}

function drawControlPlate(pen: Pen): void {
  apart(pen, () => {
    pen.translate(1110, 962);
    pen.rotate(0.12);
    const plate = rounded(-122, -50, 244, 100, 42);
    softShadow(pen, plate, 6);
    shape(pen, plate, palette.black, 4);
    for (const x of [-60, 40]) {
      shape(pen, circle(x, 4, 31), palette.brass, 3);
      shape(pen, circle(x, 4, 20), '#e0bd6b', 3);
      cord(pen, new Path2D(`M${x} -10 L${x + 3} -24`), palette.ink, 1);
    }
    for (const [x, y] of [
      [-98, -2],
      [96, 2],
    ] as const)
      shape(pen, circle(x, y, 5), palette.steel, 2);
  });
  for (const [x, y] of [
    [1260, 930],
    [1284, 950],
    [1262, 974],
  ] as const) {
    shape(pen, circle(x, y, 6), palette.steel, 2);
    cord(pen, new Path2D(`M${x - 3} ${y - 2} L${x + 3} ${y + 2}`), palette.ink, 0.4);
  }
}

function drawPencilAndRule(pen: Pen): void {
  apart(pen, () => {
    pen.translate(1360, 252);
    pen.rotate(0.04);
    const rule = rounded(-260, 34, 560, 36, 3);
    softShadow(pen, rule, 4);
    shape(pen, rule, '#d8b36a', 3);
    for (let i = 0; i < 55; i += 1)
      cord(pen, new Path2D(`M${-250 + i * 10} 37 l0 ${i % 5 === 0 ? 14 : 8}`), palette.ink, 0.2);
    pen.rotate(-0.12);
    const pencil = new Path2D('M-40 2 L-14 -7 L170 -7 L170 11 L-14 11 Z');
    softShadow(pen, pencil, 5);
    shape(pen, pencil, '#3f6f78', 3);
    shape(pen, new Path2D('M-40 2 L-14 -7 L-14 11 Z'), palette.woodLight, 3);
  });
}

/** All that lies on the bench and never moves. */
export function drawThings(pen: Pen): void {
  drawTicket(pen);
  drawTea(pen);
  drawIronStand(pen);
  drawReel(pen);
  drawPliers(pen);
  drawPencilAndRule(pen);
  drawControlPlate(pen);
}
