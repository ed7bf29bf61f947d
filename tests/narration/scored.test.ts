import { describe, expect, it } from 'vitest';
import { propose, readCaptions, writeSubRip } from '@/lib/narration';
import { heardProposalSchema, type ProposalType } from '@/shared/narration';
import { scoredSet } from './scored-set';
import { addScores, precision, recall, score, scoreTable } from './scorer';

const set = scoredSet();
const scores = (holdout: boolean) =>
  addScores(
    set.filter((one) => one.holdout === holdout).map((one) => score(one, propose(one.lines, one.context))),
  );

/** Least precision and recall by type. */
const TARGETS: readonly (readonly [ProposalType, number, number])[] = [
  ['reading', 0.97, 0.95],
  ['coil-pair', 0.95, 0.9],
  ['role', 0.95, 0.9],
  ['joint', 0.95, 0.9],
  ['private', 0.9, 0.95],
  ['marker', 0.85, 0.85],
  ['work', 0.85, 0.85],
  ['camera-stop', 0.85, 0.85],
];

describe('the scored set', () => {
  const total = scores(false);
  const holdout = scores(true);
  console.info(`${scoreTable('set', total)}\n\n${scoreTable('holdout', holdout)}`);

  it('holds at least twelve narrations of five to ten minutes, beside those held out', () => {
    const fitted = set.filter((one) => !one.holdout);
    expect(fitted.length).toBeGreaterThanOrEqual(12);
    expect(new Set(set.map((one) => one.context.instrumentType)).size).toBeGreaterThanOrEqual(12);
    for (const { name, lines } of fitted) {
      const minutes = (lines.at(-1)?.endMs ?? 0) / 60_000;
      expect(minutes, name).toBeGreaterThanOrEqual(5);
      expect(minutes, name).toBeLessThanOrEqual(10);
    }
  });

  it.each(TARGETS)('%s: precision at least %d, recall at least %d', (type, leastPrecision, leastRecall) => {
    const part = total.get(type);
    expect(part?.expected).toBeGreaterThan(0);
    expect(part && precision(part)).toBeGreaterThanOrEqual(leastPrecision);
    expect(part && recall(part)).toBeGreaterThanOrEqual(leastRecall);
  });

  it('keeps to the contract, with keys that come back and are used once', () => {
    for (const { lines, context } of set) {
      const proposals = propose(lines, context);
      for (const proposal of proposals) heardProposalSchema.parse(proposal);
      const keys = proposals.map((proposal) => proposal.key);
      expect(new Set(keys).size).toBe(keys.length);
      const again = readCaptions(new TextEncoder().encode(writeSubRip(lines))).lines;
      expect(propose(again, context).map((proposal) => proposal.key)).toEqual(keys);
    }
  });

  it('never puts a part of the client’s name into a title', () => {
    for (const { lines, context } of set) {
      const parts = (context.clientName ?? '').toLowerCase().split(' ');
      for (const proposal of propose(lines, context)) {
        if (proposal.type !== 'marker') continue;
        const words = proposal.payload.title.toLowerCase().split(/\W+/);
        expect(parts.filter((part) => words.includes(part))).toEqual([]);
      }
    }
  });
});
