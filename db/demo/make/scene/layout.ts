import type { Spot } from '../takes/script';
import { between, type Point } from './geometry';
import type { Conductor } from './palette';

/** The bench is 1920 × 1080 units, seen from above; the mat lies at the right, the guitar at the left. */
export const bench = { width: 1920, height: 1080 } as const;
export const mat = { x: 958, y: 338, width: 930, height: 716 } as const;

export const pickupInGuitar = { x: 300, y: 542, turn: 0 } as const;
export const pickupOnMat = { x: 1094, y: 668, turn: -0.07 } as const;
export const bridgePickup = { x: 545, y: 542 } as const;
export const cavity = { x: 606, y: 676, width: 236, height: 146 } as const;
export const volumePot = { x: 668, y: 758 } as const;
export const tonePot = { x: 782, y: 758 } as const;
export const jack = { x: 905, y: 757 } as const;

export const digitalMeter = { x: 1622, y: 446, width: 258, height: 322 } as const;
export const needleMeter = { x: 1622, y: 792, width: 258, height: 188 } as const;

type CableEnds = { split: Point; ends: Record<Conductor, Point> };

const onMat: CableEnds = {
  split: { x: 1254, y: 752 },
  ends: {
    red: { x: 1378, y: 560 },
    white: { x: 1424, y: 626 },
    green: { x: 1440, y: 702 },
    black: { x: 1420, y: 778 },
    bare: { x: 1368, y: 842 },
  },
};

const inGuitar: CableEnds = {
  split: { x: 612, y: 700 },
  ends: {
    red: { x: 640, y: 724 },
    white: { x: 740, y: 700 },
    green: { x: 740, y: 703 },
    black: { x: 664, y: 786 },
    bare: { x: 676, y: 786 },
  },
};

/** Where white and green meet on the mat. */
export const jointOnMat: Point = { x: 1458, y: 664 };

export type CableState = { pickupOut: number; joined: number };

/** Cable split and conductor ends while the pickup wanders between guitar and mat. */
export function cableAt({ pickupOut, joined }: CableState): CableEnds {
  const end = (name: Conductor): Point => between(inGuitar.ends[name], onMat.ends[name], pickupOut);
  const meet = between(inGuitar.ends.white, jointOnMat, pickupOut);
  return {
    split: between(inGuitar.split, onMat.split, pickupOut),
    ends: {
      red: end('red'),
      white: between(end('white'), meet, joined),
      green: between(end('green'), meet, joined),
      black: end('black'),
      bare: end('bare'),
    },
  };
}

export function pickupAt(pickupOut: number): Point & { turn: number; lift: number } {
  const at = between(pickupInGuitar, pickupOnMat, pickupOut);
  const lift = Math.sin(Math.PI * pickupOut);
  return { x: at.x, y: at.y - 90 * lift, turn: pickupOnMat.turn * pickupOut - 0.16 * lift, lift };
}

/** The middle of a point that lies on the pickup itself. */
function onPickup(state: CableState, dx: number, dy: number): Point {
  const at = pickupAt(state.pickupOut);
  return {
    x: at.x + dx * Math.cos(at.turn) - dy * Math.sin(at.turn),
    y: at.y + dx * Math.sin(at.turn) + dy * Math.cos(at.turn),
  };
}

/** Where a tool must point its tip to touch the spot. */
export function placeOf(spot: Spot, state: CableState): Point {
  switch (spot) {
    case 'red':
    case 'white':
    case 'green':
    case 'black':
    case 'bare':
      return cableAt(state).ends[spot];
    case 'slugRow':
      return onPickup(state, 24, 18);
    case 'screwRow':
      return onPickup(state, -25, 18);
    case 'basePlate':
      return onPickup(state, 58, 50);
    case 'joint':
      return cableAt(state).ends.white;
    case 'driverNear':
      return onPickup(state, 4, -26);
    case 'driverAway':
      return onPickup(state, -90, -330);
    default:
      return fixedPlaces[spot];
  }
}

const fixedPlaces: Record<
  | 'restRed'
  | 'restBlack'
  | 'bridgeHot'
  | 'bridgeGround'
  | 'neckHot'
  | 'neckGround'
  | 'jackTip'
  | 'jackSleeve'
  | 'hotLug'
  | 'potBack'
  | 'ironStand',
  Point
> = {
  restRed: { x: 1398, y: 908 },
  restBlack: { x: 1386, y: 958 },
  bridgeHot: { x: 716, y: 722 },
  bridgeGround: { x: 782, y: 772 },
  neckHot: { x: 642, y: 724 },
  neckGround: { x: 676, y: 774 },
  jackTip: { x: 1006, y: 748 },
  jackSleeve: { x: 1000, y: 774 },
  hotLug: { x: 642, y: 726 },
  potBack: { x: 672, y: 782 },
  ironStand: { x: 1690, y: 262 },
};
