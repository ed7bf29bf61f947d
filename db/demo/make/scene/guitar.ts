import { apart, circle, cord, hatch, type Pen, rounded, shape, softShadow } from './ink';
import { bridgePickup, cavity, jack, pickupInGuitar, tonePot, volumePot } from './layout';
import { palette } from './palette';

const outline = new Path2D(
  'M192 482 C152 480 128 440 112 402 C98 366 64 352 56 316 C50 268 112 244 184 250 C284 258 344 302 432 292 ' +
    'C564 274 642 190 764 200 C894 212 942 402 942 545 C942 702 892 884 764 894 C642 904 562 808 432 800 ' +
    'C330 792 280 834 192 838 C110 842 62 812 66 770 C70 736 102 722 114 690 C128 646 154 604 192 602 Z',
);
const outlineBox = new DOMRect(50, 190, 900, 710);

function drawNeck(pen: Pen): void {
  const neck = new Path2D('M-90 496 L214 478 L214 606 L-90 588 Z');
  softShadow(pen, neck, 10);
  shape(pen, neck, palette.maple, 4);
  const board = new Path2D('M-90 503 L206 487 L212 542 L206 597 L-90 581 Z');
  shape(pen, board, palette.fingerboard);
  for (const x of [-74, -26, 20, 62, 101, 138, 173])
    cord(pen, new Path2D(`M${x} 497 L${x} 587`), palette.brass, 3);
  for (const x of [41, 120]) shape(pen, circle(x, 542, 8), palette.cream, 2);
}

function drawBody(pen: Pen): void {
  softShadow(pen, outline, 18);
  const paint = pen.createRadialGradient(470, 470, 60, 500, 545, 520);
  paint.addColorStop(0, palette.bodyLight);
  paint.addColorStop(0.6, palette.body);
  paint.addColorStop(1, palette.bodyDark);
  shape(pen, outline, paint, 5);
  apart(pen, () => {
    pen.clip(outline);
    pen.strokeStyle = palette.cream;
    pen.lineWidth = 24;
    pen.stroke(outline);
    pen.strokeStyle = palette.ink;
    pen.lineWidth = 28;
    pen.globalAlpha = 0.22;
    pen.stroke(outline);
    pen.globalAlpha = 1;
    pen.strokeStyle = palette.cream;
    pen.lineWidth = 22;
    pen.stroke(outline);
    pen.strokeStyle = palette.ink;
    pen.lineWidth = 6;
    pen.stroke(outline);
  });
  const shade = new Path2D(
    'M430 800 C562 808 642 904 764 894 C892 884 942 702 942 545 C900 720 830 820 700 812 Z',
  );
  hatch(pen, shade, outlineBox, { gap: 13, turn: -0.7, alpha: 0.22, seed: 5 });
}

function drawPot(pen: Pen, x: number, y: number): void {
  for (const dx of [-26, 0, 26])
    cord(pen, new Path2D(`M${x + dx} ${y - 22} L${x + dx} ${y - 36}`), palette.brass, 7);
  shape(pen, circle(x, y, 33), palette.steel);
  hatch(pen, circle(x, y, 33), new DOMRect(x - 33, y - 33, 66, 66), {
    gap: 7,
    turn: 0.8,
    alpha: 0.25,
    seed: x,
  });
  shape(pen, circle(x + 10, y + 26, 8), palette.steelDark, 2);
}

function drawCavity(pen: Pen): void {
  const rout = rounded(cavity.x, cavity.y, cavity.width, cavity.height, 46);
  shape(pen, rout, palette.cavity, 4);
  const box = new DOMRect(cavity.x, cavity.y, cavity.width, cavity.height);
  hatch(pen, rout, box, { gap: 9, turn: 0.5, alpha: 0.35, seed: 9 });
  cord(pen, new Path2D('M694 722 C716 690 742 690 756 722'), '#d8ccb0', 5);
  cord(pen, new Path2D('M700 770 C722 800 742 798 752 776'), palette.steelDark, 5);
  cord(pen, new Path2D('M806 728 C824 716 838 724 852 742'), '#d9b347', 5);
  drawPot(pen, volumePot.x, volumePot.y);
  drawPot(pen, tonePot.x, tonePot.y);
  shape(pen, new Path2D('M716 706 C732 696 744 696 758 706 C746 722 728 722 716 706 Z'), '#b5652f', 2);
}

