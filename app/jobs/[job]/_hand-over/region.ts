/** A region of the picture, in parts of its width and height. */
export interface Region {
  x: number;
  y: number;
  width: number;
  height: number;
}

export const sides = [
  { name: 'x', label: 'From the left, %' },
  { name: 'y', label: 'From the top, %' },
  { name: 'width', label: 'Width, %' },
  { name: 'height', label: 'Height, %' },
] as const;
type Side = (typeof sides)[number]['name'];

/** Shares are kept in thousandths: finer than any label, and their sums are exact. */
const steps = 1000;

interface Point {
  x: number;
  y: number;
}

/** The region between two corners, brought into the picture; null where it has no size. */
export function regionBetween(one: Point, other: Point): Region | null {
  const [left, right] = ends(one.x, other.x);
  const [top, bottom] = ends(one.y, other.y);
  if (right <= left || bottom <= top) return null;
  return {
    x: left / steps,
    y: top / steps,
    width: (right - left) / steps,
    height: (bottom - top) / steps,
  };
}

/** The region with one side typed in percent; null where it would leave the picture. */
export function typedSide(region: Region, side: Side, text: string): Region | null {
  if (!/^\d{1,3}([.,]\d+)?$/.test(text.trim())) return null;
  const share = Math.round(Number(text.replace(',', '.')) * (steps / 100)) / steps;
  const next = { x: region.x, y: region.y, width: region.width, height: region.height, [side]: share };
  const fits = next.x + next.width <= 1 && next.y + next.height <= 1;
  return fits && next.width > 0 && next.height > 0 ? next : null;
}

function ends(one: number, other: number): [number, number] {
  const within = (share: number) => Math.round(Math.min(1, Math.max(0, share)) * steps);
  return one < other ? [within(one), within(other)] : [within(other), within(one)];
}
