import { needleAt, shownAt } from '../display';
import { takes } from '../takes';
import type { TakeScript } from '../takes/script';
import { clamp01, valueAt, visit, wander } from './geometry';
import { drawGuitar, drawStrings } from './guitar';
import { apart, type Pen } from './ink';
import { bench, type CableState, pickupAt, pickupInGuitar, placeOf } from './layout';
import { drawLight } from './light';
import { drawDigitalCase, drawDisplay, drawNeedle, drawNeedleCase } from './meters';
import { drawCable, drawJoint, drawPickup, drawPickupBody } from './pickup';
import { drawMat, drawThings, drawWood } from './things';
import { drawCrackle, drawIron, drawPlectrum, drawProbe, drawScrewdriver, drawSmoke } from './tools';

const picture = { width: 960, height: 540 } as const;
/** The still layer is drawn finer than the picture, for when the camera comes close. */
const fineness = 1.8;
/** The camera wanders a little past the edge of the bench. */
const margin = 40;
const tea = { x: 1450, y: 146 } as const;

function canvas(width: number, height: number): { sheet: HTMLCanvasElement; pen: Pen } {
  const sheet = document.createElement('canvas');
  sheet.width = width;
  sheet.height = height;
  const pen = sheet.getContext('2d');
  if (!pen) throw new Error('this browser has no canvas');
  return { sheet, pen };
}

/** Everything that never moves, once, with the slight tremble of a hand in its lines. */
function drawStill(): HTMLCanvasElement {
  const size = [(bench.width + 2 * margin) * fineness, (bench.height + 2 * margin) * fineness] as const;
  const straight = canvas(...size);
  straight.pen.scale(fineness, fineness);
  straight.pen.translate(margin, margin);
  drawWood(straight.pen);
  drawMat(straight.pen);
  drawThings(straight.pen);
  drawGuitar(straight.pen, (x, y) =>
    apart(straight.pen, () => {
      straight.pen.translate(x, y);
      drawPickupBody(straight.pen);
    }),
  );
  drawDigitalCase(straight.pen);
  drawNeedleCase(straight.pen);
  const trembling = canvas(...size);
  trembling.pen.filter = 'url(#tremble)';
  trembling.pen.drawImage(straight.sheet, 0, 0);
  return trembling.sheet;
}

const still = drawStill();
const { sheet, pen } = canvas(picture.width, picture.height);

function aim(take: TakeScript, ms: number): void {
  const width = valueAt(take.camera.width, ms);
  const scale = picture.width / width;
  const halfHeight = picture.height / scale / 2;
  const centre = {
    x: valueAt(take.camera.x, ms) + 5 * wander(ms, 1),
    y: valueAt(take.camera.y, ms) + 4 * wander(ms, 2),
  };
  const x = Math.min(bench.width + margin - width / 2, Math.max(width / 2 - margin, centre.x));
  const y = Math.min(bench.height + margin - halfHeight, Math.max(halfHeight - margin, centre.y));
  pen.setTransform(scale, 0, 0, scale, picture.width / 2 - x * scale, picture.height / 2 - y * scale);
}

/** How loud the strings still ring after the plectrum went over them; 0 before. */
function ringing(take: TakeScript, ms: number): number {
  const strum = take.sounds.find((sound) => sound.kind === 'strum');
  return strum && ms >= strum.ms ? Math.exp(-(ms - strum.ms) / 1500) : 0;
}

function drawStringsAt(take: TakeScript, ms: number): void {
  const pickedShare = clamp01((valueAt(take.plectrum, ms) - 0.15) / 0.7);
  drawStrings(pen, { slack: valueAt(take.slack, ms), ring: ringing(take, ms), ms, pickedShare });
}

function drawHands(take: TakeScript, ms: number, state: CableState): void {
  const place = (at: Parameters<typeof placeOf>[0]) => placeOf(at, state);
  const needleShare = valueAt(take.needleLeads, ms);
  drawProbe(pen, 'black', visit(take.blackProbe, ms, place), needleShare, 3 * wander(ms, 11));
  drawProbe(pen, 'red', visit(take.redProbe, ms, place), needleShare, 3 * wander(ms, 12));
  drawScrewdriver(pen, visit(take.driver, ms, place));
  const iron = visit(take.iron, ms, place);
  drawIron(pen, iron);
  drawSmoke(pen, iron, valueAt(take.smoke, ms), ms);
  drawPlectrum(pen, valueAt(take.plectrum, ms));
}

function drawFrame(take: TakeScript, ms: number): void {
  const state = { pickupOut: valueAt(take.pickupOut, ms), joined: valueAt(take.joined, ms) };
  aim(take, ms);
  pen.drawImage(still, -margin, -margin, bench.width + 2 * margin, bench.height + 2 * margin);
  if (pickupAt(state.pickupOut).lift < 0.05) drawPickup(pen, state.pickupOut);
  drawStringsAt(take, ms);
  drawDisplay(pen, shownAt(take.displays, ms));
  drawNeedle(pen, needleAt(take.kicks, ms));
  drawCable(pen, state, ms);
  if (pickupAt(state.pickupOut).lift >= 0.05) drawPickup(pen, state.pickupOut);
  drawJoint(pen, state, valueAt(take.solder, ms), valueAt(take.sleeve, ms));
  const crackles = take.sounds.some(
    (sound) => sound.kind === 'crackle' && sound.ms <= ms && ms < sound.ms + sound.lengthMs,
  );
  if (crackles) drawCrackle(pen, pickupInGuitar, ms);
  drawSmoke(pen, tea, 0.45, ms / 1.6);
  drawHands(take, ms, state);
  drawLight(pen, picture.width, picture.height, ms);
}

/** Draws one moment of one take and hands it back as base64. */
function frame(takeIndex: number, ms: number, type: 'image/jpeg' | 'image/png'): string {
  const take = takes[takeIndex];
  if (!take) throw new Error(`there is no take ${takeIndex}`);
  drawFrame(take, ms);
  return sheet.toDataURL(type, 0.96).split(',')[1] ?? '';
}

Object.assign(window, { frame });
