import { wander } from './geometry';
import { apart, type Pen } from './ink';

/** Warm lamp from the upper right, breathing a little, and a soft dark edge. Drawn in picture pixels. */
export function drawLight(pen: Pen, width: number, height: number, ms: number): void {
  const breath = 1 + 0.03 * wander(ms * 0.8, 4);
  apart(pen, () => {
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.globalCompositeOperation = 'soft-light';
    const lamp = pen.createRadialGradient(
      width * 0.66,
      height * 0.16,
      20,
      width * 0.6,
      height * 0.3,
      width * 0.72,
    );
    lamp.addColorStop(0, `rgba(255, 236, 190, ${0.62 * breath})`);
    lamp.addColorStop(0.45, `rgba(255, 216, 150, ${0.2 * breath})`);
    lamp.addColorStop(1, 'rgba(60, 30, 20, 0.42)');
    pen.fillStyle = lamp;
    pen.fillRect(0, 0, width, height);
    pen.globalCompositeOperation = 'multiply';
    const edge = pen.createRadialGradient(
      width / 2,
      height / 2,
      height * 0.5,
      width / 2,
      height / 2,
      width * 0.64,
    );
    edge.addColorStop(0, 'rgba(255, 255, 255, 1)');
    edge.addColorStop(1, 'rgba(150, 112, 84, 1)');
    pen.fillStyle = edge;
    pen.fillRect(0, 0, width, height);
  });
}
