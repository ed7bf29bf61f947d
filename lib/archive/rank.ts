import type { FindableKind } from '@/shared/archive';
import type { MarkerKind } from '@/shared/markers';
import type { Hit } from './rank/hits';

/** Moments within this time of one another are one. */
export const nearMs = 30_000;

/** What a hit of a kind counts: the record was written down on purpose, narration passes by. */
const kindFactors: Readonly<Record<FindableKind, number>> = {
  joint: 1,
  marker: 1,
  trace: 1,
  reading: 0.95,
  work: 0.95,
  part: 0.95,
  claim: 0.95,
  ticket: 0.95,
  instrument: 0.9,
  narration: 0.65,
};
/** Work is looked for where it was done and where it ended up more than where it was asked for. */
const markerFactors: Readonly<Record<MarkerKind, number>> = {
  intake: 0.95,
  diagnosis: 1,
  measurement: 1,
  work: 1,
  result: 0.98,
};
/** What is met near by counts almost as what is met here; what stands elsewhere in the job, less. */
const nearFactor = 0.9;
/** Of what stands elsewhere: what describes the whole job, what else was written down, what else was said. */
const describingFactor = 0.9;
const elsewhereFactor = 0.7;
const passingFactor = 0.45;
const describing: ReadonlySet<FindableKind> = new Set(['ticket', 'instrument', 'claim']);
/** A hit of a kind that was not asked for, where a kind was. */
const otherKindFactor = 0.8;

/** What makes one answer better than another that meets as much of the question. */
const own = 0.3;
const title = 0.2;
const often = 0.12;
/** From so many places on, a word stands often in a job. */
const manyPlaces = 5;

/** What the question asks for beside its words: hits of these kinds are preferred. */
export interface Wished {
  kinds: readonly FindableKind[];
  markerKinds: readonly MarkerKind[];
}

/** A hit as the centre of a moment. */
export interface Ranked {
  hit: Hit;
  /** Share of the question's weight that is met here and near by, 0 to 1. */
  share: number;
  /** As `share`, with what makes one hit better to show than another. */
  score: number;
}

/**
 * The moments of one job, best first: each hit with what is met near by in time and in the job as a whole.
 * @param weights of the question's words and values, by their places
 */
export function rankMoments(hits: readonly Hit[], weights: readonly number[], wished: Wished): Ranked[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shareOf = (met: readonly number[]) => (total === 0 ? 1 : weighedSum(met, weights) / total);
  const everywhere = metInJob(hits, weights.length);
  const about =
    title * shareOf(metInTitle(hits, weights.length)) + often * shareOf(metOften(hits, weights.length));
  const near = nearOnes(hits);
  return hits
    .map((hit) => {
      const met = [...everywhere];
      for (const other of near.get(hit) ?? []) raise(met, other, nearFactor * kindFactors[other.kind]);
      const factor = kindFactors[hit.kind] * (hit.markerKind ? markerFactors[hit.markerKind] : 1);
      raise(met, hit, factor);
      const share = shareOf(met);
      const alone = new Array<number>(weights.length).fill(0);
      raise(alone, hit, factor * wishedFactor(hit, wished));
      return { hit, share, score: share + own * shareOf(alone) + about };
    })
    .sort((a, b) => b.score - a.score || a.hit.id - b.hit.id);
}

/** The share of the question that the best moment of these hits meets. */
export function bestShare(hits: readonly Hit[], weights: readonly number[], wished: Wished): number {
  return Math.max(0, ...rankMoments(hits, weights, wished).map(({ share }) => share));
}

/** What each moment of these hits meets of the question at least. */
export function leastShare(hits: readonly Hit[], weights: readonly number[]): number {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return total === 0 ? 1 : weighedSum(metInJob(hits, weights.length), weights) / total;
}

/** What a whole job meets, wherever it stands. */
export function metInJob(hits: readonly Pick<Hit, 'kind' | 'met'>[], words: number): number[] {
  const met = new Array<number>(words).fill(0);
  for (const hit of hits) raise(met, hit, jobFactor(hit.kind) * kindFactors[hit.kind]);
  return met;
}

/** What the job is about by its ticket. */
function metInTitle(hits: readonly Hit[], words: number): number[] {
  const met = new Array<number>(words).fill(0);
  for (const hit of hits) if (hit.kind === 'ticket') raise(met, hit, 1);
  return met;
}

/** What is met again and again: a job about a thing names it more than once. */
function metOften(hits: readonly Hit[], words: number): number[] {
  const places = new Array<number>(words).fill(0);
  for (const { met } of hits) for (const [word, how] of met) places[word] = (places[word] ?? 0) + how;
  return places.map((count) => Math.min(1, Math.max(0, count - 1) / (manyPlaces - 1)));
}

function jobFactor(kind: FindableKind): number {
  if (describing.has(kind)) return describingFactor;
  return kind === 'narration' ? passingFactor : elsewhereFactor;
}

function wishedFactor(hit: Hit, { kinds, markerKinds }: Wished): number {
  if (kinds.length + markerKinds.length === 0) return 1;
  const isWished =
    kinds.includes(hit.kind) || (hit.markerKind !== null && markerKinds.includes(hit.markerKind));
  return isWished ? 1.2 : otherKindFactor;
}

function raise(met: number[], hit: Pick<Hit, 'met'>, factor: number): void {
  for (const [word, how] of hit.met) met[word] = Math.max(met[word] ?? 0, how * factor);
}

/** What of the question is met. */
export function weighedSum(met: readonly number[], weights: readonly number[]): number {
  return weights.reduce((sum, weight, word) => sum + weight * (met[word] ?? 0), 0);
}

/** For each hit the others within reach of it in the same take. */
function nearOnes(hits: readonly Hit[]): Map<Hit, Hit[]> {
  const timed = hits
    .flatMap((hit) => (hit.place ? [{ hit, place: hit.place }] : []))
    .sort((a, b) => compare(a.place.takeId, b.place.takeId) || a.place.ms - b.place.ms);
  const near = new Map<Hit, Hit[]>(hits.map((hit) => [hit, []]));
  timed.forEach(({ hit, place }, index) => {
    for (const other of timed.slice(index + 1)) {
      if (other.place.takeId !== place.takeId || other.place.ms - place.ms > nearMs) break;
      near.get(hit)?.push(other.hit);
      near.get(other.hit)?.push(hit);
    }
  });
  return near;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const twoYearsMs = 2 * 365 * 86_400_000;

/** A light touch: of two that answer as well, the newer one comes first. */
export function recency(day: string, today: string): number {
  const age = Math.max(0, Date.parse(today) - Date.parse(day));
  return Number.isFinite(age) ? 0.02 * Math.exp(-age / twoYearsMs) : 0;
}

/** How much a word tells: the rarer, the more, but never many times as much. @param jobs in which it stands, of `all` */
export function rarity(jobs: number, all: number): number {
  return 1 + 0.4 * Math.log(1 + (all + 1) / (Math.max(jobs, seldom) + 1));
}

/** What stands in fewer jobs than these may be a chance, or a slip. */
const seldom = 2;
