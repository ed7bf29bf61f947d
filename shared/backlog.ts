import { z } from 'zod';
import { daySchema } from './days';
import { folderIdSchema, jobIdSchema } from './ids';
import { instrumentTypeSchema, type KnownInstrumentType } from './instruments';
import { titleSchema } from './markers';
import { taskSchema } from './tasks';

/** Takes a folder of old recordings in as jobs: looked at first, then planned, then imported. */
export const backlogIdSchema = z
  .string()
  .regex(/^[0-9a-z]{20}$/, 'not an id of this workshop')
  .brand<'backlog'>();
export type BacklogId = z.infer<typeof backlogIdSchema>;

/**
 * What becomes one job. `usual`: a folder whose name has words of its own is one job, with the folders below it that
 * have none, unless its recordings are spread over more than 60 days; elsewhere the recordings of one folder and day
 * are. `folder`: always the folder. `day`: always the folder and the day.
 */
export const jobRules = ['usual', 'folder', 'day'] as const;
export const jobRuleSchema = z.enum(jobRules);
export type JobRule = z.infer<typeof jobRuleSchema>;

/** Where the day of a recording is known from. `file`: the date of the file. */
export const dateSources = ['recording', 'name', 'folder', 'file', 'nothing'] as const;
export type DateSource = (typeof dateSources)[number];

export type InstrumentType = KnownInstrumentType;

export const newBacklogSchema = z.strictObject({
  folderId: folderIdSchema,
  /** A folder inside it, with forward slashes; empty for all of it. */
  under: z
    .string()
    .max(4096)
    .default('')
    .transform((path) => path.replaceAll('\\', '/').replace(/^[/\s]+|[/\s]+$/g, '')),
});
export type NewBacklog = z.infer<typeof newBacklogSchema>;

/** What was decided about one proposed job. */
export const choiceSchema = z.strictObject({
  key: z.string().min(1).max(5000),
  leftOut: z.boolean().default(false),
  title: titleSchema.optional(),
  instrumentType: instrumentTypeSchema.optional(),
});
export type Choice = z.infer<typeof choiceSchema>;

export const importOrderSchema = z.strictObject({
  rule: jobRuleSchema.default('usual'),
  choices: z.array(choiceSchema).max(20_000).default([]),
});
export type ImportOrder = z.infer<typeof importOrderSchema>;

const jobNamedSchema = z.object({ id: jobIdSchema, number: z.int(), title: z.string() });
export type JobNamed = z.infer<typeof jobNamedSchema>;

export const plannedTakeSchema = z.object({
  /** Below the recordings folder. */
  path: z.string(),
  name: z.string(),
  durationMs: z.int(),
  day: daySchema.nullable(),
  from: z.enum(dateSources),
  /** What the camera's clock says, where the name says another day. */
  cameraDay: daySchema.nullable(),
  /** The captions beside it, the one to be tried first in front. */
  captions: z.array(z.string()),
  /** It is a take already, and only its captions are new. */
  captionsOnly: z.boolean(),
});
export type PlannedTake = z.infer<typeof plannedTakeSchema>;

/** A job that would be made, or one made from this folder before that would get more takes. */
export const proposedJobSchema = z.object({
  key: z.string(),
  /** The folder, below the recordings folder; empty for that itself. */
  home: z.string(),
  /** The first and the last day of its takes; null where nothing tells a day. */
  day: daySchema.nullable(),
  lastDay: daySchema.nullable(),
  title: z.string(),
  instrumentType: instrumentTypeSchema,
  /** The words that say the instrument type; null where none do. */
  typeWords: z.string().nullable(),
  joins: jobNamedSchema.nullable(),
  /** It is of the whole folder, and not of one day of it. */
  wholeFolder: z.boolean(),
  takes: z.array(plannedTakeSchema),
});
export type ProposedJob = z.infer<typeof proposedJobSchema>;

/** A recording that is left out, and why. */
export const leftOutSchema = z.object({ path: z.string(), why: z.string(), job: jobNamedSchema.nullable() });
export type LeftOut = z.infer<typeof leftOutSchema>;

export const planSchema = z.object({
  jobs: z.array(proposedJobSchema),
  /** Recordings that are takes of a job already. */
  known: z.int(),
  /** Known by what is in them: moved, renamed or copied. */
  elsewhere: z.array(leftOutSchema),
  /** What cannot be read, and what to do. */
  unreadable: z.array(leftOutSchema),
});
export type BacklogPlan = z.infer<typeof planSchema>;

export const backlogProblemSchema = z.object({ file: z.string(), title: z.string(), detail: z.string() });
export type BacklogProblem = z.infer<typeof backlogProblemSchema>;

export const importedJobSchema = z.object({
  /** One job may come twice: made, and given more takes later. */
  id: z.int(),
  job: jobNamedSchema,
  day: z.string(),
  /** Takes came to a job that was there before. */
  joined: z.boolean(),
  takes: z.int(),
  lines: z.int(),
});
export type ImportedJob = z.infer<typeof importedJobSchema>;

export const backlogSchema = z.object({
  id: backlogIdSchema,
  folder: z.object({ id: folderIdSchema, path: z.string() }),
  under: z.string(),
  createdAt: z.int(),
  /** Null until every recording was looked at. */
  lookedAt: z.int().nullable(),
  look: taskSchema.nullable(),
  import: taskSchema.nullable(),
  /** What the import made so far. */
  jobs: z.array(importedJobSchema),
  problems: z.array(backlogProblemSchema),
  undoneAt: z.int().nullable(),
});
export type Backlog = z.infer<typeof backlogSchema>;

export const backlogViewSchema = backlogSchema.extend({ plan: planSchema.nullable() });
export type BacklogView = z.infer<typeof backlogViewSchema>;

export const backlogsSchema = z.object({
  backlogs: z.array(backlogSchema.omit({ jobs: true, problems: true })),
});

/** What undoing an import did. */
export const backlogUndoneSchema = z.object({
  /** Jobs put into the bin. */
  binned: z.int(),
  /** Jobs that were worked on since, and stay. */
  kept: z.array(jobNamedSchema),
});
export type BacklogUndone = z.infer<typeof backlogUndoneSchema>;

export const backlogQuerySchema = z.strictObject({ rule: jobRuleSchema.default('usual') });
