/** Places on the bench that probes, screwdriver and soldering iron can touch; the scene knows where they lie. */
export type Spot =
  | 'restRed'
  | 'restBlack'
  | 'red'
  | 'white'
  | 'green'
  | 'black'
  | 'bare'
  | 'basePlate'
  | 'bridgeHot'
  | 'bridgeGround'
  | 'neckHot'
  | 'neckGround'
  | 'jackTip'
  | 'jackSleeve'
  | 'slugRow'
  | 'screwRow'
  | 'joint'
  | 'hotLug'
  | 'potBack'
  | 'driverNear'
  | 'driverAway'
  | 'ironStand';

/** The tool has arrived at the spot at `ms` and stays until it leaves for the next. */
export type Stop = { ms: number; at: Spot };

/** `[ms, value]`: eased from each to the next, held before the first and after the last. */
export type Keys = ReadonlyArray<readonly [ms: number, value: number]>;

/** From `fromMs` the digital meter shows these digits; the first half second they still settle. */
export type Display = { fromMs: number; digits: string; unit: 'kΩ' | 'Ω'; settles: boolean };

/** The needle swings out at `ms` and falls back; full scale is 1, to the right is positive. */
export type Kick = { ms: number; swing: number };

export type SoundEffect =
  | { ms: number; kind: 'tick' | 'clack' | 'tap' | 'beep' | 'strum' }
  | { ms: number; kind: 'crackle' | 'hiss'; lengthMs: number };

export type SpokenLine = { startMs: number; text: string };

/** Everything that is seen and heard in one take. Times in milliseconds from its first frame. */
export type TakeScript = {
  name: string;
  /** RFC 3339, written into the file as its creation time. */
  recordedAt: string;
  lengthMs: number;
  lines: SpokenLine[];
  displays: Display[];
  kicks: Kick[];
  sounds: SoundEffect[];
  camera: { x: Keys; y: Keys; width: Keys };
  redProbe: Stop[];
  blackProbe: Stop[];
  driver: Stop[];
  iron: Stop[];
  /** 0: the leads come from the digital meter; 1: from the needle meter. */
  needleLeads: Keys;
  /** 0: the neck pickup sits in the guitar; 1: it lies on the mat. */
  pickupOut: Keys;
  /** 0: the strings are up to pitch; 1: slack and pushed aside. */
  slack: Keys;
  /** 0: white and green lie apart; 1: their ends touch. */
  joined: Keys;
  solder: Keys;
  sleeve: Keys;
  /** How much smoke rises from the tip of the iron, 0 to 1. */
  smoke: Keys;
  /** Where the plectrum is on its way over the strings, 0 to 1; outside of them at either end. */
  plectrum: Keys;
};
