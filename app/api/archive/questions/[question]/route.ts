import { database } from '@/db/open';
import { removeQuestion } from '@/lib/archive/store';
import { savedQuestionIdSchema } from '@/shared/ids';
import { route } from '../../../_http/route';

export const DELETE = route((_request, { question }) => {
  removeQuestion(database(), savedQuestionIdSchema.parse(question));
  return Response.json({});
});
