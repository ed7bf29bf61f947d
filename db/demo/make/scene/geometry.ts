import type { Keys, Stop } from '../takes/script';

export type Point = { x: number; y: number };

export function mix(from: number, to: number, share: number): number {
  return from + (to - from) * share;
}

export function between(from: Point, to: Point, share: number): Point {
  return { x: mix(from.x, to.x, share), y: mix(from.y, to.y, share) };
}

export function clamp01(value: number): number {
  return Math.min(1, Math.max(0, value));
}

/** Slow at both ends, as a hand moves. */
export function ease(share: number): number {
  const t = clamp01(share);
  return t * t * (3 - 2 * t);
}

/** The value of a key track at `ms`; a track needs at least one key. */
export function valueAt(keys: Keys, ms: number): number {
  const next = keys.findIndex(([keyMs]) => keyMs > ms);
  if (next === 0) return keys[0]?.[1] ?? 0;
  const [fromMs, from] = keys.at(next === -1 ? -1 : next - 1) ?? [0, 0];
  const [toMs, to] = keys.at(next === -1 ? -1 : next) ?? [0, 0];
  return toMs === fromMs ? from : mix(from, to, ease((ms - fromMs) / (toMs - fromMs)));
}

const travelMs = 650;

/** Where a tool is that visits spot after spot; it lifts off the bench a little on its way. */
export function visit(stops: Stop[], ms: number, place: (at: Stop['at']) => Point): Point & { lift: number } {
  const ahead = stops.findIndex((stop) => stop.ms > ms);
  const here = stops.at(ahead === -1 ? -1 : Math.max(0, ahead - 1));
  const next = ahead === -1 ? undefined : stops[ahead];
  if (!here) throw new Error('a tool needs at least one stop');
  if (!next) return { ...place(here.at), lift: 0 };
  const onTheWayMs = Math.min(travelMs, next.ms - here.ms);
  const share = ease((ms - (next.ms - onTheWayMs)) / onTheWayMs);
  const lift = Math.sin(Math.PI * share);
  const point = between(place(here.at), place(next.at), share);
  return { x: point.x, y: point.y - 22 * lift, lift };
}

/** Repeatable noise: the same seed draws the same bench. Values in 0…1. */
export function noise(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A gentle wander around zero, within about ±1. */
export function wander(ms: number, seed: number): number {
  const t = ms / 1000;
  return 0.6 * Math.sin(t * 0.53 + seed * 1.7) + 0.4 * Math.sin(t * 1.31 + seed * 3.1);
}
