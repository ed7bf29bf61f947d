import type { Answer, ArchiveAnswer } from '@/shared/archive';
import type { Loaded } from './load-set';
import type { Grade, ScoredQuestion } from './scored-set/ask';

/** An answer counts for a moment that lies this near. */
const nearMs = 30_000;
const depth = 10;
/** The first answer is good from this grade on. */
const good = 2;

export interface QuestionScore {
  question: ScoredQuestion;
  /** Of the answers as they came, by the best grade that each meets; 0 for none. */
  found: number[];
  /** Titles of the first answers, to be read where a score is low. */
  titles: string[];
  /** 0 to 1; null for a question without a good answer. */
  ndcg: number | null;
  firstIsGood: boolean;
  saidNone: boolean;
}

export interface SetScore {
  questions: QuestionScore[];
  ndcg: number;
  firstGood: number;
  /** Of the questions without a good answer, how many were recognised. */
  noneRecognised: number;
  noneAsked: number;
}

/** Usual discount of a rank, counted from 1 (Burges et al., “Learning to rank using gradient descent”, 2005). */
const discountOf = (rank: number) => Math.log2(rank + 1);

/** Cumulated gain of a list, each gain divided by the discount of its rank. */
export function discountedGain(gains: readonly number[], discount = discountOf): number {
  return gains.reduce((sum, gain, index) => sum + gain / discount(index + 1), 0);
}

/**
 * nDCG at 10 with gains 2^grade − 1: 1 where nothing could stand in better order.
 * @param found grades in the order of the answers
 * @param all grades of all that could have been found
 */
export function ndcgAt10(found: readonly number[], all: readonly number[]): number {
  const gainOf = (grades: readonly number[]) =>
    discountedGain(grades.slice(0, depth).map((grade) => 2 ** grade - 1));
  return gainOf(found) / gainOf([...all].sort((a, b) => b - a));
}

export function scoreQuestion(question: ScoredQuestion, asked: ArchiveAnswer, set: Loaded): QuestionScore {
  const answers = asked.none ? [] : asked.answers.slice(0, depth);
  const found = oncePerJob(answers, question.grades, set);
  return {
    question,
    found,
    titles: answers.map(({ job, best }) => `${set.keyOf.get(job.id) ?? job.id}: ${best.title}`),
    ndcg: question.grades.length > 0 ? ndcgAt10(found, bestPerJob(question.grades)) : null,
    firstIsGood: (found[0] ?? 0) >= good,
    saidNone: answers.length === 0,
  };
}

export function scoreSet(questions: QuestionScore[]): SetScore {
  const withAnswer = questions.flatMap((each) => (each.ndcg === null ? [] : [{ ...each, ndcg: each.ndcg }]));
  const without = questions.filter(({ ndcg }) => ndcg === null);
  return {
    questions,
    ndcg: mean(withAnswer.map(({ ndcg }) => ndcg)),
    firstGood: mean(withAnswer.map(({ firstIsGood }) => (firstIsGood ? 1 : 0))),
    noneRecognised: without.filter(({ saidNone }) => saidNone).length,
    noneAsked: without.length,
  };
}

/** One line for the whole, then one for each sort of question, then the questions that fell short. */
export function report(name: string, { questions, ndcg, firstGood, noneRecognised, noneAsked }: SetScore) {
  const whole = `${name}: ${questions.length} questions, nDCG@10 ${ndcg.toFixed(3)}, first answer good ${percent(firstGood)}, no answer recognised ${noneRecognised} of ${noneAsked}`;
  const sorts = [...new Set(questions.map(({ question }) => question.sort))].map((sort) => {
    const score = scoreSet(questions.filter(({ question }) => question.sort === sort));
    return sort === 'no answer'
      ? `  ${sort}: ${score.noneRecognised} of ${score.noneAsked}`
      : `  ${sort} (${score.questions.length}): ${score.ndcg.toFixed(3)}, first good ${percent(score.firstGood)}`;
  });
  const short = questions
    .filter((each) => (each.ndcg === null ? !each.saidNone : !each.firstIsGood || each.ndcg < 0.9))
    .map(sayShort);
  return { whole, sorts: sorts.join('\n'), short: short.join('\n') };
}

function sayShort({ question, ndcg, found, titles }: QuestionScore): string {
  const wanted = question.grades.map(({ job, grade }) => `${job}=${grade}`).join(' ');
  const came = titles.slice(0, 4).map((title, index) => `      ${found[index]} ${title}`);
  const score = ndcg === null ? 'answered' : ndcg.toFixed(2);
  return [
    `  ${score} [${question.sort}] “${question.q}” on ${question.today}, wanted ${wanted || 'nothing'}`,
    ...came,
  ].join('\n');
}

/** The best grade that each answer meets. A job that comes a second time counts nothing. */
function oncePerJob(answers: readonly Answer[], grades: readonly Grade[], set: Loaded): number[] {
  const seen = new Set<string>();
  return answers.map((answer) => {
    const again = seen.has(answer.job.id);
    seen.add(answer.job.id);
    return again
      ? 0
      : Math.max(0, ...grades.filter((grade) => meets(answer, grade, set)).map(({ grade }) => grade));
  });
}

function bestPerJob(grades: readonly Grade[]): number[] {
  const byJob = new Map<string, number>();
  for (const { job, grade } of grades) byJob.set(job, Math.max(grade, byJob.get(job) ?? 0));
  return [...byJob.values()];
}

function meets({ job, best, others }: Answer, wanted: Grade, set: Loaded): boolean {
  if (set.keyOf.get(job.id) !== wanted.job) return false;
  const hits = [best, ...others];
  const { ms, record } = wanted;
  if (ms !== null) return hits.some(({ moment }) => moment && Math.abs(moment.ms - ms) <= nearMs);
  if (record !== null) {
    const id = set.recordIds.get(`${wanted.job}#${record}`);
    return hits.some(({ recordId }) => recordId === id);
  }
  return true;
}

const mean = (numbers: number[]) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
