import { z } from 'zod';
import { claimSchema } from '@/shared/claims';
import { clientSchema } from '@/shared/clients';
import { instrumentSchema, jobRecordSchema } from '@/shared/jobs';
import { narrationSchema } from '@/shared/narration-record';

/** What the file is, for whoever opens it without this program. */
export const exportWords =
  'Everything that a workshop has on record about one client: the entry itself, the instruments with what is claimed about them, and every job with its whole record, the spoken lines of its film and what was heard in them. Times ending in Ms are milliseconds into a take; times ending in At are milliseconds since 1970-01-01T00:00Z; days are written as in ISO 8601. The recordings themselves are files of their own, named by their path.';

/** All that is known about one client, as one file. */
export const clientExportSchema = z.object({
  about: z.literal(exportWords),
  format: z.literal('benchtake client 1'),
  /** When it was made (ISO 8601, UTC). */
  madeAt: z.iso.datetime(),
  client: clientSchema.extend({ createdAt: z.int() }),
  instruments: z.array(instrumentSchema.extend({ claims: z.array(claimSchema) })),
  /** Newest first; those in the bin too. */
  jobs: z.array(z.object({ record: jobRecordSchema, narration: narrationSchema })),
});
export type ClientExport = z.infer<typeof clientExportSchema>;
