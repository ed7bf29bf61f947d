import { z } from 'zod';
import { database } from '@/db/open';
import { type ChapterFormatName, chapterFormats } from '@/lib/handover';
import { chapterListOf } from '@/lib/handover/store';
import { jobIdSchema } from '@/shared/ids';
import { query, route } from '../../../../_http/route';

const names = Object.keys(chapterFormats) as [ChapterFormatName, ...ChapterFormatName[]];
const querySchema = z.object({ as: z.enum(names).default('text') });

export const GET = route((request, { job }) => {
  const format = chapterFormats[query(request, querySchema).as];
  const { fileName, chapters } = chapterListOf(database(), jobIdSchema.parse(job));
  const disposition = `inline; filename="${fileName}.${format.extension}"`;
  return new Response(format.write(chapters), {
    headers: { 'content-type': format.contentType, 'content-disposition': disposition },
  });
});
