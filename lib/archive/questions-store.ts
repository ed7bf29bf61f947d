import { asc, eq } from 'drizzle-orm';
import { GoneError } from '@/db/changes';
import { newId } from '@/db/ids';
import type { Database } from '@/db/open';
import { savedQuestions } from '@/db/schema';
import { type NewSavedQuestion, type SavedQuestion, savedQuestionSchema } from '@/shared/archive';
import { type SavedQuestionId, savedQuestionIdSchema } from '@/shared/ids';

/** Questions that the repairer keeps, by their titles. */
export function listQuestions(db: Database): SavedQuestion[] {
  const rows = db.select().from(savedQuestions).orderBy(asc(savedQuestions.title), asc(savedQuestions.id));
  return rows.all().map((row) => savedQuestionSchema.parse(row));
}

export function saveQuestion(db: Database, wanted: NewSavedQuestion): SavedQuestion {
  const row = { ...wanted, id: newId(savedQuestionIdSchema), createdAt: Date.now() };
  db.insert(savedQuestions).values(row).run();
  return savedQuestionSchema.parse(row);
}

export function removeQuestion(db: Database, id: SavedQuestionId): void {
  const { changes } = db.delete(savedQuestions).where(eq(savedQuestions.id, id)).run();
  if (changes === 0) throw new GoneError('question');
}
