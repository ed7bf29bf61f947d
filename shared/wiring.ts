import { z } from 'zod';

/** How a thing is known. `implied` follows from measured ones, `assumed` is taken over from elsewhere. */
export const wiringBasisSchema = z.enum(['measured', 'implied', 'assumed', 'stated']);
export type WiringBasis = z.infer<typeof wiringBasisSchema>;

/** Where on the film a reading was seen: a take and milliseconds into it. */
export const wiringMomentSchema = z.object({ takeId: z.string().min(1), ms: z.int().nonnegative() });
export type WiringMoment = z.infer<typeof wiringMomentSchema>;

/** A colour name, a letter code (IEC 60757), `shield` or `frame`; checked against the trace by the rules. */
const terminalNameSchema = z.string().trim().min(1).max(60);
const rowSchema = z.string().trim().min(1).max(24);

const known = {
  id: z.string().min(1),
  basis: wiringBasisSchema.default('measured'),
  moment: wiringMomentSchema.optional(),
};
const resistance = {
  /** Null for an over-range display: open. */
  ohms: z.number().nullable(),
  /** Expanded, k = 2. Without it a typical hand-held meter is assumed. */
  uncertaintyOhms: z.number().nonnegative().optional(),
};

export const pairReadingSchema = z.object({
  kind: z.literal('pair'),
  ...known,
  between: z.tuple([terminalNameSchema, terminalNameSchema]),
  ...resistance,
});

/** Steel laid on a row of poles (or taken off), and which way the meter went. No size counts as a clear kick. */
export const kickReadingSchema = z.object({
  kind: z.literal('kick'),
  ...known,
  leads: z.object({ red: terminalNameSchema, black: terminalNameSchema }),
  steel: z.enum(['laid on', 'taken off']),
  row: rowSchema,
  sign: z.union([z.literal(1), z.literal(-1)]),
  size: z.enum(['large', 'small']).optional(),
});

/** Which magnetic pole a row turns to the strings, by compass. */
export const poleReadingSchema = z.object({
  kind: z.literal('pole'),
  ...known,
  row: rowSchema,
  up: z.enum(['north', 'south']),
});

/** The resistance between hot and ground once joined; `plan` is the id of the plan it was joined by. */
export const totalReadingSchema = z.object({
  kind: z.literal('total'),
  ...known,
  ...resistance,
  plan: z.string().optional(),
});

export const traceReadingSchema = z.discriminatedUnion('kind', [
  pairReadingSchema,
  kickReadingSchema,
  poleReadingSchema,
  totalReadingSchema,
]);
export type TraceReading = z.infer<typeof traceReadingSchema>;
export type PairReading = z.infer<typeof pairReadingSchema>;
export type KickReading = z.infer<typeof kickReadingSchema>;
export type TotalReading = z.infer<typeof totalReadingSchema>;

/** A coil as another pickup's trace has it; assumed here until own readings prove it. */
export const assumedCoilSchema = z.object({
  ends: z.tuple([terminalNameSchema, terminalNameSchema]),
  row: rowSchema.nullable(),
  positive: terminalNameSchema.nullable(),
  fromSubject: z.string(),
});
export type AssumedCoil = z.infer<typeof assumedCoilSchema>;

/** The worksheet of one pickup. */
export const traceSchema = z.object({
  subject: z.string().trim().min(1).max(120),
  conductors: z.array(terminalNameSchema).min(1).max(6),
  shield: z.boolean().default(false),
  frame: z.boolean().default(false),
  /** The rows of poles, as the repairer calls them; one for a single row. */
  rows: z.array(rowSchema).min(1).max(2).default(['slug', 'screw']),
  readings: z.array(traceReadingSchema).max(20_000).default([]),
  assumed: z.array(assumedCoilSchema).max(6).default([]),
});
export type Trace = z.infer<typeof traceSchema>;
export type TraceInput = z.input<typeof traceSchema>;

export const conclusionKinds = [
  'coil',
  'tapped coil',
  'linked inside',
  'single coil',
  'open coil',
  'loose end',
  'joined',
  'short',
  'leakage',
  'on shield',
  'clear of shield',
  'row',
  'positive end',
  'pole',
  'total',
] as const;

/** What follows from the readings. `key` stays the same as more readings come; the basis may rise. */
export const conclusionSchema = z.object({
  key: z.string(),
  kind: z.enum(conclusionKinds),
  about: z.array(z.string()),
  basis: wiringBasisSchema,
  /** What is concluded, then why: one plain sentence each. */
  text: z.string(),
  because: z.string(),
  readings: z.array(z.string()),
  ohms: z.number().optional(),
  uncertaintyOhms: z.number().optional(),
  row: z.string().optional(),
  positive: z.string().optional(),
});
export type Conclusion = z.infer<typeof conclusionSchema>;

export const contradictionSchema = z.object({
  key: z.string(),
  text: z.string(),
  readings: z.array(z.string()),
  moments: z.array(z.object({ reading: z.string(), moment: wiringMomentSchema })),
});
export type Contradiction = z.infer<typeof contradictionSchema>;

/** One cell of the pair grid. */
export const pairCellSchema = z.object({
  between: z.tuple([z.string(), z.string()]),
  state: z.enum(['unread', 'joined', 'winding', 'leakage', 'open', 'disputed']),
  ohms: z.number().nullable(),
  uncertaintyOhms: z.number().nullable(),
  basis: wiringBasisSchema.nullable(),
  readings: z.array(z.string()),
});
export type PairCell = z.infer<typeof pairCellSchema>;

