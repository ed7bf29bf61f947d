import { ROLE_WORDS } from '../lexicon/conductors';
import type { SpanIndex } from '../words/span-index';
import { STOP } from '../words/token';
import { type Conductor, type ConductorGroup, groupIndex } from './conductors';
import type { Draft } from './proposal';
import type { Scene } from './scene';
import { stopAt, wordAt } from './talk';

type Groups = SpanIndex<ConductorGroup>;
type Role = 'hot' | 'ground' | 'positive' | 'negative';

const IS = new Set([
  'is',
  "'s",
  'are',
  'becomes',
  'become',
  'as',
  'being',
  'for',
  'be',
  "'re",
  'was',
  'makes',
  'equals',
  "that's",
]);
const GOES = new Set([
  'goes',
  'go',
  'going',
  'to',
  'on',
  'onto',
  'soldered',
  'wired',
  'connected',
  'gets',
  'get',
  'run',
  'runs',
  'together',
  'at',
  'join',
  'grounded',
  'tied',
]);
const LOOSE = new Set([
  'the',
  'my',
  'our',
  'a',
  'an',
  'also',
  'then',
  'will',
  'both',
  'just',
  'straight',
  'which',
  'all',
  'end',
  'so',
  'now',
  'down',
  'they',
  'of',
  'going',
  'it',
  'there',
  'coil',
  'slug',
  'screw',
  'still',
  'definitely',
  'therefore',
  'got',
  'have',
  'has',
  'its',
  'wire',
  'one',
  'lead',
  'conductor',
  'side',
  'always',
  'can',
  'used',
  'we',
  'use',
  'call',
  'called',
  'neck',
  'bridge',
  'must',
  'obviously',
  'common',
  'main',
  'neatly',
  'here',
  'get',
  'gets',
]);
const NEGATED = new Set([
  "isn't",
  "aren't",
  'not',
  "can't",
  "won't",
  'never',
  "doesn't",
  "don't",
  'no',
  'if',
  'whether',
  'or',
  'wrong',
]);
const FURTHEST_WORDS = 8;

interface RoleWord {
  readonly role: Role;
  readonly from: number;
  readonly to: number;
  /** "to ground", "back of the pot": somewhere a wire goes. */
  readonly place: boolean;
}

/** "the hot lead" is a role; "the positive lead" is the meter's. */
const OWN_LEAD = new Set([
  'hot lead',
  'ground lead',
  'hot lug',
  'ground lug',
  'ground terminal',
  'hot terminal',
  'ground plane',
]);
const POTS = new Set(['pot', 'pots', 'volume', 'tone', 'casing', 'chassis']);

/** "hot", "ground", "the back of the volume pot". Meter leads and batteries have poles of their own. */
function roleWords(scene: Scene): RoleWord[] {
  const found: RoleWord[] = [];
  for (let at = 0; at < scene.talk.tokens.length; at++) {
    const word = wordAt(scene.talk, at);
    const next = wordAt(scene.talk, at + 1);
    const before = wordAt(scene.talk, at - 1);
    const role = ROLE_WORDS[word];
    const other = [
      'lead',
      'probe',
      'terminal',
      'volts',
      'feedback',
      'glue',
      'air',
      'loop',
      'plate',
      'reading',
      'kick',
      'plane',
      'lug',
    ].includes(next);
    const number = scene.talk.numberFrom.has(at);
    if (
      role &&
      !(other && !OWN_LEAD.has(`${role} ${next}`)) &&
      !number &&
      before !== 'battery' &&
      before !== 'red-hot'
    )
      found.push({ role, from: at, to: at + 1, place: false });
    if (word === 'back' && next === 'of') {
      const pot = [2, 3, 4, 5].find((step) => POTS.has(wordAt(scene.talk, at + step)));
      if (pot) found.push({ role: 'ground', from: at, to: at + pot + 1, place: true });
    }
  }
  return found;
}

/** Why the words between a conductor and a role link them, or null when they do not. */
function linkBetween(scene: Scene, from: number, to: number): 'is' | 'goes' | 'bare' | null {
  if (to - from > FURTHEST_WORDS) return null;
  let link: 'is' | 'goes' | 'bare' = 'bare';
  for (let at = from; at < to; at++) {
    const word = wordAt(scene.talk, at);
    if (NEGATED.has(word)) return null;
    if (stopAt(scene.talk, at) >= STOP.clause) return null;
    if (IS.has(word)) link = 'is';
    else if (GOES.has(word)) link = link === 'is' ? 'is' : 'goes';
    else if (!LOOSE.has(word)) return null;
  }
  if (from > 0 && stopAt(scene.talk, from - 1) >= STOP.clause) return null;
  return link;
}

