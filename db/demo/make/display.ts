import type { Display, Kick } from './takes/script';

/** How long a hand-held meter hunts before its digits stand. */
export const settleMs = 500;
const stepMs = 125;

export type Shown = { digits: string; unit: Display['unit'] };

/** Digits on their way: within a few percent of where they will stand, the same at every run. */
function hunting(digits: string, elapsedMs: number): string {
  const decimals = digits.split('.')[1]?.length ?? 0;
  const step = Math.floor(elapsedMs / stepMs);
  const away = [-0.31, 0.07, -0.03, 0.01][step] ?? 0;
  return (Number(digits) * (1 + away)).toFixed(decimals);
}

/** What the digital meter shows at `ms`. */
export function shownAt(displays: Display[], ms: number): Shown {
  const display = displays.findLast((one) => one.fromMs <= ms);
  if (!display) throw new Error(`nothing is on the display at ${ms} ms`);
  const elapsedMs = ms - display.fromMs;
  const stands = !display.settles || elapsedMs >= settleMs;
  return { digits: stands ? display.digits : hunting(display.digits, elapsedMs), unit: display.unit };
}

const riseMs = 160;
const holdMs = 420;

/** Swing of the needle at `ms`: out fast, held for a breath, back in a damped swing. -1 to 1. */
export function needleAt(kicks: Kick[], ms: number): number {
  const kick = kicks.findLast((one) => one.ms <= ms);
  if (!kick) return 0;
  const elapsedMs = ms - kick.ms;
  if (elapsedMs < riseMs) return kick.swing * Math.sin((Math.PI / 2) * (elapsedMs / riseMs));
  if (elapsedMs < holdMs) return kick.swing;
  const t = (elapsedMs - holdMs) / 1000;
  return kick.swing * Math.exp(-3.2 * t) * Math.cos(4.4 * t);
}
