import { z } from 'zod';

/**
 * What is assumed where nothing better is entered, in percent of the value. A winding is measured, but it warms;
 * a pot is as marked. Common practice, no source.
 */
export const usualTolerancePercent = { coil: 2, pot: 20, resistor: 5 } as const;

const idSchema = z
  .string()
  .trim()
  .regex(
    /^[a-z0-9][a-z0-9 _-]{0,39}$/i,
    'An id is up to 40 letters, digits, spaces or hyphens; name it plainly, for example "neck"',
  );
const nameSchema = z.string().trim().min(1, 'A name is missing; call it what it is on the bench').max(60);
const ohmsSchema = (what: string) =>
  z
    .number(`The resistance of ${what} must be a number of ohms`)
    .min(0.1, `The resistance of ${what} must be above zero; measure it again on its own, or leave it out`)
    .max(
      1e9,
      `The resistance of ${what} is more than a hand-held meter can show; an open one is a fault to mend first`,
    );
const toleranceSchema = (percent: number) =>
  z
    .number()
    .min(0, 'A tolerance cannot be below zero; enter 0 for an exact value')
    .max(90, 'A tolerance above 90 % says nothing; measure the part instead')
    .default(percent);
const servesSchema = z.union([z.literal('all'), idSchema]);

export const harnessCoilSchema = z.object({
  /** What the repairer calls it: slug, screw, single. */
  name: nameSchema,
  ohms: ohmsSchema('a coil'),
  tolerancePercent: toleranceSchema(usualTolerancePercent.coil),
});

export const harnessPickupSchema = z.object({
  id: idSchema,
  subject: nameSchema,
  /** From the hot end to the ground end. */
  coils: z.array(harnessCoilSchema).min(1, 'A pickup needs at least one coil').max(4),
  /** How the coils stand when no switch is thrown. Of no meaning with one coil. */
  joined: z.enum(['series', 'parallel', 'first coil only']).default('series'),
});

export const harnessVolumeSchema = z.object({
  id: idSchema,
  name: nameSchema,
  ohms: ohmsSchema('a volume pot'),
  tolerancePercent: toleranceSchema(usualTolerancePercent.pot),
  /** Divider: pickup on the outer lug, wiper to the output. Independent: pickup on the wiper, outer lug to the output. */
  wiring: z.enum(['divider', 'independent']).default('divider'),
  /** One pickup (before the selector), or all of them (shared, after it). */
  serves: servesSchema,
});

/** A tone pot with its capacitor to ground. The capacitor blocks direct current: the meter sees none of it. */
export const harnessToneSchema = z.object({
  id: idSchema,
  name: nameSchema,
  ohms: ohmsSchema('a tone pot'),
  tolerancePercent: toleranceSchema(usualTolerancePercent.pot),
  serves: servesSchema,
  /** On which side of the volume it hangs: the pickup's or the jack's. */
  side: z.enum(['pickup', 'jack']).default('pickup'),
});

export const harnessPositionSchema = z.object({
  name: nameSchema,
  /** Ids of the pickups that sound here. Empty: everything off. */
  on: z.array(idSchema).max(6),
  /** In series: the first named is on the hot side. */
  together: z.enum(['parallel', 'series']).default('parallel'),
});

export const harnessSwitchSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('split'),
    id: idSchema,
    name: nameSchema,
    /** Keeps a coil by its name: the link goes to ground for the hot side's coil, to hot for the other. */
    splits: z
      .array(z.object({ pickup: idSchema, keeps: nameSchema }))
      .min(1, 'A split switch must split at least one pickup'),
  }),
  /** Two leads exchanged, ahead of the split's ground. */
  z.object({ kind: z.literal('phase'), id: idSchema, name: nameSchema, pickup: idSchema }),
  z.object({ kind: z.literal('parallel'), id: idSchema, name: nameSchema, pickup: idSchema }),
]);

/** A fixed resistor between two places of the harness; one with a capacitor in line passes no direct current: leave it out. */
export const harnessResistorSchema = z.object({
  id: idSchema,
  name: nameSchema,
  ohms: ohmsSchema('a resistor'),
  tolerancePercent: toleranceSchema(usualTolerancePercent.resistor),
  between: z.tuple([z.string(), z.string()]),
});

export const harnessSchema = z.object({
  pickups: z
    .array(harnessPickupSchema)
    .min(1, 'A harness needs at least one pickup; describe it with its coils')
    .max(6, 'Six pickups at the most'),
  volumes: z.array(harnessVolumeSchema).max(7).default([]),
  tones: z.array(harnessToneSchema).max(7).default([]),
  positions: z
    .array(harnessPositionSchema)
    .min(1, 'Name at least one position; without a selector it is "on" with every pickup')
    .max(12),
  switches: z.array(harnessSwitchSchema).max(6).default([]),
  resistors: z.array(harnessResistorSchema).max(12).default([]),
});
export type Harness = z.infer<typeof harnessSchema>;
export type HarnessInput = z.input<typeof harnessSchema>;
export type HarnessPickup = Harness['pickups'][number];
export type HarnessVolume = Harness['volumes'][number];
export type HarnessTone = Harness['tones'][number];