const MAKES = new Set([
  'makes',
  'make',
  'making',
  'call',
  'calling',
  'have',
  'use',
  'using',
  'take',
  'want',
  'wants',
  'having',
]);
const lastOf = (group: readonly Conductor[]): Conductor | undefined => group.at(-1);

/** "red (is) hot", "black and the bare go to ground". */
function groupBefore(scene: Scene, groups: Groups, role: RoleWord): readonly Conductor[] | null {
  const group = groups.lastUpTo(role.from)?.wires;
  const to = group && lastOf(group)?.to;
  if (!group || to === undefined) return null;
  const link = linkBetween(scene, to, role.from);
  if (link === null || (link === 'goes' && isMeasured(scene, group, role))) return null;
  if (MAKES.has(wordAt(scene.talk, (group[0]?.from ?? 0) - 1))) return group;
  // "white positive" needs nothing between; "red hot" needs its comma.
  const bareFits =
    role.from === to &&
    (role.role !== 'hot' || stopAt(scene.talk, role.to - 1) >= STOP.soft) &&
    group.length === 1;
  if (link === 'bare' && !bareFits) return null;
  if (
    link === 'goes' &&
    (role.role === 'positive' || role.role === 'negative') &&
    !says(scene, to, role.from, 'to')
  )
    return null;
  return group;
}

const says = (scene: Scene, from: number, to: number, wanted: string): boolean =>
  scene.talk.tokens.slice(from, to).some(({ word }) => word === wanted);

/** "red to ground, seven point two k": a measurement and no wiring, unless it "goes" there. */
function isMeasured(scene: Scene, group: readonly Conductor[], role: RoleWord): boolean {
  const from = lastOf(group)?.to ?? 0;
  const only = role.from - from <= 2 && wordAt(scene.talk, from) === 'to';
  return (
    only &&
    (scene.measured.within(role.to, role.to + 8).some((one) => one.quantity !== null) ||
      /^(?:nothing|open|no|reads|is)$/.test(wordAt(scene.talk, role.to)))
  );
}

/** "hot is red", "ground's black and the bare", "positive on the green". */
function groupBehind(scene: Scene, groups: Groups, role: RoleWord): readonly Conductor[] | null {
  const group = groups.firstFrom(role.to)?.wires;
  const from = group?.[0]?.from;
  if (!group || from === undefined || from - role.to > 4) return null;
  const link = linkBetween(scene, role.to, from);
  return link === 'is' && !role.place ? group : null;
}

/** "… along with the bare", "… and so does the shield": more wires with the same role. */
function alongWith(scene: Scene, groups: Groups, role: RoleWord): readonly Conductor[] {
  const group = groups.firstFrom(role.to)?.wires;
  const from = group?.[0]?.from ?? -1;
  if (!group || from < 0 || from - role.to > 6) return [];
  const between = scene.talk.tokens
    .slice(role.to, from)
    .map(({ word }) => word)
    .join(' ');
  const ownRole =
    ROLE_WORDS[wordAt(scene.talk, (lastOf(group)?.to ?? 0) + 1)] ??
    ROLE_WORDS[wordAt(scene.talk, lastOf(group)?.to ?? 0)];
  const along =
    /^(?:along with|together with|as well as|with|same as|so does|so do|and so does|and so do|as does|as do|same for|and the same (?:for|with|goes for))\b/.test(
      between,
    );
  return along && ownRole === undefined ? group : [];
}

function groupsFor(scene: Scene, groups: Groups, role: RoleWord): readonly Conductor[] {
  const before = groupBefore(scene, groups, role);
  if (before) return [...before, ...alongWith(scene, groups, role)];
  return groupBehind(scene, groups, role) ?? [];
}

/** Which conductor is hot, ground, positive or negative. Said again, it stays one. */
export function findRoles(scene: Scene): Draft[] {
  const groups = groupIndex(
    scene.talk,
    scene.conductors.filter((conductor) => conductor.wire),
  );
  const known = new Set<string>();
  const drafts: Draft[] = [];
  for (const role of roleWords(scene)) {
    if (scene.noReading.supposed(role.from)) continue;
    for (const conductor of groupsFor(scene, groups, role)) {
      const about = scene.subjects.pickup(role.from)?.name ?? null;
      const key = `${about}:${conductor.name}:${role.role}`;
      if (known.has(key)) continue;
      known.add(key);
      const from = Math.min(conductor.from, role.from);
      const to = Math.max(conductor.to, role.to);
      drafts.push({
        type: 'role',
        from,
        to,
        confidence: 0.9,
        about,
        payload: { conductor: conductor.name, role: role.role },
      });
    }
  }
  return drafts;
}
