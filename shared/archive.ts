import { z } from 'zod';
import { daySchema } from './days';
import { clientIdSchema, jobIdSchema, savedQuestionIdSchema } from './ids';
import { markerKindSchema, titleSchema } from './markers';
import { momentSchema } from './moments';
import { basisSchema, readingKindIdSchema } from './readings';

/** What can be found, each with its moment where it has one. */
export const findableKinds = [
  'marker',
  'reading',
  'trace',
  'joint',
  'work',
  'part',
  'claim',
  'instrument',
  'ticket',
  'narration',
] as const;
export const findableKindSchema = z.enum(findableKinds);
export type FindableKind = z.infer<typeof findableKindSchema>;

/** What jobs are chosen by. `from` and `to` are days. */
export const filterFields = {
  instrument: z.string().max(60).optional(),
  /** A kind of thing found, or of marker. */
  kind: z.union([findableKindSchema, markerKindSchema]).optional(),
  basis: basisSchema.optional(),
  from: daySchema.optional(),
  to: daySchema.optional(),
  /** Jobs with a reading of this kind, and within `low` to `high` in its base unit (ohms, metres, …). */
  reading: readingKindIdSchema.optional(),
  low: z.coerce.number().optional(),
  high: z.coerce.number().optional(),
};

/** A range says nothing without the kind of reading that it is of. */
export const hasKindOfRange = ({ reading, low, high }: { [key in 'reading' | 'low' | 'high']?: unknown }) =>
  reading !== undefined || (low === undefined && high === undefined);
export const rangeRule = { path: ['reading'], error: 'Name the kind of reading that the range is of.' };

/** A question with its filters: the address of the page, so that it can be kept and shared. */
export const archiveQuerySchema = z
  .strictObject({
    /** Cut at what a person can mean; never refused for its length alone. */
    q: z
      .string()
      .default('')
      .transform((text) => text.slice(0, 2000)),
    ...filterFields,
    client: clientIdSchema.optional(),
    /** The day that "last spring" is counted from; the bench machine's own where it is not given. */
    today: daySchema.optional(),
    /** Parts of the question that were taken away, by their ids, parted by commas. */
    without: z.string().max(500).default(''),
    limit: z.coerce.number().int().min(1).max(100).default(20),
    /** Goes on after this answer's `next`. */
    after: z.string().max(200).optional(),
  })
  .refine(hasKindOfRange, rangeRule);
export type ArchiveQuery = z.infer<typeof archiveQuerySchema>;

/** One thing that was understood from the question. Taking it away asks without it. */
export const understoodPartSchema = z.object({
  /** Stable for the same words of the same question. */
  id: z.string(),
  kind: z.enum(['words', 'time', 'value', 'instrument', 'marker', 'basis', 'client', 'slip']),
  /** As it was typed. */
  said: z.string(),
  /** As it was understood: "between 1 March and 31 May 2026". */
  means: z.string(),
});
export type UnderstoodPart = z.infer<typeof understoodPartSchema>;

export const foundSchema = z.object({
  kind: findableKindSchema,
  /** Of a marker. */
  markerKind: markerKindSchema.nullable(),
  recordId: z.string(),
  jobId: jobIdSchema,
  moment: momentSchema.nullable(),
  /** The moment on the film of its job. */
  filmMs: z.int().nullable(),
  title: z.string(),
  /** Words around what matched, in pieces; those that matched are marked. */
  words: z.array(z.object({ text: z.string(), matched: z.boolean() })),
  score: z.number(),
});
export type Found = z.infer<typeof foundSchema>;

/** A moment as an answer: the best hit of a job, others of that job under it, and what lies near by. */
export const answerSchema = z.object({
  best: foundSchema,
  others: z.array(foundSchema),
  job: z.object({
    id: jobIdSchema,
    number: z.int(),
    title: z.string(),
    instrument: z.string(),
    day: z.string(),
  }),
  /** Address of the still at the moment; null without a picture. */
  still: z.string().nullable(),
  readings: z.array(z.string()),
  joints: z.array(z.string()),
});
export type Answer = z.infer<typeof answerSchema>;

const countedSchema = z.array(z.object({ value: z.string(), count: z.int() }));
export const archiveAnswerSchema = z.object({
  understood: z.array(understoodPartSchema),
  answers: z.array(answerSchema),
  /** No answer is an answer: then `nearest` holds what comes closest. */
  none: z.boolean(),
  nearest: z.array(answerSchema),
  /** What the answers can be narrowed by, with how many answers would stay; the commonest first. */
  filters: z.object({
    instruments: countedSchema,
    kinds: countedSchema,
    bases: countedSchema,
    clients: z.array(z.object({ id: clientIdSchema, name: z.string(), count: z.int() })),
    /** Kinds of reading, with the lowest and the highest in the base unit. */
    readings: z.array(
      z.object({ kind: readingKindIdSchema, count: z.int(), low: z.number(), high: z.number() }),
    ),
  }),
  next: z.string().nullable(),
  /** Jobs whose latest changes are not taken in yet; a moment later they are. */
  waiting: z.int(),
});
export type ArchiveAnswer = z.infer<typeof archiveAnswerSchema>;

/** A word or phrase of the repairer's own, and what it means in the trade's words. */
const synonymSchema = z.strictObject({
  said: z.string().trim().min(1).max(60),
  means: z.string().trim().min(1).max(60),
});
export type Synonym = z.infer<typeof synonymSchema>;
export const synonymsSchema = z.strictObject({ synonyms: z.array(synonymSchema).max(500) });

/** A question to keep: `search` is what stands behind the question mark of its address. */
export const newSavedQuestionSchema = z.strictObject({
  title: titleSchema,
  search: z
    .string()
    .max(4000)
    .transform((search) => search.replace(/^\?/, '')),
});
export type NewSavedQuestion = z.infer<typeof newSavedQuestionSchema>;
export const savedQuestionSchema = z.object({
  id: savedQuestionIdSchema,
  title: z.string(),
  search: z.string(),
});
export type SavedQuestion = z.infer<typeof savedQuestionSchema>;
export const savedQuestionsSchema = z.object({ questions: z.array(savedQuestionSchema) });

/** What "last spring" and "last week" follow from. */
export const archiveCalendarSchema = z.strictObject({
  hemisphere: z.enum(['north', 'south']).default('north'),
  /** 0 for Sunday to 6 for Saturday. */
  firstDayOfWeek: z.int().min(0).max(6).default(1),
});
export type ArchiveCalendar = z.infer<typeof archiveCalendarSchema>;
