import { describe, expect, it } from 'vitest';
import { instrumentTypes } from '@/shared/instruments';
import type { Grade, ScoredQuestion } from './scored-set/ask';
import { blindJobs } from './scored-set/blind-jobs';
import { blindQuestions } from './scored-set/blind-questions';
import type { ScoredJob } from './scored-set/form';
import { scoredJobs } from './scored-set/jobs';
import { scoredQuestions } from './scored-set/questions';
import { discountedGain, ndcgAt10 } from './scorer';

const sets = [
  { name: 'scored', jobs: scoredJobs, questions: scoredQuestions },
  { name: 'blind', jobs: blindJobs, questions: blindQuestions },
];

describe('the measure', () => {
  it('discounts as Järvelin and Kekäläinen 2002 do in their own example (figures from memory)', () => {
    // “Cumulated gain-based evaluation of IR techniques”, ACM TOIS 20(4): G′ and its DCG at b = 2, where
    // ranks before the base are not discounted.
    const gains = [3, 2, 3, 0, 0, 1, 2, 2, 3, 0];
    const sums = gains.map((_, index) =>
      discountedGain(gains.slice(0, index + 1), (rank) => Math.max(1, Math.log2(rank))),
    );
    const printed = [3, 5, 6.89, 6.89, 6.89, 7.28, 7.99, 8.66, 9.61, 9.61];
    expect(sums.map((sum) => Number(sum.toFixed(2)))).toEqual(printed);
  });

  it('agrees with a list worked by hand', () => {
    // Grades 3 2 3 0 1 2: gains 7 3 7 0 1 3 over log2 of 2 3 4 5 6 7.
    const byHand = 7 + 3 / 1.58496 + 7 / 2 + 0 + 1 / 2.58496 + 3 / 2.80735;
    // At its best 3 3 2 2 1 0.
    const best = 7 + 7 / 1.58496 + 3 / 2 + 3 / 2.32193 + 1 / 2.58496;
    expect(ndcgAt10([3, 2, 3, 0, 1, 2], [0, 1, 2, 2, 3, 3])).toBeCloseTo(byHand / best, 5);
  });

  it('is 1 for the best order and 0 for nothing', () => {
    expect(ndcgAt10([3, 3, 1], [1, 3, 3])).toBe(1);
    expect(ndcgAt10([0, 0], [3])).toBe(0);
    expect(ndcgAt10([], [3])).toBe(0);
  });

  it('asks no more than ten answers', () => {
    const eleven = Array.from({ length: 11 }, () => 3);
    expect(ndcgAt10(eleven.slice(1), eleven)).toBe(1);
  });
});

describe.each(sets)('the $name set', ({ jobs, questions }) => {
  it('names each job once', () => {
    expect(new Set(jobs.map(({ key }) => key)).size).toBe(jobs.length);
  });

  it('grades only what is there', () => {
    expect(
      questions.flatMap(({ q, grades }) => grades.filter((each) => !isThere(each, jobs)).map(() => q)),
    ).toEqual([]);
  });

  it('has right answers except where none is meant', () => {
    for (const { sort, grades } of questions) expect(grades.length === 0).toBe(sort === 'no answer');
  });

  it('shares no word between question and best answers where it says so', () => {
    const shared = questions
      .filter(({ sort }) => sort === 'no shared word')
      .flatMap((question) => sharedWords(question, jobs).map((word) => `${question.q}: ${word}`));
    expect(shared).toEqual([]);
  });
});

describe('the scored set as a whole', () => {
  const ofSort = (sort: string) => scoredQuestions.filter((each) => each.sort === sort).length;

  it('is as large and as mixed as was agreed', () => {
    expect(scoredJobs.length).toBeGreaterThanOrEqual(100);
    expect(scoredQuestions.length).toBeGreaterThanOrEqual(60);
    expect(ofSort('no shared word')).toBeGreaterThanOrEqual(15);
    expect(ofSort('date decides')).toBeGreaterThanOrEqual(5);
    expect(ofSort('no answer')).toBeGreaterThanOrEqual(5);
    const types = scoredJobs.map(({ type }) => type);
    expect(instrumentTypes.filter((type) => !types.includes(type))).toEqual([]);
  });

  it('has nothing of the blind set', () => {
    const keys = new Set(scoredJobs.map(({ key }) => key));
    expect(blindJobs.filter(({ key }) => keys.has(key))).toEqual([]);
  });
});

function isThere({ job: key, ms, record }: Grade, jobs: readonly ScoredJob[]): boolean {
  const job = jobs.find((each) => each.key === key);
  if (!job) return false;
  const joints = job.traces.flatMap(({ joint }) => joint ?? []);
  const moments = [...job.markers, ...job.readings, ...job.lines, ...joints];
  if (ms !== null) return moments.some((moment) => Math.abs(moment.ms - ms) <= 1000);
  return record === null || recordsOf(job).includes(record);
}

function recordsOf({ work, parts, claims }: ScoredJob): string[] {
  return [
    ...work.map(({ what }) => `work: ${what}`),
    ...parts.map(({ what }) => `part: ${what}`),
    ...claims.map(({ value }) => `claim: ${value}`),
  ];
}

/** Words of a question, but for the commonest, that some best answer's job has anywhere in its texts. */
function sharedWords({ q, grades }: ScoredQuestion, jobs: readonly ScoredJob[]): string[] {
  const best = grades.filter(({ grade }) => grade === 3).map(({ job }) => job);
  const texts = jobs.filter(({ key }) => best.includes(key)).map(textsOf);
  const there = wordsOf(texts.flat().join(' '));
  return [...wordsOf(q)].filter((word) => there.has(word));
}

function textsOf(job: ScoredJob): string[] {
  const joints = job.traces.flatMap(({ joint }) => joint ?? []);
  return [
    ...[job.title, job.maker ?? '', job.model ?? '', job.features ?? '', ...recordsOf(job)],
    ...job.markers.flatMap(({ title, note }) => [title, note ?? '']),
    ...job.readings.map(({ subject }) => subject),
    ...job.lines.map(({ text }) => text),
    ...job.traces.flatMap(({ subject, conductors }) => [subject, ...conductors]),
    ...joints.flatMap(({ title, lines }) => [title, ...lines.map(({ goesTo }) => goesTo)]),
  ];
}

const common = new Set(
  'a an and at be but by did do for from had has how i in is it no not of on one or out that the to up was what where which with'.split(
    ' ',
  ),
);

/** Words without their commonest endings. */
function wordsOf(text: string): Set<string> {
  const words = text.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  return new Set(words.filter((word) => !common.has(word)).map((word) => word.replace(/(ing|ed|es|s)$/, '')));
}
