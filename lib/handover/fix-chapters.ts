import { type Chapter, type ChapterStart, oneLine, shortTime, withEnds } from '@/lib/film';
import {
  type ChapterFinding,
  chapterLimits,
  chapterRules,
  secondsOf,
  seenLengthMs,
  startTime,
} from './chapter-rules';
import { isBlank, moreTelling, quoted, shortTitle } from './title';

export interface FixedChapters {
  chapters: Chapter[];
  /** What was changed, in sentences for the preview. Empty: nothing had to be. */
  changes: string[];
  /** What no change of the list can mend: too few chapters, a film that is too short. */
  left: ChapterFinding[];
}

type Step = (starts: readonly ChapterStart[], durationMs: number, say: Say) => ChapterStart[];
type Say = (sentence: string) => void;

/**
 * Brings a chapter list in line with the common rules of video hosts. The markers are not touched. A second
 * run changes nothing. Of chapters that stand too close as many are kept as there can be.
 */
export function fixChapters(chapters: readonly Chapter[], durationMs: number): FixedChapters {
  const changes: string[] = [];
  const starts = steps.reduce<readonly ChapterStart[]>(
    (list, step) => step(list, durationMs, (sentence) => changes.push(sentence)),
    chapters.map(({ startMs, title }) => ({ startMs, title: oneLine(title) })),
  );
  const fixed = withEnds(starts, durationMs);
  return { chapters: fixed, changes, left: chapterRules(fixed, durationMs) };
}

const withinTheFilm: Step = (starts, durationMs, say) =>
  starts.filter((start) => {
    if (start.startMs < durationMs) return true;
    say(`${quoted(start.title)} is left out: it begins at or after the end of the film.`);
    return false;
  });

const inOrder: Step = (starts, _durationMs, say) => {
  const sorted = starts.toSorted((a, b) => a.startMs - b.startMs);
  if (sorted.some((start, index) => start !== starts[index]))
    say('The chapters are put in the order of their times.');
  return sorted;
};

const firstAtStart: Step = (starts, _durationMs, say) => {
  const [first, ...others] = starts;
  if (!first || first.startMs === 0) return [...starts];
  say(`${quoted(first.title)} moves from ${startTime(first.startMs)} to 0:00.`);
  return [{ ...first, startMs: 0 }, ...others];
};

/**
 * A chapter that is too short takes in the next one, since markers set closely are mostly about one thing; the
 * last goes into the one before. The time is that of the earlier, the title the more telling of both.
 */
const longEnough: Step = (starts, durationMs, say) => {
  const long: ChapterStart[] = [];
  for (const start of starts) {
    const before = long.at(-1);
    if (!before || !isShort(before, start.startMs)) long.push(start);
    else long.splice(-1, 1, joined(before, start, tooShort(before, start.startMs), say));
  }
  const [before, last] = long.slice(-2);
  if (before && last && isShort(last, durationMs))
    long.splice(-2, 2, joined(before, last, tooShort(last, durationMs), say));
  return long;
};

const withTitles: Step = (starts, _durationMs, say) =>
  starts.map((start, index) => {
    if (!isBlank(start.title)) return start;
    const title = `Part ${index + 1}`;
    say(`The chapter at ${shortTime(start.startMs)} has no title and is called “${title}”.`);
    return { ...start, title };
  });

const withoutBrackets: Step = (starts, _durationMs, say) =>
  starts.map((start) => {
    const title = start.title.replaceAll('<', '‹').replaceAll('>', '›');
    if (title !== start.title) say(`${quoted(start.title)}: < and > become ‹ and ›.`);
    return { ...start, title };
  });

const shortEnough: Step = (starts, _durationMs, say) =>
  starts.map((start) => {
    const title = shortTitle(start.title, chapterLimits.titleLength);
    if (title !== start.title)
      say(`${quoted(start.title)} is shortened from ${start.title.length} to ${title.length} characters.`);
    return { ...start, title };
  });

const steps: readonly Step[] = [
  withinTheFilm,
  inOrder,
  firstAtStart,
  longEnough,
  withTitles,
  withoutBrackets,
  shortEnough,
];

function isShort(start: ChapterStart, endMs: number): boolean {
  return seenLengthMs(start.startMs, endMs) < chapterLimits.shortestMs;
}

function tooShort(start: ChapterStart, endMs: number): string {
  return `${quoted(start.title)} lasts only ${secondsOf(seenLengthMs(start.startMs, endMs))}`;
}

function joined(early: ChapterStart, late: ChapterStart, why: string, say: Say): ChapterStart {
  const title = moreTelling(early.title, late.title);
  const dropped = title === early.title ? late.title : early.title;
  const name = dropped === title ? '' : `, named ${quoted(title)} rather than ${quoted(dropped)}`;
  say(`${why}, so two chapters become one at ${shortTime(early.startMs)}${name}.`);
  return { startMs: early.startMs, title };
}
