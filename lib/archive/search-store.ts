import { asc } from 'drizzle-orm';
import { z } from 'zod';
import type { Database } from '@/db/open';
import { instruments } from '@/db/schema';
import { dayOf, folded } from '@/lib/work';
import type { ArchiveAnswer, ArchiveQuery } from '@/shared/archive';
import { type ClientId, clientIdSchema } from '@/shared/ids';
import { instrumentTypes } from '@/shared/instruments';
import { calendarOf } from './calendar-store';
import { filtersOf } from './filters-store';
import { answersOf } from './found-store';
import { stands, takeInStale } from './index-store';
import { Memory } from './memory';
import { type Question, readQuestion, withoutParts } from './question';
import { answerThreshold } from './rank/jobs';
import { isNarrowed, rankJobs } from './ranked-store';
import { whileUnchanged } from './ready-store';
import { stemsOf } from './snippet';
import { synonymsOf } from './synonyms-store';
import { basisTag } from './tags';
import { withWholeIndex } from './upkeep-store';
import { nearestWord } from './vocabulary-store';

/** What comes closest, where nothing answers. */
const mostNearest = 3;

/** Answers a question with the moments of all jobs that are not in the bin, the best first, each job once. */
export function searchArchive(db: Database, query: ArchiveQuery): ArchiveAnswer {
  return withWholeIndex(db, () => {
    const waiting = takeInStale(db);
    return { ...answer(db, query), waiting };
  });
}

function answer(db: Database, query: ArchiveQuery): Omit<ArchiveAnswer, 'waiting'> {
  const today = query.today ?? dayOf(Date.now());
  const own = synonymsOf(db);
  const asked = readQuestion(query.q, {
    ...calendarOf(db),
    today,
    instrumentTypes: typesOf(db),
    clients: clientsNamedIn(db, query.q),
    ownSynonyms: own,
    knows: (word) => stands(db, word),
    near: (word) => nearestWord(db, word),
  });
  const question = withBasisAsked(withoutParts(asked, query.without.split(',')));
  const ranked = rankJobs(db, question, query, today);
  const good = ranked.filter(({ share }) => share >= answerThreshold);
  const from = Number(query.after ?? 0) || 0;
  const marking = { stems: new Set(question.terms.flatMap(({ any }) => any.flatMap(stemsOf))), own };
  const page = good.slice(from, from + query.limit);
  const none = good.length === 0 && (query.q.trim() !== '' || isNarrowed(query));
  return {
    understood: question.parts,
    answers: answersOf(db, page, marking),
    none,
    nearest: none ? answersOf(db, ranked.slice(0, mostNearest), marking) : [],
    filters: filtersOf(db, good),
    next: from + query.limit < good.length ? String(from + query.limit) : null,
  };
}

/** How a thing is known is asked for like a word: it stands in the index as one. */
function withBasisAsked(question: Question): Question {
  const { basis, terms } = question;
  if (basis === null || terms.length + question.values.length === 0) return question;
  const term = {
    id: 'basis',
    said: basis,
    any: [basisTag(basis)],
    close: 1,
    exact: [],
    weight: 1.5,
    isSlip: false,
  };
  return { ...question, terms: [...terms, term] };
}

/** Clients of whose names a word stands in the question: to read thousands of names word by word takes too long. */
function clientsNamedIn(db: Database, q: string): { id: ClientId; name: string }[] {
  const byWord = clientsByWord(db);
  const named = new Set(lettersOf(q).flatMap((word) => byWord.get(word) ?? []));
  return namedSchema.parse([...named].sort((a, b) => a.place - b.place));
}

const namedSchema = z.array(z.object({ id: clientIdSchema, name: z.string() }));

interface NamedClient {
  id: string;
  name: string;
  /** Among all, by their ids. */
  place: number;
}

const clientsByWord = whileUnchanged((db: Database): ReadonlyMap<string, NamedClient[]> => {
  const ids = db.$client.prepare('SELECT id FROM clients ORDER BY id').pluck().all();
  const names = db.$client.prepare('SELECT name FROM clients ORDER BY id').pluck().all();
  const byWord = new Map<string, NamedClient[]>();
  for (const [place, id] of ids.entries()) {
    const client = { id: String(id), name: String(names[place]), place };
    for (const word of wordsOfName(client.name)) {
      const same = byWord.get(word);
      if (same) same.push(client);
      else byWord.set(word, [client]);
    }
  }
  return byWord;
});

/** All names are gone through after each change: each is read once. */
const namesRead = new Memory<string[]>(20_000);

function wordsOfName(name: string): string[] {
  return namesRead.of(name, () => [...new Set(lettersOf(name))]);
}

function lettersOf(text: string): string[] {
  return folded(text).match(/[\p{L}\p{N}]{2,}/gu) ?? [];
}

const typesOf = whileUnchanged((db: Database): string[] => {
  const own = db.selectDistinct({ type: instruments.type }).from(instruments).orderBy(asc(instruments.type));
  return [...new Set([...instrumentTypes, ...own.all().map(({ type }) => type)])];
});
