import { z } from 'zod';
import { changeIdSchema, clientIdSchema } from './ids';

export const clientSchema = z.object({
  id: clientIdSchema,
  name: z.string(),
  /** How the client is called in public texts. */
  alias: z.string(),
  /** How to reach the client: lines as they were written. */
  reach: z.string().nullable(),
  notes: z.string().nullable(),
});
export type Client = z.infer<typeof clientSchema>;

const fields = {
  name: z.string().trim().min(1).max(200),
  alias: z.string().trim().min(1).max(200),
  reach: z.string().trim().max(2000).nullable(),
  notes: z.string().trim().max(20_000).nullable(),
};

export const newClientSchema = z.strictObject(fields).partial({ alias: true, reach: true, notes: true });
export type NewClient = z.infer<typeof newClientSchema>;

const patchFields = z.strictObject(fields).partial();
/** `was`: what stood there when it was changed; the change is refused where something else stands there now. */
export const clientPatchSchema = patchFields.extend({ was: patchFields.optional() });
export type ClientPatch = z.infer<typeof clientPatchSchema>;

/** A client in the list of clients. */
export const clientLineSchema = clientSchema.extend({
  jobs: z.int(),
  instruments: z.int(),
  /** When a job of theirs was last touched; null without jobs. */
  lastJobAt: z.int().nullable(),
});
export type ClientLine = z.infer<typeof clientLineSchema>;
export const clientLinesSchema = z.object({ clients: z.array(clientLineSchema) });

/** The other entry goes into this one: its jobs, instruments, notes and ways to be reached. */
export const mergeSchema = z.strictObject({ other: clientIdSchema });

/** Erasing cannot be undone: the name, typed again, says that it is meant. */
export const eraseSchema = z.strictObject({ name: z.string() });
export const erasedSchema = z.object({
  /** Texts of the record in which the name stood and was taken out. */
  texts: z.int(),
  /** Recordings whose file names still hold the name: only their owner can rename them. */
  recordings: z.array(z.string()),
});
export type Erased = z.infer<typeof erasedSchema>;

export const clientChangedSchema = z.object({ change: changeIdSchema, client: clientSchema });
