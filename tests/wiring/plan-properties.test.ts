import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseTrace, drawPlan, planWiring } from '@/lib/wiring';
import { planSchema } from '@/shared/wiring';
import { pointsOf, solveOhms } from './set/network';
import { everyReading, traceOf, truePickup } from './set/pickups';

describe('every plan', () => {
  it('predicts what a brute-force solution of its network gives', () => {
    fc.assert(
      fc.property(truePickup, (pickup) => {
        const resistors = pickup.windings.map(({ from, to, ohms }) => ({
          from: pickup.conductors[from] ?? '',
          to: pickup.conductors[to] ?? '',
          ohms,
        }));
        const { plans } = planWiring(traceOf(pickup, everyReading(pickup)));
        expect(plans.length).toBeGreaterThan(0);
        for (const plan of plans) {
          const solved = solveOhms(resistors, pointsOf(plan), 'HOT', 'GROUND');
          expect(plan.predictedOhms, plan.title).toBeCloseTo(solved, 6);
        }
      }),
    );
  });

  it('places every end once, adds the strings unless out of phase, and fits its contract', () => {
    fc.assert(
      fc.property(truePickup, (pickup) => {
        const isPlain = pickup.windings.every(({ fromIsPositive }) => fromIsPositive);
        for (const plan of planWiring(traceOf(pickup, everyReading(pickup))).plans) {
          const ends = plan.lines.flatMap((line) => line.ends);
          expect(ends.toSorted()).toEqual([...pickup.conductors, 'shield'].toSorted());
          if (isPlain || pickup.windings.length === pickup.conductors.length / 2) {
            expect(plan.stringsAdd).toBe(plan.kind === 'out of phase' ? 'no' : 'yes');
          }
          expect(planSchema.parse(plan)).toEqual(plan);
        }
      }),
    );
  });

  it('can be made and drawn from any part of the readings', () => {
    const some = truePickup.chain((pickup) =>
      fc.tuple(fc.constant(pickup), fc.shuffledSubarray(everyReading(pickup))),
    );
    fc.assert(
      fc.property(some, ([pickup, readings]) => {
        const trace = traceOf(pickup, readings);
        const { plans, unavailable } = planWiring(trace);
        expect(plans.length + unavailable.length).toBeGreaterThan(0);
        for (const plan of plans) {
          const drawing = drawPlan(plan, analyseTrace(trace));
          expect(drawing.wires).toHaveLength(plan.lines.flatMap((line) => line.ends).length);
          for (const { y } of [...drawing.nodes, ...drawing.wires.flatMap((wire) => wire.points)]) {
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(drawing.height);
          }
        }
      }),
    );
  });
});
