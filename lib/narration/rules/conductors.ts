import { COLOURED_THINGS, COLOURS, SHIELD_WORDS, TERMINALS, WIRE_NOUNS } from '../lexicon/conductors';
import { SpanIndex } from '../words/span-index';
import { STOP, type TokenSpan } from '../words/token';
import { gapMs, stopAt, type Talk, wordAt } from './talk';

/** A conductor or terminal as it is named in the talk. */
export interface Conductor extends TokenSpan {
  readonly name: string;
  /** A wire of its own, rather than a point such as "hot" or "sleeve". */
  readonly wire: boolean;
}

/** Two conductors named together: "red and white", "red to white", "red white". */
export interface ConductorPair extends TokenSpan {
  readonly names: readonly [string, string];
  readonly wires: boolean;
}

const BETWEEN_PAIR = new Set([
  'and',
  'to',
  'with',
  'against',
  'or',
  'plus',
  'into',
  'versus',
  'across',
  'then',
  'on',
  'n',
]);
const ARTICLES = new Set(['the', 'my', 'our', 'a', 'this', 'that']);

function conductorAt(talk: Talk, at: number): Conductor | null {
  const word = wordAt(talk, at);
  const shield = SHIELD_WORDS.has(word);
  const colour = COLOURS[word] ?? (shield ? 'shield' : undefined);
  const name = colour ?? TERMINALS[word];
  if (name === undefined) return null;
  const next = stopAt(talk, at) === STOP.none ? wordAt(talk, at + 1) : '';
  if (colour !== undefined && COLOURED_THINGS.has(next) && !(next === 'hot' && hotIsARole(talk, at)))
    return null;
  if (word === 'screen' || word === 'drain' || word === 'bear' || word === 'clear' || word === 'shielding')
    if (!WIRE_NOUNS.has(next))
      return word === 'drain' ? { from: at, to: at + 1, name: 'drain', wire: false } : null;
  const noun = WIRE_NOUNS.has(next) && !isMeterLead(talk, at);
  if (WIRE_NOUNS.has(next) && isMeterLead(talk, at)) return null;
  return { from: at, to: at + (noun ? 2 : 1), name, wire: colour !== undefined };
}

/** "red hot, ground black" is a list of roles; "red hot" by itself is a soldering iron. */
const hotIsARole = (talk: Talk, at: number): boolean => stopAt(talk, at + 1) >= STOP.soft;

/** "red lead on", "black probe": the meter's own leads. */
function isMeterLead(talk: Talk, at: number): boolean {
  const colour = wordAt(talk, at);
  const noun = wordAt(talk, at + 1);
  if (colour !== 'red' && colour !== 'black') return false;
  return (
    (noun === 'lead' || noun === 'clip') && ['on', 'to', 'goes', 'onto', 'is'].includes(wordAt(talk, at + 2))
  );
}

export function findConductors(talk: Talk): Conductor[] {
  const found: Conductor[] = [];
  for (let at = 0; at < talk.tokens.length; at++) {
    const conductor = conductorAt(talk, at);
    if (!conductor) continue;
    found.push(conductor);
    at = conductor.to - 1;
  }
  return found;
}

/** Whether nothing but a joining word and an article stands between two mentions. */
export function adjoin(talk: Talk, before: Conductor, after: Conductor): boolean {
  let at = before.to;
  if (gapMs(talk, before.to - 1, after.from) > 5000) return false;
  if (stopAt(talk, at - 1) >= STOP.clause) return false;
  const linked = BETWEEN_PAIR.has(wordAt(talk, at));
  const nextLine = talk.tokens[at - 1]?.line !== talk.tokens[at]?.line;
  if (!linked && nextLine && stopAt(talk, at - 1) >= STOP.soft) return false;
  if (linked) at++;
  if (ARTICLES.has(wordAt(talk, at))) at++;
  return at === after.from && (stopAt(talk, at - 1) < STOP.clause || at === before.to);
}

/** Runs of conductors that are named together, two or more. */
function findGroups(talk: Talk, conductors: readonly Conductor[]): Conductor[][] {
  const groups: Conductor[][] = [];
  let group: Conductor[] = [];
  for (const conductor of conductors) {
    const last = group.at(-1);
    if (last && !(adjoin(talk, last, conductor) && last.name !== conductor.name)) {
      groups.push(group);
      group = [];
    }
    group.push(conductor);
  }
  return [...groups, group]
    .filter((candidate) => candidate.length > 0)
    .flatMap((candidate) => apartFromSubject(talk, candidate));
}

/** Words that speak of one thing: what they follow is their subject alone. */
const OF_ONE = new Set(['is', "'s", 'goes', 'gets', 'comes']);

