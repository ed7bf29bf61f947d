import type { HeardProposal, ProposalType } from '@/shared/narration';
import type { Expectation, ScoredNarration } from './scored-set';

const TOLERANCE_MS = 6000;
const MARKER_TOLERANCE_MS = 20_000;

/** Factors to a base unit of each quantity, written out here so that the scorer leans on nothing it scores. */
const FACTOR: Readonly<Record<string, number>> = {
  kΩ: 1e3,
  MΩ: 1e6,
  mV: 1e-3,
  mA: 1e-3,
  µA: 1e-6,
  µF: 1e-6,
  nF: 1e-9,
  pF: 1e-12,
  mH: 1e-3,
  mm: 1e-3,
  thou: 25.4e-6,
  in: 25.4e-3,
  '64ths': 25.4e-3 / 64,
};
const inBase = (value: number, unit: string): number => value * (FACTOR[unit] ?? 1);
const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 + 1e-6 * Math.abs(a);
const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\d]+/u)
    .filter(Boolean);
const sameSet = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((word) => b.includes(word));

function readingAgrees(
  rest: string,
  payload: Extract<HeardProposal, { type: 'reading' }>['payload'],
): boolean {
  const [head = '', between = '', subject = ''] = rest.split('|').map((part) => part.trim());
  const [kind, value = '', unit = ''] = head.split(' ');
  if (payload.kind !== kind) return false;
  if (between !== '' && !sameSet(between.split(' '), payload.between ?? [])) return false;
  if (!wordsOf(subject).every((word) => wordsOf(payload.subject).includes(word))) return false;
  if (value === 'open') return payload.open;
  if (value === '+' || value === '-') return payload.sign === (value === '+' ? 'positive' : 'negative');
  return payload.value !== null && close(inBase(Number(value), unit), inBase(payload.value, payload.unit));
}

function workAgrees(rest: string, payload: Extract<HeardProposal, { type: 'work' }>['payload']): boolean {
  const [head = '', words = ''] = rest.split(': ');
  const stem = (word: string): string => word.slice(0, 4);
  const wanted = wordsOf(words).map(stem);
  const found = wordsOf(payload.description).map(stem);
  return (
    head === `${payload.origin} ${payload.outcome} ${payload.charge}` &&
    found.some((word) => word.length > 2 && wanted.includes(word))
  );
}

function payloadAgrees(expected: Expectation, proposal: HeardProposal): boolean {
  const words = expected.rest.split(' ');
  switch (proposal.type) {
    case 'marker':
      return proposal.payload.markerKind === expected.rest;
    case 'reading':
      return readingAgrees(expected.rest, proposal.payload);
    case 'coil-pair':
      return (
        sameSet(words.slice(0, 2), proposal.payload.conductors) &&
        (words[2] === undefined || words[2] === proposal.payload.row)
      );
    case 'role':
      return proposal.payload.conductor === words[0] && proposal.payload.role === words[1];
    case 'joint':
      return sameSet(words, proposal.payload.conductors);
    case 'work':
      return workAgrees(expected.rest, proposal.payload);
    case 'private':
      return proposal.payload.reason === expected.rest;
    case 'camera-stop':
      return true;
  }
}

function distanceMs(expected: Expectation, proposal: HeardProposal): number {
  return Math.max(0, proposal.startMs - expected.ms, expected.ms - proposal.endMs);
}

function agrees(expected: Expectation, proposal: HeardProposal): boolean {
  const tolerance = expected.type === 'marker' ? MARKER_TOLERANCE_MS : TOLERANCE_MS;
  return (
    expected.type === proposal.type &&
    distanceMs(expected, proposal) <= tolerance &&
    payloadAgrees(expected, proposal)
  );
}

export interface Score {
  hits: number;
  proposed: number;
  expected: number;
}

export interface NarrationScore {
  readonly missed: readonly Expectation[];
  readonly tooMany: readonly HeardProposal[];
  readonly byType: ReadonlyMap<ProposalType, Score>;
}

/** Pairs expectations and proposals, nearest first, each used once. */
export function score(narration: ScoredNarration, proposals: readonly HeardProposal[]): NarrationScore {
  const left = new Set(proposals);
  const missed: Expectation[] = [];
  const byType = new Map<ProposalType, Score>();
  const of = (type: ProposalType): Score => {
    const known = byType.get(type) ?? { hits: 0, proposed: 0, expected: 0 };
    byType.set(type, known);
    return known;
  };
  for (const proposal of proposals) of(proposal.type).proposed++;
  for (const expected of narration.expected) {
    of(expected.type).expected++;
    const nearest = [...left]
      .filter((proposal) => agrees(expected, proposal))
      .sort((a, b) => distanceMs(expected, a) - distanceMs(expected, b))[0];
    if (nearest) {
      left.delete(nearest);
      of(expected.type).hits++;
    } else missed.push(expected);
  }
  return { missed, tooMany: [...left], byType };
}

export function addScores(scores: readonly NarrationScore[]): Map<ProposalType, Score> {
  const total = new Map<ProposalType, Score>();
  for (const { byType } of scores)
    for (const [type, part] of byType) {
      const sum = total.get(type) ?? { hits: 0, proposed: 0, expected: 0 };
      sum.hits += part.hits;
      sum.proposed += part.proposed;
      sum.expected += part.expected;
      total.set(type, sum);
    }
  return total;
}

export const precision = (part: Score): number => (part.proposed === 0 ? 1 : part.hits / part.proposed);
export const recall = (part: Score): number => (part.expected === 0 ? 1 : part.hits / part.expected);

export function scoreTable(title: string, total: ReadonlyMap<ProposalType, Score>): string {
  const rows = [...total].map(([type, part]) => {
    const cells = [part.expected, part.proposed, part.hits].map((count) => String(count).padStart(5));
    return `${type.padEnd(12)}${cells.join('')}  P ${precision(part).toFixed(3)}  R ${recall(part).toFixed(3)}`;
  });
  return [`${title.padEnd(12)}  exp prop  hit`, ...rows].join('\n');
}
