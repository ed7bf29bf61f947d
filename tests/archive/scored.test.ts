import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '@/db/open';
import { searchArchive } from '@/lib/archive/store';
import { archiveQuerySchema } from '@/shared/archive';
import { openTestDatabase } from '../open-test-database';
import { type Loaded, loadSet } from './load-set';
import type { ScoredQuestion } from './scored-set/ask';
import { blindJobs } from './scored-set/blind-jobs';
import { blindQuestions } from './scored-set/blind-questions';
import type { ScoredJob } from './scored-set/form';
import { scoredJobs } from './scored-set/jobs';
import { scoredQuestions } from './scored-set/questions';
import { secondJobs } from './scored-set/second-jobs';
import { secondQuestions } from './scored-set/second-questions';
import { thirdJobs } from './scored-set/third-jobs';
import { thirdQuestions } from './scored-set/third-questions';
import { report, type SetScore, scoreQuestion, scoreSet } from './scorer';

interface Case {
  name: string;
  /** Whether the questions that fell short are shown: not those that nobody is to tune rules to. */
  open: boolean;
  jobs: ScoredJob[];
  questions: ScoredQuestion[];
  target: { ndcg: number; firstGood: number; noneMissed: number };
}

const cases: Case[] = [
  {
    name: 'scored set',
    open: true,
    jobs: scoredJobs,
    questions: scoredQuestions,
    target: { ndcg: 0.95, firstGood: 0.93, noneMissed: 1 },
  },
  // Other jobs in other words. What fell short was looked at afterwards, and mended by its kind.
  {
    name: 'blind set',
    open: false,
    jobs: blindJobs,
    questions: blindQuestions,
    target: { ndcg: 0.92, firstGood: 0.9, noneMissed: 1 },
  },
  {
    name: 'second blind set',
    open: false,
    jobs: secondJobs,
    questions: secondQuestions,
    target: { ndcg: 0.9, firstGood: 0.88, noneMissed: 1 },
  },
  // Asked once before anybody looked: 0.776, 74 %, 2 of 5; with the words of the trade widened unseen, 0.821, 77 %, 2 of 5.
  {
    name: 'third blind set',
    open: false,
    jobs: thirdJobs,
    questions: thirdQuestions,
    target: { ndcg: 0.83, firstGood: 0.78, noneMissed: 2 },
  },
];

describe.each(cases)('the archive asked the $name', ({ name, open, jobs, questions, target }) => {
  let home: ReturnType<typeof openTestDatabase>;
  let score: SetScore;
  let told: string;

  beforeAll(() => {
    home = openTestDatabase();
    const loaded = loadSet(home.db, jobs);
    takeAllIn(home.db);
    score = scoreSet(questions.map((question) => askOne(home.db, question, loaded)));
    const { whole, sorts, short } = report(name, score);
    told = open ? `${sorts}\n${short}` : sorts;
    process.stdout.write(`${whole}\n`);
  }, 60_000);
  afterAll(() => home.close());

  it('puts good answers in good order', () => {
    expect(score.ndcg, told).toBeGreaterThanOrEqual(target.ndcg);
  });

  it('gives a good answer first', () => {
    expect(score.firstGood, told).toBeGreaterThanOrEqual(target.firstGood);
  });

  it('knows when there is no answer', () => {
    expect(score.noneAsked - score.noneRecognised, told).toBeLessThanOrEqual(target.noneMissed);
  });
});

/** Asks for nothing until no job waits to be taken in. */
function takeAllIn(db: Database): void {
  const nothing = archiveQuerySchema.parse({});
  for (let left = 100; searchArchive(db, nothing).waiting > 0; left--) {
    if (left === 0) throw new Error('The archive does not come to an end of taking jobs in.');
  }
}

function askOne(db: Database, question: ScoredQuestion, loaded: Loaded) {
  const { q, today } = question;
  return scoreQuestion(question, searchArchive(db, archiveQuerySchema.parse({ q, today })), loaded);
}