/** "white joins green, red is hot": behind the comma a new saying begins with red. */
function apartFromSubject(talk: Talk, group: Conductor[]): Conductor[][] {
  const subject = group.at(-1);
  const before = group.at(-2);
  if (!subject || !before) return [group];
  const begins =
    before.to === subject.from &&
    stopAt(talk, before.to - 1) >= STOP.soft &&
    OF_ONE.has(wordAt(talk, subject.to));
  return begins ? [group.slice(0, -1), [subject]] : [group];
}

/** A run of conductors named together, as one span. */
export interface ConductorGroup extends TokenSpan {
  readonly wires: readonly Conductor[];
}

export function groupIndex(talk: Talk, conductors: readonly Conductor[]): SpanIndex<ConductorGroup> {
  const spans = findGroups(talk, conductors).map((wires) => ({
    from: wires[0]?.from ?? 0,
    to: wires.at(-1)?.to ?? 0,
    wires,
  }));
  return new SpanIndex(spans);
}

const pairOf = (a: Conductor, b: Conductor): ConductorPair => ({
  from: a.from,
  to: b.to,
  names: [a.name, b.name],
  wires: a.wire && b.wire,
});

const joinedBy = (talk: Talk, a: Conductor, b: Conductor): boolean =>
  b.from > a.to && stopAt(talk, a.to - 1) < STOP.soft;

/** "red green white black" is two pairs; "red, white, green and black" is a list and no pair at all. */
function pairsOf(talk: Talk, group: readonly Conductor[]): ConductorPair[] {
  const [a, b, c, d] = group;
  if (group.length === 2 && a && b) return [pairOf(a, b)];
  if (group.length === 4 && a && b && c && d) {
    const listed = [a, b, c].filter((item) => stopAt(talk, item.to - 1) >= STOP.soft).length;
    const andOnlyLast = !joinedBy(talk, a, b) && joinedBy(talk, c, d);
    const twoAndTwo = joinedBy(talk, a, b) === joinedBy(talk, c, d) && listed <= 1;
    return twoAndTwo && !andOnlyLast ? [pairOf(a, b), pairOf(c, d)] : [];
  }
  return [];
}

/** "red lead on red, black lead on white": the pair is what the leads lie on. */
function pairsByLeads(talk: Talk, conductors: readonly Conductor[]): ConductorPair[] {
  const on = conductors.filter(
    (conductor) => leadBefore(talk, conductor.from) || leadBehind(talk, conductor.to),
  );
  const pairs: ConductorPair[] = [];
  for (let at = 1; at < on.length; at++) {
    const [a, b] = [on[at - 1], on[at]];
    if (a && b && b.from - a.to <= 8 && a.name !== b.name) pairs.push(pairOf(a, b));
  }
  return pairs;
}

/** "red (lead|probe|clip) on the …", "red on the …": what lies before a conductor that a meter lead touches. */
function leadBefore(talk: Talk, at: number): boolean {
  let back = at - 1;
  if (ARTICLES.has(wordAt(talk, back))) back--;
  const joins = wordAt(talk, back);
  if (!['on', 'to', 'onto'].includes(joins)) return false;
  back--;
  if (['goes', 'clipped', 'is', 'going'].includes(wordAt(talk, back))) back--;
  const noun = ['lead', 'probe', 'clip'].includes(wordAt(talk, back));
  if (!noun && joins !== 'on') return false;
  const colour = wordAt(talk, noun ? back - 1 : back);
  return (
    colour === 'red' || colour === 'black' || (noun && ['positive', 'negative', 'other'].includes(colour))
  );
}

/** "white on the red probe". */
function leadBehind(talk: Talk, at: number): boolean {
  const start = wordAt(talk, at) === 'on' || wordAt(talk, at) === 'to' ? at + 1 : -1;
  if (start < 0) return false;
  const colour = ARTICLES.has(wordAt(talk, start)) ? start + 1 : start;
  return (
    ['red', 'black'].includes(wordAt(talk, colour)) &&
    ['probe', 'lead', 'clip'].includes(wordAt(talk, colour + 1))
  );
}

/** Every pair of conductors named in the talk, in order. */
export function findPairs(talk: Talk, conductors: readonly Conductor[]): ConductorPair[] {
  const byLeads = pairsByLeads(talk, conductors);
  const covered = (pair: ConductorPair): boolean =>
    byLeads.some((lead) => lead.from < pair.to && pair.from < lead.to);
  const grouped = findGroups(talk, conductors).flatMap((group) => pairsOf(talk, group));
  return [...byLeads, ...grouped.filter((pair) => !covered(pair))].sort((a, b) => a.from - b.from);
}
