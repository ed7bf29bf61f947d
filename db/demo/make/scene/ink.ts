import { noise } from './geometry';
import { palette } from './palette';

export type Pen = CanvasRenderingContext2D;

export function rounded(x: number, y: number, width: number, height: number, radius: number): Path2D {
  const path = new Path2D();
  path.roundRect(x, y, width, height, radius);
  return path;
}

export function circle(x: number, y: number, radius: number): Path2D {
  const path = new Path2D();
  path.arc(x, y, radius, 0, Math.PI * 2);
  return path;
}

/** Runs `draw` with its own transform, clip and styles. */
export function apart(pen: Pen, draw: () => void): void {
  pen.save();
  draw();
  pen.restore();
}

/** A filled shape with an ink outline, and a second, thinner line beside it as a hurried pen leaves. */
export function shape(pen: Pen, path: Path2D, fill: string | CanvasGradient, lineWidth = 3): void {
  apart(pen, () => {
    pen.fillStyle = fill;
    pen.fill(path);
    pen.strokeStyle = palette.ink;
    pen.lineJoin = 'round';
    pen.lineWidth = lineWidth;
    pen.stroke(path);
    pen.globalAlpha = 0.28;
    pen.lineWidth = lineWidth * 0.4;
    pen.translate(1.6, -1.4);
    pen.stroke(path);
  });
}

/** A soft shadow under a thing that lies still; higher things throw it farther. Slow: a blur each time. */
export function softShadow(pen: Pen, path: Path2D, height = 8): void {
  apart(pen, () => {
    pen.filter = `blur(${height * 0.7}px)`;
    shadow(pen, path, height);
  });
}

/** A flat shadow under a thing that moves, drawn anew in every picture. */
export function shadow(pen: Pen, path: Path2D, height = 8): void {
  apart(pen, () => {
    pen.globalCompositeOperation = 'multiply';
    pen.fillStyle = 'rgba(92, 58, 30, 0.42)';
    pen.translate(height * 0.7, height);
    pen.fill(path);
  });
}

/** The shadow of a rope-like thing. */
export function cordShadow(pen: Pen, path: Path2D, thickness: number, height = 5): void {
  apart(pen, () => {
    pen.globalCompositeOperation = 'multiply';
    pen.strokeStyle = 'rgba(92, 58, 30, 0.45)';
    pen.lineWidth = thickness;
    pen.lineCap = 'round';
    pen.translate(height * 0.7, height);
    pen.stroke(path);
  });
}

export type HatchStyle = { gap: number; turn: number; alpha: number; seed: number };

/** Parallel pen strokes inside a shape, uneven as by hand. `turn` in radians. */
export function hatch(pen: Pen, path: Path2D, box: DOMRect, style: HatchStyle): void {
  const random = noise(style.seed);
  const reach = Math.hypot(box.width, box.height) / 2;
  apart(pen, () => {
    pen.clip(path);
    pen.translate(box.x + box.width / 2, box.y + box.height / 2);
    pen.rotate(style.turn);
    pen.strokeStyle = palette.ink;
    pen.globalAlpha = style.alpha;
    pen.lineWidth = 1.2;
    for (let y = -reach; y < reach; y += style.gap * (0.7 + 0.6 * random())) {
      const start = -reach + random() * reach * 0.3;
      pen.beginPath();
      pen.moveTo(start, y);
      pen.lineTo(reach - random() * reach * 0.3, y + (random() - 0.5) * style.gap);
      pen.stroke();
    }
  });
}

/** A rope-like thing: an ink line with the colour drawn on top of it. */
export function cord(pen: Pen, path: Path2D, colour: string, thickness: number): void {
  apart(pen, () => {
    pen.lineCap = 'round';
    pen.lineJoin = 'round';
    pen.strokeStyle = palette.ink;
    pen.lineWidth = thickness + 3;
    pen.stroke(path);
    pen.strokeStyle = colour;
    pen.lineWidth = thickness;
    pen.stroke(path);
    pen.globalAlpha = 0.35;
    pen.strokeStyle = '#fff3da';
    pen.lineWidth = Math.max(1, thickness * 0.22);
    pen.translate(-thickness * 0.16, -thickness * 0.2);
    pen.stroke(path);
  });
}

/** Handwriting-like label; small, for paper. */
export function label(
  pen: Pen,
  text: string,
  x: number,
  y: number,
  sizePx: number,
  align: CanvasTextAlign = 'center',
) {
  apart(pen, () => {
    pen.fillStyle = palette.ink;
    pen.font = `italic ${sizePx}px "DejaVu Serif", serif`;
    pen.textAlign = align;
    pen.textBaseline = 'middle';
    pen.fillText(text, x, y);
  });
}