/** How the instrument stands while it is measured. What is not named is at rest: switches not thrown, pots up. */
export const jackSettingSchema = z.object({
  position: z.string(),
  /** Ids of the switches that are thrown. */
  thrown: z.array(z.string()).default([]),
  /** Ids of the pots that are turned down. */
  down: z.array(z.string()).default([]),
});
export type JackSetting = z.infer<typeof jackSettingSchema>;

/** Null is open. `mostOhms` null: no upper limit. */
export const ohmsRangeSchema = z.object({
  ohms: z.number().nullable(),
  leastOhms: z.number().nullable(),
  mostOhms: z.number().nullable(),
});
export type OhmsRange = z.infer<typeof ohmsRangeSchema>;

export const expectedReadingSchema = z.object({
  key: z.string(),
  setting: jackSettingSchema,
  /** "both, neck split, bridge volume down" */
  label: z.string(),
  pots: z.enum(['all up', 'all down', 'one down']),
  outcome: z.enum(['ohms', 'short', 'open']),
  ...ohmsRangeSchema.shape,
  /** "neck 8.05 kΩ beside neck volume 500 kΩ" */
  explanation: z.string(),
});
export type ExpectedReading = z.infer<typeof expectedReadingSchema>;

export const jackReadingSchema = jackSettingSchema.extend({
  id: z.string().optional(),
  /** Null for an over-range display: open. */
  ohms: z.number().nullable(),
  /** Expanded, k = 2. Without it a typical hand-held meter is assumed. */
  uncertaintyOhms: z.number().nonnegative().optional(),
});
export type JackReading = z.infer<typeof jackReadingSchema>;
export type JackReadingInput = z.input<typeof jackReadingSchema>;

export const jackVerdictSchema = z.enum(['pass', 'fail', 'cannot say']);

export const jackCheckSchema = z.object({
  readingId: z.string().nullable(),
  key: z.string(),
  setting: jackSettingSchema,
  label: z.string(),
  verdict: jackVerdictSchema,
  measuredOhms: z.number().nullable(),
  expected: ohmsRangeSchema,
  /** The meter's own, k = 2; null for an open reading. */
  uncertaintyOhms: z.number().nullable(),
  text: z.string(),
});
export type JackCheck = z.infer<typeof jackCheckSchema>;

export const jackFaultKinds = [
  'open link',
  'dead pickup',
  'open coil',
  'hot to ground',
  'shorted coil',
  'coil of another value',
  'coils joined otherwise',
  'leads swapped',
  'pickup not grounded',
  'pickups swapped',
  'pot of another value',
  'volume wired wrong',
  'pot not grounded',
  'open lead',
  'always on',
  'selector stuck',
  'switch stuck',
  'split lead off',
  'capacitor passes current',
  'resistor off',
  'resistor of another value',
  'jack shorted',
  'jack lead off',
] as const;
export const jackFaultKindSchema = z.enum(jackFaultKinds);
export type JackFaultKind = z.infer<typeof jackFaultKindSchema>;

/** One more reading: at the jack in another setting, or between two places inside. */
export const jackNextReadingSchema = z.object({
  kind: z.enum(['jack', 'inside']),
  /** "At the jack: bridge, all up" or "Across the neck's slug coil, at its own two leads" */
  where: z.string(),
  setting: jackSettingSchema,
  /** Where the leads go; the jack's tip and sleeve for `jack`. */
  between: z.tuple([z.string(), z.string()]),
  /** What this fault would read, in words. */
  expects: z.string(),
  ...ohmsRangeSchema.shape,
  /** Titles of the faults it would rule out, and of those it would not. */
  rulesOut: z.array(z.string()),
  leaves: z.array(z.string()),
});
export type JackNextReading = z.infer<typeof jackNextReadingSchema>;

export const jackExplanationSchema = z.object({
  key: z.string(),
  kind: jackFaultKindSchema,
  title: z.string(),
  /** All numbers given lie within what this fault would read. */
  explainsAll: z.boolean(),
  explained: z.int(),
  /** Share of belief among the explanations given, 0 to 1. */
  likelihood: z.number(),
  /** How close the numbers lie, 1 for exactly: exp(−½ · mean squared distance in standard uncertainties). */
  fit: z.number(),
  /** For a part of another value. */
  solved: ohmsRangeSchema.nullable(),
  text: z.string(),
  /** Titles of faults that no reading at the jack tells from this one. */
  alikeAtJack: z.array(z.string()),
  next: jackNextReadingSchema.nullable(),
});
export type JackExplanation = z.infer<typeof jackExplanationSchema>;

export const jackJudgementSchema = z.object({
  verdict: jackVerdictSchema,
  text: z.string(),
  checks: z.array(jackCheckSchema),
  /** Most likely first. Empty when nothing fails. */
  explanations: z.array(jackExplanationSchema),
  /**
   * When nothing fails: faults that these numbers would not have shown, each with a setting at the jack that
   * would. Null: no setting does, within the tolerances.
   */
  notRuledOut: z.array(
    z.object({ title: z.string(), setting: jackSettingSchema.nullable(), label: z.string().nullable() }),
  ),
  /** Settings with the pots up that nobody has read yet. */
  missing: z.array(z.object({ setting: jackSettingSchema, label: z.string() })),
  /** What no resistance at the jack can show. */
  invisible: z.array(z.string()),
  assumptions: z.array(z.string()),
  cautions: z.array(z.string()),
});
export type JackJudgement = z.infer<typeof jackJudgementSchema>;
