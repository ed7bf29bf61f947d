import { stemsOf } from '../snippet';
import { prepareWords } from '../words';
import type { SearchData } from './search-data';

/** A job that answers, with its moments that do, the best first. */
export interface LookedUp {
  page: string;
  title: string;
  day: string;
  moments: { anchor: string; shown: string }[];
}

const mostJobs = 50;
const mostMoments = 5;
/** A job has to meet this part of what was asked. */
const enough = 0.6;

/** Whether the data came whole: its script may be missing beside the page. */
export function isSearchData(value: unknown): value is SearchData {
  return (
    typeof value === 'object' &&
    value !== null &&
    ['jobs', 'moments'].every((key) => Array.isArray(Reflect.get(value, key))) &&
    typeof Reflect.get(value, 'words') === 'object'
  );
}

interface Score {
  job: number;
  /** Words of the question that it meets. */
  met: Set<number>;
  /** Moments with the number of words that each meets. */
  moments: Map<number, number>;
}

/**
 * Jobs by how many words of the question they meet, then by how many their best moment meets, then the newest first.
 * Words mean what they mean in the trade: "four wire" finds a 4-conductor. A word that occurs nowhere is taken as
 * the beginning of one.
 */
export function lookUp({ jobs, moments, words }: SearchData, question: string): LookedUp[] {
  const asked = [...new Set(prepareWords(question).split(' ').flatMap(stemsOf))].filter(Boolean);
  const scores = new Map<number, Score>();
  asked.forEach((stem, nth) => {
    for (const number of numbersOf(words, stem)) {
      const job = moments[number]?.[0] ?? 0;
      const score = scores.get(job) ?? { job, met: new Set(), moments: new Map() };
      scores.set(job, score);
      score.met.add(nth);
      score.moments.set(number, (score.moments.get(number) ?? 0) + 1);
    }
  });
  const dayOf = (job: number) => jobs[job]?.[3] ?? '';
  return [...scores.values()]
    .filter(({ met }) => met.size >= asked.length * enough)
    .map((score) => ({ ...score, best: Math.max(...score.moments.values()) }))
    .sort((a, b) => b.met.size - a.met.size || b.best - a.best || (dayOf(a.job) < dayOf(b.job) ? 1 : -1))
    .slice(0, mostJobs)
    .flatMap(({ job, moments: found }) => {
      const [page, title, , day] = jobs[job] ?? [];
      if (page === undefined || title === undefined || day === undefined) return [];
      return [{ page, title, day, moments: bestOf(found, moments) }];
    });
}

function numbersOf(words: SearchData['words'], stem: string): number[] {
  if (Object.hasOwn(words, stem)) return counted(words[stem] ?? []);
  const begun = Object.keys(words).filter((word) => word.startsWith(stem));
  return [...new Set(begun.flatMap((word) => counted(words[word] ?? [])))];
}

function counted(steps: readonly number[]): number[] {
  let number = 0;
  return steps.map((step) => {
    number += step;
    return number;
  });
}

/** The job itself is shown by its title. */
function bestOf(found: ReadonlyMap<number, number>, moments: SearchData['moments']): LookedUp['moments'] {
  return [...found]
    .sort(([a, metByA], [b, metByB]) => metByB - metByA || a - b)
    .flatMap(([number]) => {
      const [, anchor = '', shown = ''] = moments[number] ?? [];
      return anchor === '' ? [] : [{ anchor, shown }];
    })
    .slice(0, mostMoments);
}
