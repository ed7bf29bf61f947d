import { CAMERA_STOPS } from '../lexicon/camera';
import { phraseBook } from '../words/phrases';
import { STOP } from '../words/token';
import type { Draft } from './proposal';
import { gapMs, stopAt, type Talk, wordAt, wordsIn } from './talk';

const BOOK = phraseBook(CAMERA_STOPS);
/** "I'll pause it there, see you in the next one" is one stop. */
const SAME_STOP_MS = 9000;

/** Words of the camera that only tell of it: "the camera battery is fine", "on camera". */
const denied = (talk: Talk, from: number): boolean =>
  ["don't", 'not', 'never', "didn't", 'before', 'forgot', "wasn't", 'while', 'without'].some(
    (word) => wordAt(talk, from - 1) === word || wordAt(talk, from - 2) === word,
  );

/** Likely ends of a take and changes of view, as they are announced. */
export function findCameraStops(talk: Talk): Draft[] {
  const drafts: Draft[] = [];
  for (const match of BOOK.all(talk.tokens, talk.places)) {
    const last = drafts.at(-1);
    if (denied(talk, match.from) || !aboutFilming(talk, match)) continue;
    if (last && gapMs(talk, last.to - 1, match.from) < SAME_STOP_MS) continue;
    drafts.push({
      type: 'camera-stop',
      from: match.from,
      to: match.to,
      confidence: 0.8,
      about: null,
      payload: {},
    });
  }
  return drafts;
}

/** A flat battery or "card" only counts with the camera; "back in a bit" needs no camera. */
function aboutFilming(talk: Talk, match: { from: number; to: number }): boolean {
  const words = wordsIn(talk, match).toLowerCase();
  if (/^(?:battery|card|memory)/.test(words)) {
    const around = wordsIn(talk, { from: Math.max(0, match.from - 8), to: match.to + 4 }).toLowerCase();
    return /camera|phone|recording|filming/.test(around);
  }
  if (/^cut (?:there|here|it)/.test(words) || /^(?:stop|pause) (?:there|it|here)/.test(words))
    return announced(talk, match.from, match.to);
  return true;
}

/** "I'll stop there", "let me pause it", "cut there": not "stop it rattling". */
function announced(talk: Talk, from: number, to: number): boolean {
  const before = wordsIn(talk, { from: Math.max(0, from - 4), to: from }).toLowerCase();
  const place = ['there', 'here'].includes(wordAt(talk, to - 1));
  if (!place && stopAt(talk, to - 1) < STOP.soft) return false;
  return /(?:i'll|let me|let's|i'm|going to|gonna|we'll|just|i will|so|and|there)\s*\S*\s*$/.test(before);
}
