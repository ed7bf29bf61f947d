import { z } from 'zod';
import { traceIdSchema } from './ids';
import { momentSchema } from './moments';

export const looseEndKinds = [
  'promise passed',
  'offered and open',
  'asked and open',
  'found and open',
  'contradiction',
  'assumed conductor',
  'failed check',
  'missing check',
  'private words',
  'take without marker',
  'proposals',
] as const;
export const looseEndKindSchema = z.enum(looseEndKinds);
export type LooseEndKind = z.infer<typeof looseEndKindSchema>;

/** Where a loose end is tied up. */
export const tyingPlaceSchema = z.discriminatedUnion('on', [
  /** A line of the ticket, by its id, or a field of it, by its name. */
  z.object({ on: z.literal('ticket'), anchor: z.string() }),
  z.object({ on: z.literal('trace'), traceId: traceIdSchema }),
  z.object({ on: z.literal('jack') }),
  z.object({ on: z.literal('film'), moment: momentSchema }),
  /** A marker or reading on the running sheet. */
  z.object({ on: z.literal('sheet'), line: z.string() }),
  z.object({ on: z.literal('proposals') }),
  /** A part of the hand-over page. */
  z.object({ on: z.literal('hand-over'), anchor: z.string() }),
]);
export type TyingPlace = z.infer<typeof tyingPlaceSchema>;

/** Something that should hold a job back. Derived from the record, never typed. */
export const looseEndSchema = z.object({
  /** The same loose end has the same id as long as it is loose. */
  id: z.string(),
  kind: looseEndKindSchema,
  /** What is loose, in one plain sentence. */
  sentence: z.string(),
  /** Loose since: milliseconds since 1970-01-01T00:00Z. */
  since: z.int(),
  place: tyingPlaceSchema,
});
export type LooseEnd = z.infer<typeof looseEndSchema>;

export const looseEndsSchema = z.object({ looseEnds: z.array(looseEndSchema) });

/** The list that was looked at when the job was set to ready. */
export const readyLookSchema = z.object({ at: z.int(), looseEnds: z.array(looseEndSchema) });
export type ReadyLook = z.infer<typeof readyLookSchema>;
