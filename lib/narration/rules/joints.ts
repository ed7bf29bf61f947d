import { JOIN_VERBS, ROLE_WORDS } from '../lexicon/conductors';
import type { SpanIndex } from '../words/span-index';
import { STOP } from '../words/token';
import { type Conductor, type ConductorGroup, groupIndex } from './conductors';
import type { Draft } from './proposal';
import type { Scene } from './scene';
import { gapMs, stopAt, wordAt } from './talk';

const NEGATED = new Set([
  "don't",
  'not',
  'never',
  "isn't",
  "aren't",
  "won't",
  "can't",
  'if',
  'nothing',
  'unsolder',
  'desolder',
  'unsoldered',
  'desoldered',
  'was',
  'were',
  'inside',
  "weren't",
]);
/** Words that may stand between conductors and the verb of joining. */
const AUXILIARY = new Set([
  'from',
  'get',
  'gets',
  'getting',
  'got',
  'are',
  'is',
  "'s",
  "'re",
  'then',
  'being',
  'be',
  'now',
  'both',
  'have',
  'been',
  'go',
  'goes',
  'going',
  'the',
  'to',
  'will',
  'wires',
  'wire',
  'leads',
  'all',
  'they',
  'just',
  'twisted',
  'soldered',
  'joined',
  'wired',
  'and',
  'neatly',
  'need',
  'needs',
  'nicely',
  'want',
  'should',
  'tied',
  'connected',
  'linked',
  'my',
  'our',
  'those',
  'these',
  'two',
  'up',
  'that',
  'so',
  'of',
  'neck',
  'bridge',
]);
const LINK_NOUNS = new Set(['link', 'joint', 'junction', 'join', 'splice']);
const BETWEEN_JOINED = new Set([
  'to',
  'with',
  'and',
  'onto',
  'on',
  'the',
  'together',
  'up',
  'from',
  'of',
  'neck',
  'bridge',
  'pickup',
  'coil',
  "'s",
  'other',
  'wire',
  'black',
  'goes',
  'in',
  'into',
]);
const FURTHEST_WORDS = 5;
const REPEAT_MS = 600_000;

function onlyBetween(scene: Scene, from: number, to: number, allowed: ReadonlySet<string>): boolean {
  if (to - from > FURTHEST_WORDS) return false;
  for (let at = from; at < to; at++) {
    if (!allowed.has(wordAt(scene.talk, at)) || (stopAt(scene.talk, at) >= STOP.clause && at < to - 1))
      return false;
  }
  return from === 0 || stopAt(scene.talk, from - 1) < STOP.full;
}

/** Conductors that the verb at `at` joins: named as a group before or behind it, or one on either side. */
function joinedAt(scene: Scene, groups: SpanIndex<ConductorGroup>, at: number): readonly Conductor[] | null {
  const before = groups.lastUpTo(at)?.wires;
  const behind = groups.firstFrom(at + 1)?.wires;
  const nearBefore = before && onlyBetween(scene, before.at(-1)?.to ?? 0, at, AUXILIARY);
  const nearBehind = behind && onlyBetween(scene, at + 1, behind[0]?.from ?? 0, BETWEEN_JOINED);
  const across = nearBefore && nearBehind && before.length === 1 && isJoinedTo(scene, at);
  if (across) return [...before, ...behind];
  // "white joins green": one on either side.
  const first = behind?.[0];
  if (wordAt(scene.talk, at) === 'joins' && nearBefore && nearBehind && first)
    return [...before.slice(-1), first];
  if (nearBehind && behind.length >= 2 && wordAt(scene.talk, at) !== 'together') return behind;
  if (nearBefore && before.length >= 2) return before;
  return null;
}

const isJoinedTo = (scene: Scene, at: number): boolean =>
  ['to', 'with', 'onto', 'together', 'up', 'on', 'in', 'into'].includes(wordAt(scene.talk, at + 1));

/** "white and green is the series link". */
function isLinkNoun(scene: Scene, at: number): boolean {
  return (
    LINK_NOUNS.has(wordAt(scene.talk, at)) &&
    ['series', 'the', 'centre', 'center', 'coil', 'my', 'middle'].includes(wordAt(scene.talk, at - 1))
  );
}

function denied(scene: Scene, at: number): boolean {
  const from = Math.max(scene.talk.sentenceOf[at]?.from ?? 0, at - 8);
  return scene.talk.tokens.slice(from, at).some(({ word }) => NEGATED.has(word));
}

/** "black and bare soldered to ground" is about ground; the wires only meet there. */
function goesToRole(scene: Scene, at: number): boolean {
  const next = [1, 2, 3, 4].map((step) => wordAt(scene.talk, at + step));
  return (
    wordAt(scene.talk, at) !== 'together' &&
    ['to', 'onto'].includes(next[0] ?? '') &&
    next.some((word) => ROLE_WORDS[word] !== undefined || word === 'pot')
  );
}

/** "black and white together gives me four point one": the meter joins them, nothing else does. */
function isProbed(scene: Scene, at: number): boolean {
  if (wordAt(scene.talk, at) !== 'together' && wordAt(scene.talk, at) !== 'connected') return false;
  const next = scene.talk.tokens.slice(at + 1, at + 4).map(({ word }) => word);
  return (
    next.some((word) => PROBED.has(word)) ||
    scene.measured.within(at + 1, at + 5).some((one) => one.quantity !== 'none')
  );
}

const PROBED = new Set([
  'gives',
  'give',
  'reads',
  'read',
  'reading',
  'measure',
  'measures',
  'measuring',
  'shows',
  'nothing',
]);

/** What is soldered, twisted or tied together. Said again, it stays one. */
export function findJoints(scene: Scene): Draft[] {
  const wires = scene.conductors.filter((conductor) => conductor.wire);
  const groups = groupIndex(scene.talk, wires);
  const known: { key: string; at: number }[] = [];
  const drafts: Draft[] = [];
  scene.talk.tokens.forEach((token, at) => {
    if (!JOIN_VERBS.has(token.word) && !isLinkNoun(scene, at)) return;
    const joined = joinedAt(scene, groups, at);
    const names = [...new Set(joined?.map((conductor) => conductor.name))];
    if (!joined || names.length < 2 || denied(scene, at) || goesToRole(scene, at) || isProbed(scene, at))
      return;
    const about = scene.subjects.pickup(at)?.name ?? null;
    const key = `${about}:${[...names].sort().join('+')}`;
    if (known.some((one) => one.key === key && gapMs(scene.talk, one.at, at) < REPEAT_MS)) return;
    known.push({ key, at });
    const from = Math.min(at, joined[0]?.from ?? at);
    const to = Math.max(at + 1, joined.at(-1)?.to ?? at);
    drafts.push({ type: 'joint', from, to, confidence: 0.9, about, payload: { conductors: names } });
  });
  return drafts;
}
