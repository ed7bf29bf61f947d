import {
  ABOUT,
  AFTER_NO_READING,
  ASSERTING,
  BEFORE_NO_READING,
  EXPECTING,
  NOT_EXPECTING,
  STATEMENT_OPENERS,
} from '../lexicon/reading-cues';
import { PhraseBook } from '../words/phrases';
import { STOP } from '../words/token';
import { Marks } from './marks';
import type { Measured } from './measured';
import { stopAt, type Talk, wordAt } from './talk';

const BOOKS = {
  asserting: new PhraseBook(ASSERTING),
  expecting: new PhraseBook([
    ...EXPECTING.map((entry) => ({ ...entry, expects: true })),
    ...NOT_EXPECTING.map((entry) => ({ ...entry, expects: false })),
  ]),
  before: new PhraseBook(BEFORE_NO_READING),
  after: new PhraseBook(AFTER_NO_READING),
};

/** How far back a clause can say that its number is only expected. */
const FURTHEST_CUE = 18;
/** Words that may stand between "not" and its number. */
const FURTHEST_NEAR_CUE = 3;

/** Tells numbers that were read off a meter from those that were expected, wished, printed or part of a name. */
export class NoReading {
  readonly #talk: Talk;
  readonly #asserting: Marks<{ say: string }>;
  readonly #expecting: Marks<{ say: string; expects: boolean }>;
  readonly #before: Marks<{ say: string }>;

  constructor(talk: Talk) {
    this.#talk = talk;
    this.#asserting = new Marks(talk, BOOKS.asserting);
    this.#expecting = new Marks(talk, BOOKS.expecting);
    this.#before = new Marks(talk, BOOKS.before);
  }

