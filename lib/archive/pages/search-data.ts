import { shortTime } from '@/lib/film';
import { kindOf } from '@/lib/readings';
import type { PublicJob } from '@/shared/archive-exports';
import { stemsOf } from '../snippet';
import { prepareWords } from '../words';
import { anchors, pageOf, sayCable } from './job-page';
import type { ListedJob } from './list-pages';
import { sayInstrument } from './told-public';

/** What the search of the pages works on. */
export interface SearchData {
  /** Page, title, instrument type, day. */
  jobs: [string, string, string, string][];
  /** Place of the job in `jobs`, anchor on its page ('' for the page itself), what to show. */
  moments: [number, string, string][];
  /** Places in `moments` by the stem of a word: the first, then the step to each next one. */
  words: Record<string, number[]>;
}

interface Moment {
  anchor: string;
  shown: string;
  /** Words that it is found by beside those shown. */
  more?: string;
}

/** Gathers what can be found, job by job. */
export class SearchGatherer {
  private readonly jobs: ListedJob[] = [];
  private readonly moments: SearchData['moments'] = [];
  private readonly words = new Map<string, number[]>();

  add(job: PublicJob): void {
    const at = this.jobs.length;
    this.jobs.push({ page: pageOf(job.number), title: job.title, type: job.instrument.type, day: job.day });
    for (const { anchor, shown, more = '' } of momentsOf(job)) {
      const number = this.moments.length;
      this.moments.push([at, anchor, shown]);
      for (const stem of new Set(
        prepareWords(`${shown} ${more}`, [], job.instrument.type).split(' ').flatMap(stemsOf),
      )) {
        const own = this.words.get(stem);
        if (own) own.push(number);
        else this.words.set(stem, [number]);
      }
    }
  }

  listed(): readonly ListedJob[] {
    return this.jobs;
  }

  /** A script that hands the data to the page: a page from a disk may load scripts, but fetch nothing. */
  script(): string {
    const data: SearchData = {
      jobs: this.jobs.map(({ page, title, type, day }) => [page, title, type, day]),
      moments: this.moments,
      words: Object.fromEntries([...this.words].map(([stem, numbers]) => [stem, steps(numbers)])),
    };
    return `window.archiveData = ${asScript(data)};\n`;
  }
}

function momentsOf(job: PublicJob): Moment[] {
  const instrument = sayInstrument(job.instrument);
  return [
    { anchor: '', shown: job.title, more: instrument },
    ...job.chapters.map(({ atMs, kind, title, note }, nth) => ({
      anchor: anchors.chapter(nth),
      shown: at(atMs, title),
      more: [kind, note].filter(Boolean).join(' '),
    })),
    ...job.readings.map(({ atMs, kind, subject, place, value, note }, nth) => ({
      anchor: anchors.reading(nth),
      shown: at(atMs, `${[subject, place].filter(Boolean).join(', ')}: ${value}`),
      more: [kindOf(kind).label, note].filter(Boolean).join(' '),
    })),
    ...job.traces.map(({ subject, conductors, shield, joined }, nth) => ({
      anchor: anchors.trace(nth),
      shown: [`Trace of the ${subject}`, ...joined.slice(0, 1).map(({ title }) => title)].join(': '),
      more: `${conductors.length}-conductor ${sayCable({ conductors, shield })} joined wired`,
    })),
    ...job.done.map(({ atMs, what }, nth) => ({
      anchor: anchors.done(nth),
      shown: at(atMs, what),
      more: 'work done',
    })),
  ];
}

function at(atMs: number | null, text: string): string {
  return atMs === null ? text : `${shortTime(atMs)} ${text}`;
}

function steps(numbers: readonly number[]): number[] {
  return numbers.map((number, nth) => number - (numbers[nth - 1] ?? 0));
}

/**
 * JSON as it may stand in any script: nothing that ends or opens an element (WHATWG HTML, section 4.12.1.3), and the
 * two line ends that were none in JSON alone before ECMAScript 2019.
 */
function asScript(value: unknown): string {
  const asCode = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, asCode);
}
