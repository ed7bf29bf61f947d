import { z } from 'zod';
import { database } from '@/db/open';
import { type NoteFormatName, noteFormats, notesOf } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { query, route } from '../../../../_http/route';

const names = Object.keys(noteFormats) as [NoteFormatName, ...NoteFormatName[]];
const querySchema = z.object({ as: z.enum(names).default('markdown') });

export const GET = route((request, { job }) => {
  const { as } = query(request, querySchema);
  const { contentType, extension } = noteFormats[as];
  const { fileName, text } = notesOf(database(), jobIdSchema.parse(job), as);
  const disposition = `inline; filename="${fileName}.${extension}"`;
  return new Response(text, { headers: { 'content-type': contentType, 'content-disposition': disposition } });
});
