import { z } from 'zod';
import { markerKindSchema, takeMsSchema, titleSchema } from './markers';

/** One spoken line, in milliseconds of the clock it was given in (a take's, or a film's before it is split). */
export const narrationLineSchema = z.object({
  startMs: takeMsSchema,
  endMs: takeMsSchema,
  text: z.string().min(1).max(10_000),
  /** Who speaks, where the captions say so. */
  voice: z.string().max(200).optional(),
});
export type NarrationLine = z.infer<typeof narrationLineSchema>;

export const captionFormats = ['webvtt', 'subrip', 'timed-text'] as const;
export const captionFormatSchema = z.enum(captionFormats);
export type CaptionFormat = z.infer<typeof captionFormatSchema>;

/** A captions file as it was read: its format by content, its lines in order of time, what was left out. */
export const captionsReadSchema = z.object({
  format: captionFormatSchema,
  lines: z.array(narrationLineSchema),
  unread: z.array(z.object({ line: z.int().positive(), content: z.string() })),
});
export type CaptionsRead = z.infer<typeof captionsReadSchema>;

const spanSchema = z.object({ startMs: takeMsSchema, endMs: takeMsSchema });

const conductorSchema = z.string().min(1).max(60);

export const markerPayloadSchema = z.object({ markerKind: markerKindSchema, title: titleSchema });

export const readingPayloadSchema = z.object({
  kind: z.string().min(1),
  /** The number as it was said, in `unit`; null when the reading is open. */
  value: z.number().nullable(),
  /** The digits as they were said ("4.080"), so that no trailing zero is lost; null when open. */
  digits: z.string().nullable(),
  open: z.boolean(),
  unit: z.string(),
  /** The two conductors or terminals that it was taken between. */
  between: z.tuple([conductorSchema, conductorSchema]).nullable(),
  /** "neck", "low E, 12th fret", "slug coil": empty when nothing near by says. */
  subject: z.string().max(120),
  /** Which way the needle went, for a polarity kick. */
  sign: z.enum(['positive', 'negative']).nullable(),
});

export const coilPairPayloadSchema = z.object({
  conductors: z.tuple([conductorSchema, conductorSchema]),
  /** "slug", "screw", "upper" …; null while it is not known. */
  row: z.string().max(60).nullable(),
});

export const conductorRoles = ['hot', 'ground', 'positive', 'negative'] as const;
export const rolePayloadSchema = z.object({ conductor: conductorSchema, role: z.enum(conductorRoles) });

export const jointPayloadSchema = z.object({ conductors: z.array(conductorSchema).min(2) });

export const workPayloadSchema = z.object({
  description: z.string().min(1).max(200),
  origin: z.enum(['asked', 'offered', 'found']),
  outcome: z.enum(['promised', 'done', 'not done', 'declined']),
  charge: z.enum(['paid', 'free']),
  /** Where it was promised, when this proposal is about what became of it. */
  promisedAt: spanSchema.nullable(),
  /** For a promise that is never taken up again: the last line, up to which nothing was heard of it. */
  unheardUntil: spanSchema.nullable(),
});

export const privateReasons = ['name', 'phone', 'email', 'address'] as const;
export const privatePayloadSchema = z.object({ reason: z.enum(privateReasons) });

export const cameraStopPayloadSchema = z.object({});

const heard = {
  /** The same words at the same place give the same key, so importing again proposes nothing twice. */
  key: z.string().min(1).max(200),
  ...spanSchema.shape,
  /** The words it was heard in. */
  words: z.string(),
  confidence: z.number().min(0).max(1),
  /** The pickup or part that was being talked about; null when nothing says. */
  about: z.string().max(120).nullable(),
};

/** Something heard that could go on the record. Nothing is recorded until it is accepted. */
export const heardProposalSchema = z.discriminatedUnion('type', [
  z.object({ ...heard, type: z.literal('marker'), payload: markerPayloadSchema }),
  z.object({ ...heard, type: z.literal('reading'), payload: readingPayloadSchema }),
  z.object({ ...heard, type: z.literal('coil-pair'), payload: coilPairPayloadSchema }),
  z.object({ ...heard, type: z.literal('role'), payload: rolePayloadSchema }),
  z.object({ ...heard, type: z.literal('joint'), payload: jointPayloadSchema }),
  z.object({ ...heard, type: z.literal('work'), payload: workPayloadSchema }),
  z.object({ ...heard, type: z.literal('private'), payload: privatePayloadSchema }),
  z.object({ ...heard, type: z.literal('camera-stop'), payload: cameraStopPayloadSchema }),
]);
export type HeardProposal = z.infer<typeof heardProposalSchema>;
export type ProposalType = HeardProposal['type'];
export const proposalTypes = [
  'marker',
  'reading',
  'coil-pair',
  'role',
  'joint',
  'work',
  'private',
  'camera-stop',
] as const satisfies readonly ProposalType[];

/** A word or phrase of the repairer's own, and what it means in the trade's words. */
export const slangSchema = z.strictObject({
  said: z.string().trim().min(1).max(60),
  means: z.string().trim().min(1).max(60),
});
export type Slang = z.infer<typeof slangSchema>;

/** What the rules may know besides the words. */
export const narrationContextSchema = z.object({
  instrumentType: z.string(),
  /** The client's name on the ticket, to be found in the words. */
  clientName: z.string().nullable(),
  slang: z.array(slangSchema),
});
export type NarrationContext = z.infer<typeof narrationContextSchema>;
