import type { Metadata } from 'next';
import { database } from '@/db/open';
import { listQuestions, searchArchive } from '@/lib/archive/store';
import { dayOf } from '@/lib/work';
import { rackOf } from '@/lib/work/store';
import { archiveQuerySchema } from '@/shared/archive';
import { type Asked, readAsked, searchOf } from './_question/asked';
import { QuestionPage } from './_question/question-page';

export const dynamic = 'force-dynamic';

interface Props {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}

async function askedOf(searchParams: Props['searchParams']): Promise<Asked> {
  const told = Object.entries(await searchParams).flatMap(([name, value]) => {
    const [first] = [value].flat();
    return first === undefined ? [] : [[name, first]];
  });
  return readAsked(new URLSearchParams(told).toString());
}

export async function generateMetadata({ searchParams }: Props): Promise<Metadata> {
  const { q } = await askedOf(searchParams);
  return { title: q === '' ? 'Archive' : `${q.slice(0, 80)} · Archive` };
}

export default async function ArchivePage({ searchParams }: Props) {
  const db = database();
  const asked = await askedOf(searchParams);
  return (
    <QuestionPage
      first={{ search: searchOf(asked), answer: searchArchive(db, archiveQuerySchema.parse(asked)) }}
      questions={listQuestions(db)}
      hasJobs={rackOf(db, { find: '', limit: 1 }).total > 0}
      today={dayOf(Date.now())}
    />
  );
}
