import type { MarkerKind } from '@/shared/markers';
import { MARKER_CUES, type MarkerCue, READING_TITLES, SYMPTOMS, WORK_VERBS } from '../lexicon/marker-cues';
import { WORK_PARTS } from '../lexicon/work-cues';
import { PhraseBook, type PhraseMatch } from '../words/phrases';
import { SpanIndex } from '../words/span-index';
import { STOP, type TokenSpan } from '../words/token';
import type { Draft } from './proposal';
import type { ReadingCandidate } from './reading-candidate';
import { stopAt, type Talk, timesOf, wordAt } from './talk';

type Step = MarkerCue['step'];
/** One book a step, so that "so on the …" does not hide "on the bench". */
const STEPS: readonly Step[] = ['intake', 'search', 'found', 'measure', 'work', 'result'];
const BOOKS = STEPS.map((step) => new PhraseBook<MarkerCue>(MARKER_CUES.filter((cue) => cue.step === step)));

/** Two chapters of the same step lie at least this far apart. */
const LEAST_APART_MS: Readonly<Record<Step, number>> = {
  intake: Number.POSITIVE_INFINITY,
  search: 45_000,
  found: 30_000,
  measure: 45_000,
  work: 11_000,
  result: 60_000,
};
/** The introduction of a job is made in its first seconds. */
const INTAKE_WITHIN_MS = 40_000;
const READINGS_FOLLOW_MS = 9000;
const GROUP_GAP_MS = 30_000;

interface Chapter extends TokenSpan {
  readonly kind: MarkerKind;
  readonly step: Step;
  readonly title: string;
  readonly confidence: number;
}

/** Finds chapters: moments that somebody would want to go to, with titles made of the trade's words only. */
class MarkerFinder {
  readonly #talk: Talk;
  readonly #readings: SpanIndex<ReadingCandidate>;
  /** Spans in which work is only promised, or told as done: no chapters of work there. */
  readonly #told: SpanIndex<TokenSpan>;

  constructor(talk: Talk, readings: readonly ReadingCandidate[], told: readonly TokenSpan[]) {
    this.#talk = talk;
    this.#readings = new SpanIndex(readings);
    this.#told = new SpanIndex(told);
  }

