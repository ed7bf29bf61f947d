import {
  FIRST_PERSON,
  FREE_CUES,
  FUTURE,
  NOT_YET,
  SERVICES,
  WORK_CUES,
  WORK_PARTS,
  type WorkCue,
} from '../lexicon/work-cues';
import type { Draft } from '../rules/proposal';
import { type Talk, timesOf } from '../rules/talk';
import { PhraseBook, type PhraseMatch, phraseBook } from '../words/phrases';
import { STOP, type Token, type TokenSpan } from '../words/token';
import { type Charge, isSettled, type Origin, type Outcome, type WorkItem, WorkItems } from './items';
import { contentOf, describe, objectsAfter } from './object';
import { isNoWork, partIn, withoutNames } from './parts';

const CUES = new PhraseBook<WorkCue>(WORK_CUES);
const FREE = phraseBook(FREE_CUES);
/** A further thing asked for, or a found fault taken up, follows this soon. */
const FOLLOWS_MS = 14_000;
const DONE_AFTER_MS = 5000;
const ONE_BREATH_MS = 6000;
const FOUND_FOLLOWS_MS = 26_000;
/** Plans count as asked work only while the job is being introduced. */
const INTRODUCTION_MS = 75_000;

class WorkFinder {
  readonly #talk: Talk;
  readonly #tokens: readonly Token[];
  readonly #items = new WorkItems();
  readonly #drafts: Draft[] = [];
  #asked: TokenSpan | null = null;
  #found: { item: WorkItem; at: number } | null = null;

  constructor(talk: Talk, names: readonly TokenSpan[]) {
    this.#talk = talk;
    this.#tokens = withoutNames(talk, names);
  }

  find(): Draft[] {
    for (let at = 0; at < this.#tokens.length; at++) {
      const cue = CUES.matchAt(this.#tokens, at);
      if (cue && this.#take(cue)) at = Math.max(at, Math.min(cue.to, at + 2) - 1);
      else if (this.#isInPlace(at)) this.#outcome({ from: at, to: at + 1, entry: IN_PLACE }, 'done');
      else this.#freeWork(at);
    }
    return this.#drafts.map((draft) => this.#stillUnheard(draft));
  }

  /** "so that's the new strings on", "new mains lead on": the sentence ends with where the thing now is. */
  #isInPlace(at: number): boolean {
    if (!['on', 'in', 'back'].includes(this.#word(at))) return false;
    const stop = this.#tokens[at]?.stop ?? STOP.full;
    const { from } = this.#sentence(at);
    const before = this.#words({ from: Math.max(from, at - 7), to: at });
    const brandNew = before.includes('new') && stop >= STOP.clause;
    return stop >= STOP.soft && (before.includes("'s") || before.includes('so') || brandNew);
  }

  #take(cue: PhraseMatch<WorkCue>): boolean {
    switch (cue.entry.sort) {
      case 'asked':
        return this.#promise(cue, 'asked');
      case 'more':
        return (
          this.#asked !== null &&
          this.#ms(this.#asked.to, cue.from) < FOLLOWS_MS &&
          this.#word(cue.from - 1) !== 'and' &&
          this.#promise(cue, 'asked')
        );
      case 'offered':
        return this.#promise(cue, 'offered');
      case 'plan':
        return this.#plan(cue);
      case 'found':
        return this.#finding(cue);
      case 'agreed':
        return this.#agreement(cue);
      case 'done-after':
      case 'done-before':
        return this.#outcome(cue, 'done');
      case 'not-done':
        return this.#outcome(cue, 'not done');
      case 'declined':
        return this.#outcome(cue, 'declined');
    }
  }

  #word(at: number): string {
    return this.#tokens[at]?.word ?? '';
  }

  #ms(before: number, after: number): number {
    return (this.#tokens[after]?.startMs ?? 0) - (this.#tokens[Math.max(0, before - 1)]?.endMs ?? 0);
  }

  #sentence(at: number): TokenSpan {
    return this.#talk.sentenceOf[at] ?? { from: at, to: at + 1 };
  }

  #words(span: TokenSpan): string[] {
    return this.#tokens.slice(span.from, span.to).map((token) => token.word);
  }