  /** Whether a verb of showing stands in the clause before `at`. */
  asserted(at: number): boolean {
    for (let back = at - 1; back >= at - FURTHEST_CUE && back >= 0; back--) {
      if (stopAt(this.#talk, back) >= STOP.full) return false;
      if (this.#asserting.at(back)) return true;
    }
    return false;
  }

  /** "it should be about seven": the clause that holds the word at `at` only expects. */
  expected(at: number): boolean {
    let asserted = false;
    for (let back = at - 1; back >= at - FURTHEST_CUE && back >= 0; back--) {
      if (stopAt(this.#talk, back) >= STOP.full) return false;
      if (asserted && this.#opensStatement(back)) return false;
      const cue = this.#expecting.at(back);
      if (cue?.entry.expects) return !this.#usedUp(back, at);
      if (cue) return false;
      if (this.#asserting.at(back)) asserted = true;
    }
    return false;
  }

  /** "it should be half a volt", then a new line: what was expected has been said already. */
  #usedUp(cue: number, at: number): boolean {
    let number = false;
    for (let place = cue; place < at - 1; place++) {
      if (this.#talk.numberFrom.has(place)) number = true;
      const lineEnd = this.#talk.tokens[place]?.line !== this.#talk.tokens[place + 1]?.line;
      if (number && lineEnd && stopAt(this.#talk, place) >= STOP.soft) return true;
    }
    return false;
  }

  #opensStatement(before: number): boolean {
    return stopAt(this.#talk, before) >= STOP.soft || STATEMENT_OPENERS.has(wordAt(this.#talk, before + 1));
  }

  /** "not four", "less than one volt", "another two thou". */
  #ruledOutBefore(at: number): boolean {
    let back = at - 1;
    for (let near = 0; near < FURTHEST_NEAR_CUE && back >= 0; near++, back--) {
      if (
        stopAt(this.#talk, back) >= STOP.soft &&
        this.#talk.tokens[back]?.line === this.#talk.tokens[at]?.line
      )
        return false;
      if (this.#before.at(back)) return true;
      if (!ABOUT.has(wordAt(this.#talk, back))) return false;
    }
    return false;
  }

  /** "two fifty k pot", "two mil too high", "seven k is what you'd expect". */
  #ruledOutAfter(measured: Measured): boolean {
    const { from, to } = measured;
    if (stopAt(this.#talk, to - 1) >= STOP.soft && stopAt(this.#talk, to - 1) !== STOP.soft) return false;
    const comma =
      stopAt(this.#talk, to - 1) === STOP.soft &&
      this.#talk.tokens[to]?.line === this.#talk.tokens[to - 1]?.line;
    const cue = comma ? null : BOOKS.after.matchAt(this.#talk.tokens, to);
    if (!cue || this.#isHeightOff(to)) return false;
    const says = /^(?:is|was|would|should|'s)$/.test(wordAt(this.#talk, to));
    return !(says && this.asserted(from));
  }

  /** "half a mil off the first fret" is a height; "two thou off the top" is none. */
  #isHeightOff(to: number): boolean {
    if (!['off', 'away', 'from'].includes(wordAt(this.#talk, to))) return false;
    return [2, 3, 4].some((step) => HEIGHT_FROM.has(wordAt(this.#talk, to + step)));
  }

  /** "a nine volt supply", "standard eleven-inch head": a singular unit before a noun makes the number a name. */
  #namesAThing({ to, value, singular }: Measured): boolean {
    const several = Math.abs(value) > 1;
    return (
      singular &&
      several &&
      stopAt(this.#talk, to - 1) === STOP.none &&
      !BEHIND_SINGULAR.has(wordAt(this.#talk, to))
    );
  }

  /** "between seven and nine", "seven to nine". */
  #isRange({ from, to }: Measured): boolean {
    const before = wordAt(this.#talk, from - 1);
    const numberBefore = this.#talk.numberTo.has(from - 1);
    const numberAfter = this.#talk.numberFrom.has(to + 1);
    const between = numberBefore && before === 'to' && stopAt(this.#talk, from - 2) === STOP.none;
    return (
      between || (numberAfter && wordAt(this.#talk, to) === 'to' && stopAt(this.#talk, to - 1) === STOP.none)
    );
  }

  /** "normally red is hot", "if it's like the chart": said of wires in general, not of these. */
  supposed(at: number): boolean {
    for (let back = at - 1; back >= at - FURTHEST_CUE && back >= 0; back--) {
      if (SUPPOSING.has(wordAt(this.#talk, back))) return true;
      if (stopAt(this.#talk, back - 1) >= STOP.clause) return false;
    }
    return false;
  }

  rulesOut(measured: Measured): boolean {
    return (
      this.expected(measured.from) ||
      this.#ruledOutBefore(measured.from) ||
      this.#ruledOutAfter(measured) ||
      this.#namesAThing(measured) ||
      this.#isRange(measured)
    );
  }
}

const HEIGHT_FROM = new Set([
  'fret',
  'frets',
  'string',
  'strings',
  'board',
  'fretboard',
  'fingerboard',
  'first',
  'pole',
  'poles',
  'pickup',
]);
const SUPPOSING = new Set([
  'if',
  'might',
  'could',
  'may',
  'usually',
  'normally',
  'typically',
  'often',
  'sometimes',
  'probably',
  'guess',
  'guessing',
  'supposed',
  'should',
  'chart',
  'diagram',
  'assume',
  'assuming',
  'unless',
  'whether',
  'maybe',
  'perhaps',
]);

/** Small words and measured things that may stand behind "ten volt" when a plural was meant. */
const BEHIND_SINGULAR = new Set([
  'on',
  'at',
  'across',
  'and',
  'so',
  'of',
  'but',
  'there',
  'with',
  'which',
  'that',
  "that's",
  'now',
  'from',
  'for',
  'in',
  'is',
  'or',
  'when',
  'okay',
  'again',
  'gap',
  'crack',
  'step',
  'bow',
  'relief',
  'hump',
  'dip',
  'difference',
  'offset',
  'drop',
  'reading',
  'wide',
  'long',
  'deep',
  'thick',
  'apart',
  'flat',
  'sharp',
  'dc',
  'ac',
  'rms',
]);