export const nextMeasurementSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('pair'),
    between: z.tuple([z.string(), z.string()]),
    reason: z.string(),
    possibilitiesNow: z.int(),
    possibilitiesAtMost: z.int(),
  }),
  z.object({
    kind: z.literal('kick'),
    leads: z.object({ red: z.string(), black: z.string() }),
    steel: z.literal('laid on'),
    row: z.string(),
    reason: z.string(),
    possibilitiesNow: z.int(),
    possibilitiesAtMost: z.int(),
  }),
]);
export type NextMeasurement = z.infer<typeof nextMeasurementSchema>;

export const planKinds = ['as it is', 'series', 'parallel', 'out of phase', 'split', 'alone'] as const;
export const yesNoUnknownSchema = z.enum(['yes', 'no', 'unknown']);
export type YesNoUnknown = z.infer<typeof yesNoUnknownSchema>;

/** One group of ends soldered together (or put away), where it goes, and how its place is known. */
export const planLineSchema = z.object({
  role: z.enum(['hot', 'joined', 'ground', 'insulated']),
  ends: z.array(z.string()).min(1),
  /** Free words of the trade: "input lug of the volume pot". */
  goesTo: z.string(),
  /** Several ends that are already one point inside the pickup: nothing to solder between them. */
  inside: z.boolean(),
  basis: wiringBasisSchema,
});
export type PlanLine = z.infer<typeof planLineSchema>;

export const planSchema = z.object({
  id: z.string(),
  kind: z.enum(planKinds),
  title: z.string(),
  hot: z.array(z.string()),
  joined: z.array(z.array(z.string())),
  ground: z.array(z.string()),
  insulated: z.array(z.string()),
  /** Splits only: where the switch takes the link, and which coils stay. */
  linkSwitchedTo: z.enum(['ground', 'hot']).nullable(),
  stays: z.array(z.string()),
  predictedOhms: z.number().nullable(),
  predictedUncertaintyOhms: z.number().nullable(),
  stringsAdd: yesNoUnknownSchema,
  humCancels: yesNoUnknownSchema,
  /** The weakest basis of all lines. */
  basis: wiringBasisSchema,
  lines: z.array(planLineSchema),
  /** Solder joints in order, in plain words. */
  steps: z.array(z.string()),
  unknowns: z.array(z.string()),
  notes: z.array(z.string()),
});
export type Plan = z.infer<typeof planSchema>;

export const totalCheckSchema = z.object({
  verdict: z.enum(['pass', 'fail', 'cannot say']),
  measuredOhms: z.number().nullable(),
  predictedOhms: z.number().nullable(),
  differenceOhms: z.number().nullable(),
  /** Expanded, k = 2, of the difference. */
  allowedOhms: z.number().nullable(),
  text: z.string(),
  assumptions: z.array(z.string()),
  /** Titles of other plans that the same number fits. */
  alsoFits: z.array(z.string()),
});
export type TotalCheck = z.infer<typeof totalCheckSchema>;

/** What was really joined, pinned to the moment of the joint. */
export const wiringOutcomeSchema = z.object({
  subject: z.string(),
  plan: z.string(),
  title: z.string(),
  lines: z.array(planLineSchema),
  hot: z.array(z.string()),
  ground: z.array(z.string()),
  shield: z.enum(['ground', 'not connected', 'none']),
  insulated: z.array(z.string()),
  basis: wiringBasisSchema,
  moment: wiringMomentSchema.nullable(),
});
export type WiringOutcome = z.infer<typeof wiringOutcomeSchema>;

export const coilSchema = z.object({
  key: z.string(),
  /** Each end with every conductor that is the same point. */
  ends: z.tuple([z.array(z.string()), z.array(z.string())]),
  ohms: z.number().nullable(),
  uncertaintyOhms: z.number().nullable(),
  basis: wiringBasisSchema,
  /** One row as a rule; two when two coils are linked inside and cannot be told apart from outside. */
  rows: z.array(
    z.object({
      row: z.string(),
      basis: wiringBasisSchema,
      positive: z.string().nullable(),
      positiveBasis: wiringBasisSchema.nullable(),
    }),
  ),
  readings: z.array(z.string()),
});
export type Coil = z.infer<typeof coilSchema>;

/** Coils that hang together inside the pickup. `points` run from one end to the other in a chain. */
export const strandSchema = z.object({
  shape: z.enum(['chain', 'unsettled', 'branching', 'bare']),
  points: z.array(z.array(z.string())),
  coils: z.array(coilSchema),
});
export type CoilStrand = z.infer<typeof strandSchema>;

export const traceAnalysisSchema = z.object({
  subject: z.string(),
  conductors: z.array(z.object({ name: z.string(), code: z.string() })),
  shield: z.boolean(),
  frame: z.boolean(),
  rows: z.array(z.string()),
  grid: z.array(pairCellSchema),
  strands: z.array(strandSchema),
  coils: z.array(coilSchema),
  poles: z.array(z.object({ row: z.string(), up: z.enum(['north', 'south']), basis: wiringBasisSchema })),
  conclusions: z.array(conclusionSchema),
  contradictions: z.array(contradictionSchema),
  next: nextMeasurementSchema.nullable(),
  /** Nothing left to measure and nothing that contradicts. */
  complete: z.boolean(),
});
export type TraceAnalysis = z.infer<typeof traceAnalysisSchema>;