function drawJack(pen: Pen): void {
  shape(pen, rounded(jack.x - 6, jack.y - 27, 26, 54, 7), palette.steel);
  const barrel = rounded(jack.x + 18, jack.y - 18, 56, 36, 8);
  softShadow(pen, barrel, 6);
  shape(pen, barrel, palette.black);
  hatch(pen, barrel, new DOMRect(jack.x + 18, jack.y - 18, 56, 36), {
    gap: 5,
    turn: 1.57,
    alpha: 0.9,
    seed: 3,
  });
  cord(pen, new Path2D(`M${jack.x + 76} ${jack.y - 8} L${jack.x + 104} ${jack.y - 9}`), palette.brass, 7);
  cord(pen, new Path2D(`M${jack.x + 76} ${jack.y + 9} L${jack.x + 100} ${jack.y + 17}`), palette.steel, 7);
}

/** The empty bed of the neck pickup: seen once the pickup is out. */
function drawBed(pen: Pen): void {
  const { x, y } = pickupInGuitar;
  const bed = rounded(x - 60, y - 112, 120, 224, 14);
  shape(pen, bed, palette.cavity, 4);
  hatch(pen, bed, new DOMRect(x - 60, y - 112, 120, 224), { gap: 9, turn: 0.9, alpha: 0.4, seed: 21 });
  shape(pen, circle(x + 40, y + 84, 9), palette.black, 2);
}

/** Ring around a pickup, in aged cream. */
export function drawRing(pen: Pen, x: number, y: number): void {
  const ring = rounded(x - 72, y - 126, 144, 252, 16);
  ring.addPath(rounded(x - 57, y - 109, 114, 218, 10));
  apart(pen, () => {
    pen.fillStyle = palette.black;
    pen.fill(ring, 'evenodd');
    pen.strokeStyle = palette.ink;
    pen.lineWidth = 3;
    pen.stroke(ring);
    pen.strokeStyle = 'rgba(255, 238, 205, 0.3)';
    pen.lineWidth = 2;
    pen.stroke(rounded(x - 68, y - 122, 136, 244, 13));
  });
  for (const dy of [-117, 117]) shape(pen, circle(x, y + dy, 6), palette.brass, 2);
}

function drawBridge(pen: Pen): void {
  const plate = rounded(672, 452, 56, 180, 12);
  softShadow(pen, plate, 8);
  shape(pen, plate, palette.steel, 4);
  for (let i = 0; i < 6; i += 1) shape(pen, rounded(680, 461 + i * 28, 40, 20, 4), palette.steelDark, 2);
  const tail = rounded(764, 446, 34, 192, 14);
  softShadow(pen, tail, 8);
  shape(pen, tail, palette.steel, 4);
  hatch(pen, tail, new DOMRect(764, 446, 34, 192), { gap: 9, turn: 1.57, alpha: 0.25, seed: 31 });
}

export function drawGuitar(pen: Pen, drawPickup: (x: number, y: number) => void): void {
  drawBody(pen);
  drawNeck(pen);
  drawBed(pen);
  drawCavity(pen);
  drawJack(pen);
  drawRing(pen, bridgePickup.x, bridgePickup.y);
  drawPickup(bridgePickup.x, bridgePickup.y);
  drawRing(pen, pickupInGuitar.x, pickupInGuitar.y);
  drawBridge(pen);
}

export type StringState = { slack: number; ring: number; ms: number; pickedShare: number };

/** Six strings from the nut side to the bridge. Slack ones are pushed aside around the neck pickup. */
export function drawStrings(pen: Pen, state: StringState): void {
  for (let i = 0; i < 6; i += 1) {
    const y = 471 + i * 28;
    const side = i < 3 ? -1 : 1;
    const near = i < 3 ? i : 5 - i;
    const aside = state.slack * side * (58 + 34 * near);
    const picked = state.pickedShare * 6 > i ? state.ring : 0;
    const swing = picked * (8 + i) * (0.75 + 0.25 * Math.sin(state.ms * 0.9 + i * 2.1));
    const bow = (offset: number): Path2D =>
      new Path2D(
        `M-90 ${514 + i * 11.2} L196 ${498 + i * 17.5} C270 ${y + aside + offset} 380 ${y + aside + offset} 690 ${y} L780 ${y}`,
      );
    const thickness = 3.6 - i * 0.42;
    apart(pen, () => {
      pen.globalCompositeOperation = 'multiply';
      pen.strokeStyle = 'rgba(60, 36, 18, 0.4)';
      pen.lineWidth = thickness;
      pen.translate(4, 7);
      pen.stroke(bow(0));
    });
    for (const offset of picked > 0.05 ? [-swing, -swing / 3, swing / 3, swing] : [0]) {
      apart(pen, () => {
        pen.strokeStyle = palette.ink;
        pen.globalAlpha = picked > 0.05 ? 0.25 : 0.65;
        pen.lineWidth = thickness + 2.4;
        pen.stroke(bow(offset));
      });
      pen.strokeStyle = picked > 0.05 ? 'rgba(244, 232, 200, 0.6)' : '#e9dcbb';
      pen.lineWidth = thickness;
      pen.stroke(bow(offset));
    }
  }
}