  /** Whether the breath that holds `at` says it costs nothing. */
  #charge(at: number, to: number, origin: Origin): Charge {
    const { from, to: end } = this.#sentence(at);
    if (origin === 'asked') return 'paid';
    // "a free set-up".
    if (this.#words({ from: at, to }).includes('free')) return 'free';
    const thrown = /^(?:throw|throwing|chuck|chucking|thrown)$/.test(this.#word(at));
    for (let place = Math.max(from, at - 12); place < Math.min(end, to + 14); place++)
      if (FREE.matchAt(this.#tokens, place)) return 'free';
    return thrown ? 'free' : 'paid';
  }

  #promise(cue: TokenSpan, origin: Origin): boolean {
    if (origin === 'asked' && this.#isDenied(cue)) return false;
    const objects = this.#objects(cue).filter((span) => !this.#isNoWork(span) && !this.#isTakenBack(span));
    if (objects.length === 0) return false;
    const pastTalk =
      origin === 'asked' &&
      this.#word(cue.from) === 'in' &&
      !/^(?:a|an|some|new|its|the|full|fresh|fret|set|repair|service)$/.test(this.#word(cue.to));
    if (pastTalk) return false;
    for (const span of objects)
      this.#add(
        { from: span === objects[0] ? cue.from : span.from, to: span.to },
        this.#resolved(span, cue),
        origin,
        'promised',
      );
    if (origin === 'asked') this.#asked = { from: cue.from, to: objects.at(-1)?.to ?? cue.to };
    return true;
  }

  /** "she wants it fixed": what "it" is stands in the sentence before. */
  #objects(cue: TokenSpan): TokenSpan[] {
    const objects = objectsAfter(this.#tokens, cue.to);
    const pronoun = /^(?:it|that|this|them) (?:fixed|sorted|done|repaired|looked|mended)/.test(
      this.#words({ from: cue.to, to: cue.to + 2 }).join(' '),
    );
    if (objects.length > 0 || !pronoun) return objects;
    const sentence = this.#sentence(cue.from);
    const from = sentence.from < cue.from - 4 ? cue.from : sentence.from;
    const before = from > 0 ? this.#sentence(from - 1) : null;
    if (!before) return [];
    const span = { from: Math.max(before.from, from - 4), to: from };
    return contentOf(this.#tokens, span).length > 0 ? [span] : [];
  }

  /** "a new battery, no wait, it's passive". */
  #isTakenBack(span: TokenSpan): boolean {
    return /^(?:no(?! charge| extra)|wait|scratch|sorry|actually no)\b/.test(
      this.#words({ from: span.to, to: span.to + 2 }).join(' '),
    );
  }

  #isDenied(cue: TokenSpan): boolean {
    const denies = new Set(["didn't", "doesn't", "don't", 'not', 'never', "won't"]);
    const before = this.#words({ from: Math.max(0, cue.from - 2), to: cue.from });
    const within = this.#words(cue);
    return (
      before.some((word) => word === 'if' || denies.has(word)) || within.some((word) => denies.has(word))
    );
  }

  #isNoWork(span: TokenSpan): boolean {
    const number = (this.#talk.numberFrom.get(span.from)?.shape ?? 'integer') !== 'integer';
    return number || isNoWork(this.#words(span));
  }

  /** "he's asked me to stop that": the part was named just before. */
  #resolved(object: TokenSpan, cue: TokenSpan): TokenSpan {
    const points = ['that', 'this', 'them'].includes(this.#word(object.to - 1));
    const named = this.#words(object).some((word) => WORK_PARTS.has(word));
    return (
      (points && !named ? partIn(this.#tokens, Math.max(0, cue.from - 10), cue.from, true) : null) ?? object
    );
  }

  #add(span: TokenSpan, object: TokenSpan, origin: Origin, outcome: Outcome): void {
    const stems = contentOf(this.#tokens, object);
    const known = this.#items.matching(
      stems,
      (item) => item.origin === origin && sameStems(item.stems, stems),
    );
    if (known?.outcomes.has(outcome)) {
      if (this.#charge(span.from, span.to, origin) === 'free') known.charge = 'free';
      return;
    }
    const item = this.#items.add({
      description: describe(this.#tokens, object),
      stems,
      origin,
      charge: this.#charge(span.from, span.to, origin),
      promised: outcome === 'promised' ? span : null,
      outcomes: new Set(),
    });
    this.#emit(item, span, outcome, 0.85);
  }

  #emit(item: WorkItem, span: TokenSpan, outcome: Outcome, confidence: number): void {
    if (item.outcomes.has(outcome) || item.description === '') return;
    item.outcomes.add(outcome);
    const { description, origin, charge, promised } = item;
    const promisedAt = outcome !== 'promised' && promised ? timesOf(this.#talk, promised) : null;
    this.#drafts.push({
      type: 'work',
      from: span.from,
      to: span.to,
      confidence,
      about: null,
      payload: { description, origin, outcome, charge, promisedAt, unheardUntil: null },
    });
  }

  /** "I'm going to do a fret level": asked work, while the job is being introduced and a service is named. */
  #plan(cue: TokenSpan): boolean {
    if (this.#takeUp(cue)) return true;
    const start = this.#tokens[0]?.startMs ?? 0;
    if ((this.#tokens[cue.from]?.startMs ?? 0) - start > INTRODUCTION_MS || this.#asked?.to === cue.from)
      return false;
    const objects = objectsAfter(this.#tokens, cue.to);
    const first = objects[0];
    if (
      !first ||
      !this.#words(first).some(
        (word, at, all) => SERVICES.has(word) || (word === 'set' && all[at + 1] === 'up'),
      )
    )
      return false;
    if (this.#isFree(cue)) return false;
    return this.#promise(cue, 'asked');
  }

  #isFree(cue: TokenSpan): boolean {
    return this.#charge(cue.from, cue.to, 'offered') === 'free';
  }

  /** "…so I'll fit a new one": a fault that was just found is going to be mended. */
  #takeUp(cue: TokenSpan): boolean {
    const found = this.#found;
    if (!found || this.#ms(found.at, cue.from) > FOUND_FOLLOWS_MS || found.item.outcomes.size > 0)
      return false;
    const words = this.#words({ from: cue.to, to: Math.min(cue.to + 8, this.#sentence(cue.from).to) });
    if (
      /^(?:ring|call|text|ask|tell|let|phone|speak|check|be|show|see|stop|cut|pause|zoom)$/.test(
        words.find((word) => !['just', 'have', 'to', 'need', 'also'].includes(word)) ?? '',
      )
    )
      return false;
    this.#emit(
      { ...found.item, outcomes: found.item.outcomes },
      { from: Math.min(found.at, cue.from), to: cue.to },
      'promised',
      0.75,
    );
    return true;
  }

  /** "I noticed the twelfth fret was lifting": remembered, until something is said to be done about it. */
  #finding(cue: TokenSpan): boolean {
    const sentence = this.#sentence(cue.from);
    const ahead = partIn(this.#tokens, cue.to, Math.min(sentence.to, cue.to + 12), false);
    const part = ahead ?? partIn(this.#tokens, Math.max(0, cue.from - 24), cue.from, true);
    if (!part) return false;
    const stems = contentOf(this.#tokens, part);
    const item = this.#items.add({
      description: describe(this.#tokens, part),
      stems,
      origin: 'found',
      charge: 'paid',
      promised: cue,
      outcomes: new Set(),
    });
    this.#found = { item, at: cue.from };
    const rest = this.#words({ from: cue.to, to: Math.min(this.#tokens.length, cue.to + 16) }).join(' ');
    if (/\b(?:needs?|want) (?:doing|replacing|fixing|sorting|gluing|changing|cleaning|to be)\b/.test(rest))
      this.#emit(item, { from: cue.from, to: cue.to + 6 }, 'promised', 0.7);
    return true;
  }

  /** "she's happy for me to glue the brace". */
  #agreement(cue: TokenSpan): boolean {
    const object = objectsAfter(this.#tokens, cue.to)[0];
    const found = this.#found;
    if (object && this.#words(object).some((word) => WORK_PARTS.has(word))) {
      const item = this.#items.matching(contentOf(this.#tokens, object));
      if (item) return false;
      this.#add({ from: cue.from, to: object.to }, object, 'found', 'promised');
      return true;
    }
    if (!found || found.item.outcomes.size > 0) return false;
    this.#emit(found.item, cue, 'promised', 0.75);
    return true;
  }

  /** Something is said to be done, left or declined: of an item named near by, or of the one just talked about. */
  #outcome(cue: PhraseMatch<WorkCue>, outcome: Outcome): boolean {
    const near = this.#near(cue, outcome);
    const settles = (item: WorkItem): boolean =>
      !item.outcomes.has(outcome) && !isSettled(item) && this.#isLater(item, cue, outcome);
    const item = this.#items.matching(near, settles) ?? this.#byPronoun(cue, outcome);
    if (!item || (outcome === 'done' && this.#isFuture(cue)))
      return outcome === 'not done' && this.#leftUnpromised(cue);
    const span = this.#sentence(cue.from);
    if (outcome !== 'done') this.#dropPromiseInOneBreath(item, cue);
    this.#emit(
      item,
      { from: Math.max(span.from, cue.from - 6), to: this.#breathEnd(cue.to, span.to) },
      outcome,
      0.8,
    );
    return true;
  }

  #breathEnd(from: number, most: number): number {
    let to = from;
    while (to < Math.min(most, from + 6) && (this.#tokens[to - 1]?.stop ?? STOP.full) < STOP.soft) to++;
    return to;
  }

  /** An outcome comes after its promise: "done" in another breath, "but he's changed his mind" perhaps in the same. */
  #isLater(item: WorkItem, cue: TokenSpan, outcome: Outcome): boolean {
    if (!item.promised) return true;
    if (cue.from < item.promised.to) return false;
    if (outcome !== 'done' || item.origin === 'found') return true;
    return this.#saysThatIs(cue) || this.#ms(item.promised.to, cue.from) > DONE_AFTER_MS;
  }

  /** "and that's now done": the pronoun is what was promised a breath ago. */
  #saysThatIs(cue: TokenSpan): boolean {
    const before = this.#words({ from: Math.max(0, cue.from - 2), to: cue.from + 1 }).join(' ');
    return /\b(?:that|it|they|those|these) (?:'s|is|are|'re|has|have)\b/.test(before);
  }

  /** "he wanted the covering glued, but he's changed his mind": one statement, and it is the outcome. */
  #dropPromiseInOneBreath(item: WorkItem, cue: TokenSpan): void {
    const { promised } = item;
    if (!promised || item.origin === 'found' || this.#ms(promised.to, cue.from) > ONE_BREATH_MS) return;
    const at = this.#drafts.findIndex(
      (draft) =>
        draft.type === 'work' &&
        draft.from === promised.from &&
        draft.payload.description === item.description,
    );
    if (at >= 0) this.#drafts.splice(at, 1);
  }

  /** Content words around a cue: behind it for "I've fixed …", before it for "… is done", both for what was left. */
  #near(cue: PhraseMatch<WorkCue>, outcome: Outcome): string[] {
    const sentence = this.#sentence(cue.from);
    const behindTo = Math.min(sentence.to, cue.to + 9);
    const beforeFrom = Math.max(sentence.from, cue.from - (outcome === 'done' ? 9 : 15));
    const behind = contentOf(this.#tokens, { from: cue.to, to: behindTo });
    const before = contentOf(this.#tokens, { from: beforeFrom, to: cue.to });
    if (outcome !== 'done') return [...before, ...behind];
    return cue.entry.sort === 'done-before'
      ? before
      : [
          ...contentOf(this.#tokens, cue),
          ...contentOf(this.#tokens, { from: cue.to, to: Math.min(behindTo, cue.to + 6) }),
        ];
  }

  /** "he said not to bother with it": the fault found last, or the offer that is still open. */
  #byPronoun(cue: PhraseMatch<WorkCue>, outcome: Outcome): WorkItem | null {
    const found = this.#found;
    const recent =
      found && this.#ms(found.at, cue.from) < FOUND_FOLLOWS_MS && !isSettled(found.item) ? found.item : null;
    if (outcome === 'declined') return recent;
    if (outcome === 'done')
      return cue.entry.sort === 'done-after' && recent && this.#says(cue, /\b(?:it|that|them)\b/)
        ? recent
        : null;
    return null;
  }

  #says(cue: TokenSpan, words: RegExp): boolean {
    return words.test(
      this.#words({ from: cue.from, to: Math.min(cue.to + 4, this.#sentence(cue.from).to) }).join(' '),
    );
  }

  /** "once that's done", "when the frets are done", "I'll get that fixed": not yet. */
  #isFuture(cue: TokenSpan): boolean {
    const before = this.#words({
      from: Math.max(this.#sentence(cue.from).from, cue.from - 6),
      to: cue.from + 1,
    });
    return before.some((word) => NOT_YET.has(word));
  }

  /** "I said I'd do the frets but I've not had time" names the offer and its end at once; nothing else counts. */
  #leftUnpromised(cue: TokenSpan): boolean {
    const object = objectsAfter(this.#tokens, cue.to)[0];
    if (!object || !this.#words(object).some((word) => SERVICES.has(word) || WORK_PARTS.has(word)))
      return false;
    if (this.#items.matching(contentOf(this.#tokens, object))) return false;
    this.#add({ from: cue.from, to: object.to }, object, 'asked', 'not done');
    return true;
  }

  /** "I'll clean the pots for free": first-person work with a word that it costs nothing. */
  #freeWork(at: number): void {
    const free = FREE.matchAt(this.#tokens, at);
    if (!free) return;
    const sentence = this.#sentence(at);
    const from = Math.max(sentence.from, at - 16);
    const goesOn = free.to < sentence.to && FIRST_PERSON.has(this.#word(free.to));
    const starts: number[] = goesOn ? [free.to] : [];
    for (let place = at - 1; place >= from; place--)
      if (FIRST_PERSON.has(this.#word(place))) starts.push(place);
    for (const start of starts) if (this.#freeWorkFrom(start, free)) return;
  }

  #freeWorkFrom(start: number, free: TokenSpan & { entry: { say: string } }): boolean {
    const offered = (draft: Draft): boolean =>
      draft.type === 'work' &&
      draft.payload.origin === 'offered' &&
      draft.to >= start &&
      draft.from <= free.from;
    if (this.#drafts.some(offered)) return true;
    const ahead = start < free.from;
    const verb = { from: start, to: ahead ? Math.min(start + 2, free.from) : start + 2 };
    const future = this.#words(verb).some((word) => FUTURE.has(word));
    const whileThere =
      ['while', 'whilst', 'as'].includes(this.#word(free.from)) && this.#word(free.from + 1) !== 'a';
    const object = objectsAfter(this.#tokens, this.#skipVerbs(start + 1))[0];
    if (!object || (ahead && object.from >= free.from) || (whileThere && !future)) return false;
    const named = this.#withPart(
      { from: object.from, to: ahead ? Math.min(object.to, free.from) : object.to },
      start,
    );
    this.#add(
      { from: Math.min(start, free.from), to: Math.max(free.to, object.from) },
      named,
      'offered',
      future ? 'promised' : 'done',
    );
    return true;
  }

  /** "the endpin jack was loose so I've tightened that": the part stands before the pronoun. */
  #withPart(object: TokenSpan, start: number): TokenSpan {
    const words = this.#words(object);
    const vague =
      !words.some((word) => WORK_PARTS.has(word)) &&
      words.some((word) => ['it', 'that', 'them', 'this'].includes(word));
    return (
      (vague ? partIn(this.#tokens, Math.max(this.#sentence(start).from, start - 12), start, true) : null) ??
      object
    );
  }

  #skipVerbs(at: number): number {
    let place = at;
    while (
      ['going', 'gonna', 'to', 'also', 'just', 'gave', 'give', 'did', 'do', 'have'].includes(
        this.#word(place),
      )
    )
      place++;
    return place;
  }

  /** A promise that nothing more is heard of says so, up to the last line. */
  #stillUnheard(draft: Draft): Draft {
    if (draft.type !== 'work' || draft.payload.outcome !== 'promised') return draft;
    const item = this.#items.list.find(
      (one) => one.description === draft.payload.description && one.origin === draft.payload.origin,
    );
    if (!item || isSettled(item)) return draft;
    const last = this.#talk.sentences.at(-1);
    const unheardUntil = last ? timesOf(this.#talk, last) : null;
    return { ...draft, payload: { ...draft.payload, unheardUntil } };
  }
}

const IN_PLACE: WorkCue = { say: 'on', sort: 'done-before' };
const sameStems = (a: readonly string[], b: readonly string[]): boolean =>
  a.length > 0 && (a.every((stem) => b.includes(stem)) || b.every((stem) => a.includes(stem)));

/** What was asked, offered and found, and what became of it. */
export function findWork(talk: Talk, names: readonly TokenSpan[]): Draft[] {
  return new WorkFinder(talk, names).find();
}
