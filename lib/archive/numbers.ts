import { type FindableKind, findableKinds } from '@/shared/archive';

/**
 * Numbers in the index of words. They say by themselves what is needed of thousands of hits, so that only the best
 * are looked up. All fit the 53 bits of a whole number in JavaScript.
 */

/** Things of one kind in one job. */
const most = 2 ** 20;
const kinds = 16;
/** What is said within this time is found as one: words that stand near each other meet, common ones too. */
export const passageMs = 20_000;
/** Passages of a take: over 15 days. */
const passages = 2 ** 16;

/** Number of the nth thing of a kind in a job. A newer job has higher numbers. */
export function thingNumber(job: number, kind: FindableKind, nth: number): number {
  return (job * kinds + findableKinds.indexOf(kind)) * most + nth;
}

export function jobOfThing(thing: number): number {
  return Math.floor(thing / (kinds * most));
}

export function kindOfThing(thing: number): FindableKind {
  return findableKinds[Math.floor(thing / most) % kinds] ?? 'ticket';
}

/** All numbers that things of one kind in a job can have, both ends included. */
export function thingsOfKind(job: number, kind: FindableKind): [number, number] {
  return [thingNumber(job, kind, 0), thingNumber(job, kind, most - 1)];
}

/** For SQLite: the job, and the place of the kind among `findableKinds`, of the number in a column. */
export const jobOfThingSql = (column: string): string => `${column} / ${kinds * most}`;
export const kindOfThingSql = (column: string): string => `${column} / ${most} % ${kinds}`;

/** All numbers that things of a job can have, both ends included. */
export function thingsOfJobNumbers(job: number): [number, number] {
  return [job * kinds * most, (job + 1) * kinds * most - 1];
}

/** Number of the passage of a take that a moment lies in. */
export function passageNumber(take: number, ms: number): number {
  return take * passages + Math.floor(ms / passageMs);
}

export function takeOfPassage(passage: number): number {
  return Math.floor(passage / passages);
}

/** Where a passage begins. */
export function msOfPassage(passage: number): number {
  return (passage % passages) * passageMs;
}

/** All numbers that passages of a take can have, both ends included. */
export function passagesOfTake(take: number): [number, number] {
  return [take * passages, (take + 1) * passages - 1];
}

/**
 * For SQLite: between two numbers that are given. A number from JavaScript that is longer than 32 bits comes to SQLite
 * as a real one, and FTS5 goes straight to a row only by a whole number: else it reads on from the end.
 */
export const betweenWhole = 'BETWEEN CAST(? AS INTEGER) AND CAST(? AS INTEGER)';