  find(): Chapter[] {
    const said = BOOKS.flatMap((book) => book.all(this.#talk.tokens, this.#talk.places))
      .map((match) => this.#chapterOf(match))
      .filter((chapter) => chapter !== null);
    const all = [...said, ...this.#groups()].sort((a, b) => a.from - b.from);
    return this.#thinned(all);
  }

  #ms(at: number): number {
    return timesOf(this.#talk, { from: at, to: at + 1 }).startMs;
  }

  #startsThought(at: number): boolean {
    return at === 0 || stopAt(this.#talk, at - 1) >= STOP.soft;
  }

  #clauseEnd(at: number, most: number): number {
    let to = at;
    while (to - at < most && to < this.#talk.tokens.length && stopAt(this.#talk, to) < STOP.full) to++;
    return Math.min(to + 1, this.#talk.tokens.length);
  }

  #words(span: TokenSpan): string[] {
    return this.#talk.tokens.slice(span.from, span.to).map((token) => token.word);
  }

  #chapterOf(match: PhraseMatch<MarkerCue>): Chapter | null {
    const { step, kind } = match.entry;
    switch (step) {
      case 'intake':
        return this.#ms(match.from) - this.#ms(0) <= INTAKE_WITHIN_MS
          ? { ...match, kind, step, title: `What came in: ${this.#instrument()}`, confidence: 0.9 }
          : null;
      case 'work':
        return this.#work(match);
      case 'search':
        if (this.#isAside(match)) return null;
        return {
          ...match,
          kind,
          step,
          title: this.#searchTitle(match),
          confidence: 0.75,
        };
      case 'found':
        return this.#isTold(match)
          ? null
          : { ...match, kind, step, title: this.#about('Found: the', 'Fault found', match), confidence: 0.8 };
      case 'measure':
        if (this.#isWeakMeasure(match)) return null;
        return { ...match, kind, step, title: this.#measuredTitle(match.from), confidence: 0.8 };
      case 'result':
        return this.#isTold(match)
          ? null
          : { ...match, kind, step, title: 'Hearing the result', confidence: 0.85 };
    }
  }

  #instrument(): string {
    const type = this.#talk.context.instrumentType;
    return type === 'other' || type === '' ? 'the instrument' : type;
  }

  #isTold(span: TokenSpan): boolean {
    return this.#told.within(span.from - LONGEST_TOLD, span.to).some((told) => span.from < told.to);
  }

  /** "asked me to find out", "while I've got the cover off": no search begins there. */
  #isAside(match: PhraseMatch<MarkerCue>): boolean {
    const before = wordAt(this.#talk, match.from - 1);
    const offFirst = OPENINGS.has(wordAt(this.#talk, match.from));
    return before === 'to' || (offFirst && !this.#startsThought(match.from) && !OPENED_BY.has(before));
  }

  /** A chapter of work: something is taken in hand, with a verb of the bench or a part. */
  #work(match: PhraseMatch<MarkerCue>): Chapter | null {
    const opened =
      this.#startsThought(match.from) ||
      OPENED_BY.has(wordAt(this.#talk, match.from - 1)) ||
      /^(?:i'm|we're)$/.test(wordAt(this.#talk, match.from));
    if (!opened || this.#isTold(match)) return null;
    const span = { from: match.from, to: this.#clauseEnd(match.from, 10) };
    const words = this.#words(span);
    if (words.some((word) => NOT_NOW.has(word)) || this.#readsSoon(match.from)) return null;
    const verb = words.find(
      (word) =>
        WORK_VERBS[word] !== undefined &&
        !(word === 'do' || word === 'use' || word === 'start' || word === 'set'),
    );
    const weak = words.find((word) => word === 'do' || word === 'use' || word === 'start');
    const part = this.#part(span);
    const plain = !FIRST.has(words[0] ?? '') && !words.some((word) => FIRST.has(word));
    const copula = part !== null && COPULA.has(wordAt(this.#talk, part.to));
    const early = plain && part !== null && part.from - match.from <= 5 && !copula;
    const announced = plain && verb !== undefined && /^(?:next|first|last|time)$/.test(words[0] ?? '');
    const enough =
      announced || (verb !== undefined && !plain)
        ? true
        : early || (weak !== undefined && part !== null && !plain);
    const takenApart =
      /^(?:out|off|strip|take|pull|break|time|old|onto|on)$/.test(words[0] ?? '') &&
      (verb !== undefined ||
        part !== null ||
        /^(?:out|off) (?:they|it|come|with)|strip it/.test(words.join(' ')));
    if (!enough && !takenApart) return null;
    const title = workTitle(
      WORK_VERBS[verb ?? ''] ?? (takenApart && !verb ? 'Taking out' : null),
      part?.name ?? null,
    );
    return { ...match, kind: 'work', step: 'work', title, confidence: verb ? 0.75 : 0.65 };
  }

  /** The first part named in a span, with a second word that belongs to it ("machine heads"). */
  #part({ from, to }: TokenSpan): (TokenSpan & { name: string }) | null {
    for (let at = from; at < to; at++) {
      if (
        !WORK_PARTS.has(wordAt(this.#talk, at)) ||
        (WORK_VERBS[wordAt(this.#talk, at)] === 'Restringing' && at === from)
      )
        continue;
      const pair = WORK_PARTS.has(wordAt(this.#talk, at + 1)) && stopAt(this.#talk, at) === STOP.none;
      const span = { from: at, to: pair ? at + 2 : at + 1 };
      return { ...span, name: this.#words(span).join(' ') };
    }
    return null;
  }

  /** Readings that begin at a token or at most `ms` behind it. */
  #readingsWithin(from: number, ms: number): ReadingCandidate[] {
    const found: ReadingCandidate[] = [];
    for (let next = this.#readings.firstFrom(from); next; next = this.#readings.firstFrom(next.from + 1)) {
      if (this.#ms(next.from) - this.#ms(from) > ms) break;
      found.push(next);
    }
    return found;
  }

  #readsSoon(at: number): boolean {
    return this.#readingsWithin(at, READINGS_FOLLOW_MS).length > 0;
  }

  #searchTitle(span: TokenSpan): string {
    const within = { from: span.from, to: this.#clauseEnd(span.from, 12) };
    const symptom = this.#words(within).find((word) => SYMPTOMS.has(word));
    if (symptom !== undefined) return `Looking for the ${symptom}`;
    const part = this.#part(within)?.name;
    return part === undefined ? 'Having a look' : `A look at the ${part}`;
  }

  #about(withThing: string, without: string, span: TokenSpan): string {
    const to = this.#clauseEnd(span.from, 12);
    const symptom = this.#words({ from: span.from, to }).find((word) => SYMPTOMS.has(word));
    const thing = symptom ?? this.#part({ from: span.from, to })?.name;
    return thing === undefined ? without : `${withThing} ${thing}`;
  }

  /** "check that again" is a chapter only when more than one reading follows. */
  #isWeakMeasure(match: PhraseMatch<MarkerCue>): boolean {
    const strong =
      /^(?:let's|let|get|put|stick|stuck|got|grab|have|meter|multimeter|final|some|more|starting|powering|power|bring|bringing|inductance|lcr|capacitance|okay|right|so|now|going|gonna|see|measured|measurement)$/.test(
        wordAt(this.#talk, match.from),
      );
    const following = this.#readingsWithin(match.from, 25_000);
    return !strong && following.length < 2;
  }

  /** What is measured next, by the readings that follow. */
  #measuredTitle(from: number): string {
    const next = this.#readingsWithin(from, GROUP_GAP_MS);
    const kinds = [
      ...new Set(next.map((reading) => READING_TITLES[reading.payload.kind] ?? reading.payload.kind)),
    ].slice(0, 2);
    const about = next[0]?.about;
    if (kinds.length === 0) return 'Taking measurements';
    const what = kinds.join(' and ');
    return about ? capital(`${about} pickup ${what}`) : `Measuring ${what}`;
  }

  /** Readings that come close together make a chapter even when nobody announces it. */
  #groups(): Chapter[] {
    const chapters: Chapter[] = [];
    this.#readings.list.forEach((reading, at) => {
      const before = this.#readings.list[at - 1];
      const first = !before || this.#ms(reading.from) - this.#ms(before.to - 1) > GROUP_GAP_MS;
      const third = this.#readings.list[at + 2];
      const follows = third && this.#ms(third.from) - this.#ms(reading.from) <= 30_000;
      if (first && follows && reading.payload.kind !== 'humidity')
        chapters.push({
          from: reading.from,
          to: reading.to,
          kind: 'measurement',
          step: 'measure',
          title: this.#measuredTitle(reading.from),
          confidence: 0.7,
        });
    });
    return chapters;
  }

  /** Leaves out chapters that come too soon after one of the same step, or fall together with a better one. */
  #thinned(chapters: readonly Chapter[]): Chapter[] {
    const kept: Chapter[] = [];
    for (const chapter of chapters) {
      const same = kept.findLast((one) => one.step === chapter.step);
      const other = chapter.step === 'measure' && same?.title !== chapter.title;
      const apart = other ? OTHER_MEASURE_MS : LEAST_APART_MS[chapter.step];
      if (same && this.#ms(chapter.from) - this.#ms(same.from) < apart) continue;
      const last = kept.at(-1);
      const together = last && this.#ms(chapter.from) - this.#ms(last.from) < TOGETHER_MS;
      if (!together) kept.push(chapter);
      else if (RANK[chapter.step] > RANK[last.step]) kept[kept.length - 1] = chapter;
    }
    return kept;
  }
}

/** Another quantity is measured: a chapter of its own, sooner. */
const OTHER_MEASURE_MS = 18_000;
const LONGEST_TOLD = 40;
const TOGETHER_MS = 2800;
const RANK: Readonly<Record<Step, number>> = {
  intake: 6,
  found: 5,
  result: 4,
  measure: 3,
  work: 2,
  search: 1,
};
const OPENINGS = new Set(['pickguard', 'scratchplate', 'back', 'cover', 'plate', 'lid', 'chassis']);
const OPENED_BY = new Set(['so', 'okay', 'right', 'and', 'ok', 'alright', 'now']);
const COPULA = new Set([
  'is',
  "'s",
  'are',
  'was',
  'were',
  'has',
  'have',
  'feels',
  'looks',
  'seems',
  'sits',
  'needs',
  'wants',
  'measures',
  'reads',
]);
const FIRST = new Set(["i'm", "i'll", "let's", "we'll", "we're", 'let', 'i']);
const NOT_NOW = new Set([
  'measure',
  'check',
  'test',
  'hear',
  'listen',
  'ring',
  'camera',
  'should',
  'would',
  "didn't",
  "haven't",
  "don't",
  'if',
  'tomorrow',
  'said',
  'told',
  'promised',
  'offered',
  'wants',
  'wanted',
  'asked',
  'reads',
  'reading',
  'meter',
  'sounds',
  "won't",
  'done',
  'happy',
  'look',
  'see',
  'need',
  'text',
  'call',
  'works',
  'fixed',
  'sorted',
  'expect',
  'before',
  'until',
  'when',
  'leave',
  'because',
  'recording',
  'filming',
  'phone',
]);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function workTitle(verb: string | null, part: string | null): string {
  if (verb && part) return `${verb} the ${part}`;
  if (part) return capital(`the ${part}`);
  return verb ?? 'At work';
}

/** The chapters of a talk. Titles hold nothing but words of the trade, so never a name. */
export function findMarkers(
  talk: Talk,
  readings: readonly ReadingCandidate[],
  elsewhere: readonly Draft[],
): Draft[] {
  const told = elsewhere.map((draft) => ({ from: draft.from, to: draft.to }));
  return new MarkerFinder(talk, readings, told).find().map(({ from, to, kind, title, confidence }) => ({
    type: 'marker',
    from,
    to,
    confidence,
    about: null,
    payload: { markerKind: kind, title },
  }));
}
