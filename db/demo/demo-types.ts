import type { NewClaim } from '@/shared/claims';
import type { NewReading } from '@/shared/readings';
import type { NewPart, NewWorkItem } from '@/shared/work';

/** Names of places on a pickup or in a harness, as a repairer says them: "red", "bare", "tip". */
export type Terminal = string;

export type DemoMarker = {
  kind: 'intake' | 'diagnosis' | 'measurement' | 'work' | 'result';
  title: string;
  /** Milliseconds into the take. */
  ms: number;
  endMs?: number;
  public: boolean;
};

export type DemoResistance = {
  kind: 'resistance';
  /** The digits as they stand on the display; "OL" is over range. */
  digits: string;
  unit: 'kΩ' | 'Ω';
  open?: true;
  subject: string;
  between: [Terminal, Terminal];
  meter: string;
  ms: number;
  basis: 'measured';
};

export type DemoKick = {
  kind: 'polarity kick';
  subject: string;
  /** The conductor that each lead of the meter is on. */
  leads: { red: Terminal; black: Terminal };
  steel: 'laid on' | 'taken off';
  row: 'slug' | 'screw';
  sign: 'positive' | 'negative';
  size: 'large' | 'small';
  meter: string;
  ms: number;
  basis: 'measured';
};

export type DemoReading = DemoResistance | DemoKick;

export type DemoTake = {
  /** Lies in `media/`, with its narration beside it. */
  file: string;
  narrationFile: string;
  recordedAt: string;
  lengthMs: number;
  markers: DemoMarker[];
  readings: DemoReading[];
};

/** A place in the film: a take by its file, and milliseconds into it. */
export type DemoMoment = { file: string; ms: number };

export type DemoWorkItem = {
  what: string;
  origin: 'asked' | 'offered';
  /** Agreed prices in the smallest unit of the currency. */
  charge: { kind: 'agreed'; amountMinor: number; currency: string } | { kind: 'free' };
  outcome: 'done' | 'open';
  saidAt: DemoMoment;
  endedAt?: DemoMoment;
};

/** Accuracy of a range: plus or minus percent of the reading and counts of the last digit. */
export type DemoMeterRange = {
  unit: 'kΩ' | 'Ω';
  fullScale: number;
  resolution: number;
  percent: number;
  counts: number;
};

export type DemoMeter = { name: string; ranges: DemoMeterRange[] };

/** The worksheet of the pickup that was traced, and the plan it was joined by. */
export type DemoTrace = {
  subject: string;
  conductors: Terminal[];
  rows: string[];
  plan: 'series';
  joinedAt: DemoMoment;
};

export type DemoJob = {
  title: string;
  number: string;
  /** Calendar days at the workshop. */
  receivedOn: string;
  promisedOn: string;
  cameWith: string[];
  instrument: {
    type: 'electric guitar';
    maker: string | null;
    model: string | null;
    serial: string | null;
    features: string[];
  };
  client: { name: string; alias: string; phone: string };
  meters: DemoMeter[];
  workItems: DemoWorkItem[];
  takes: DemoTake[];
  trace: DemoTrace;
};

/** Someone who came before the camera did. */
export type OlderClient = { name: string; alias: string; phone: string };

/** A worksheet from before the camera. */
export type OlderTrace = {
  subject: string;
  conductors: Terminal[];
  rows: string[];
  /** Its name among the older jobs, where another worksheet takes its roles over. */
  name?: string;
  /** The worksheet whose roles were taken over, as assumed. */
  takenFrom?: string;
  /** What was read before anything was joined. */
  readings: NewReading[];
  /** The plan it was joined by; null where nothing was joined. */
  plan: string | null;
  /** What was read between hot and ground once it was joined. */
  total: NewReading | null;
};

/** A job from the years before the camera: written down, not filmed. */
export type OlderJob = {
  title: string;
  receivedOn: string;
  promisedOn: string;
  collectedOn: string;
  state: 'collected' | 'returned undone';
  cameWith: string[];
  /** Name of one of the older clients. */
  client: string;
  /** A new instrument, or the one that came in with the job of this title before. */
  instrument: { type: string; serial?: string; features: string } | { ofJob: string };
  claims?: Omit<NewClaim, 'jobId'>[];
  work: NewWorkItem[];
  parts?: NewPart[];
  readings?: NewReading[];
  traces?: OlderTrace[];
};
