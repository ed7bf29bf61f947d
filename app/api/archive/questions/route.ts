import { database } from '@/db/open';
import { listQuestions, saveQuestion } from '@/lib/archive/store';
import { newSavedQuestionSchema } from '@/shared/archive';
import { body, route } from '../../_http/route';

export const dynamic = 'force-dynamic';

export const GET = route(() => Response.json({ questions: listQuestions(database()) }));

/** Keeps a question under a title. */
export const POST = route(async (request) => {
  const question = saveQuestion(database(), await body(request, newSavedQuestionSchema));
  return Response.json({ question }, { status: 201 });
});
