import { type Chapter, exactTime, oneLine, shortTime } from '@/lib/film';
import { isBlank, quoted } from './title';

/** What video hosts ask of a chapter list before they show it: common practice, no source. */
export const chapterLimits = { fewest: 3, shortestMs: 10_000, titleLength: 100 } as const;

export type ChapterRule =
  | 'first at 0:00'
  | 'at least three'
  | 'at least 10 seconds each'
  | 'rising'
  | 'title length'
  | 'angle brackets'
  | 'empty title';

export interface ChapterFinding {
  rule: ChapterRule;
  /** Index in the list; null where the rule is about the whole list. */
  chapter: number | null;
  /** For the page: what is wrong and why it matters. */
  sentence: string;
}

/** What stands against the common rules of video hosts, in the order of the list. Empty: all is well. */
export function chapterRules(chapters: readonly Chapter[], durationMs: number): ChapterFinding[] {
  return [
    ...aboutTheList(chapters),
    ...chapters.flatMap((chapter, index) => [
      ...aboutTheTime(chapters, index, durationMs),
      ...aboutTheTitle(oneLine(chapter.title), index, shortTime(chapter.startMs)),
    ]),
  ];
}

/**
 * How long a host sees a chapter last: the plain list tells whole seconds, a chapter in the file the exact
 * time, so the shorter of both counts.
 */
export function seenLengthMs(startMs: number, endMs: number): number {
  return Math.min(endMs - startMs, (Math.floor(endMs / 1000) - Math.floor(startMs / 1000)) * 1000);
}

/** "4 seconds", cut off. */
export function secondsOf(ms: number): string {
  const seconds = Math.floor(ms / 1000);
  return seconds === 1 ? '1 second' : `${seconds} seconds`;
}

/** As the list tells it; to the millisecond where it would tell 0:00 for what is not 0. */
export function startTime(ms: number): string {
  return ms > 0 && ms < 1000 ? exactTime(ms) : shortTime(ms);
}

function aboutTheList(chapters: readonly Chapter[]): ChapterFinding[] {
  const findings: ChapterFinding[] = [];
  if (chapters.length < chapterLimits.fewest)
    findings.push({
      rule: 'at least three',
      chapter: null,
      sentence: `Hosts show chapters from three on; here ${countOf(chapters.length)}. Make more markers public.`,
    });
  const first = chapters[0];
  if (first && first.startMs !== 0)
    findings.push({
      rule: 'first at 0:00',
      chapter: 0,
      sentence: `The first chapter begins at ${startTime(first.startMs)}. Hosts take no list that does not begin at 0:00.`,
    });
  return findings;
}

function countOf(chapters: number): string {
  return ['are none', 'is one', 'are two'][chapters] ?? `are ${chapters}`;
}

function aboutTheTime(chapters: readonly Chapter[], index: number, durationMs: number): ChapterFinding[] {
  const chapter = chapters[index];
  if (!chapter) return [];
  const before = chapters[index - 1];
  const after = chapters[index + 1];
  const name = quoted(chapter.title);
  if (chapter.startMs >= durationMs)
    return [{ rule: 'rising', chapter: index, sentence: `${name} begins at or after the end of the film.` }];
  if (before && seenLengthMs(before.startMs, chapter.startMs) <= 0) {
    const sentence = `${name} does not begin after the chapter before it. Hosts want rising times.`;
    return [{ rule: 'rising', chapter: index, sentence }];
  }
  const lengthMs = seenLengthMs(chapter.startMs, Math.min(after?.startMs ?? durationMs, durationMs));
  // A chapter that ends before it begins is told of by the next one, which does not rise.
  if ((after && lengthMs <= 0) || lengthMs >= chapterLimits.shortestMs) return [];
  const sentence = `${name} lasts ${secondsOf(lengthMs)}. Hosts want at least 10 seconds each.`;
  return [{ rule: 'at least 10 seconds each', chapter: index, sentence }];
}

function aboutTheTitle(title: string, index: number, time: string): ChapterFinding[] {
  const findings: ChapterFinding[] = [];
  const find = (rule: ChapterRule, sentence: string) => findings.push({ rule, chapter: index, sentence });
  if (isBlank(title)) find('empty title', `The chapter at ${time} has no title. Hosts skip such a line.`);
  if (title.length > chapterLimits.titleLength)
    find(
      'title length',
      `${quoted(title)} has ${title.length} characters. Hosts take ${chapterLimits.titleLength}.`,
    );
  if (/[<>]/.test(title))
    find('angle brackets', `${quoted(title)} has < or > in it. Hosts take neither in a description.`);
  return findings;
}
