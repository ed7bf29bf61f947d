import type { Plan, TraceAnalysis, TraceInput } from '@/shared/wiring';
import { analyseTrace } from '../trace/analyse';
import { prepareTrace } from '../trace/prepare';
import { TraceProblem } from '../trace/problems';
import { typicalMeterText } from '../trace/uncertainty';
import { alone, type Circuit, inParallel, inSeries, linksOf, split } from './circuit';
import { type Leg, legsOf, reversed, sayCoil } from './legs';
import { metalClashes, type PlanHead, planOf } from './plan';
import type { Places } from './words';

/** `hotCoil` is the key of the coil to put on the hot side; `places` say where ends go on this instrument. */
export type PlanOptions = { hotCoil?: string; places?: Places };

export type WiringPlans = {
  plans: Plan[];
  /** What cannot be wired on this pickup as it is, and why, in plain words. */
  unavailable: { kind: Plan['kind']; why: string }[];
};

type Draft = { circuit: Circuit; head: Omit<PlanHead, 'notes'> };

/**
 * Every way to wire the pickup that its conductors allow, as far as the trace goes; what is not known
 * is said in each plan's `unknowns`. The rule behind "strings add": the positive end of every coil faces
 * hot, so the negative end of the coil on the hot side is joined to the positive end of the next one.
 * @throws TraceProblem, UnknownColour; TraceProblem as well when `hotCoil` is no coil of this pickup
 */
export function planWiring(input: TraceInput, options: PlanOptions = {}): WiringPlans {
  const analysis = analyseTrace(input);
  checkHotCoil(analysis, options.hotCoil);
  const legs = legsOf(analysis, options.hotCoil);
  const notes = usesTypicalMeter(input) ? [typicalMeterText] : [];
  const plans = draftsOf(legs).map(({ circuit, head }) =>
    planOf(circuit, analysis, options.places ?? {}, { ...head, notes }),
  );
  return { plans, unavailable: unavailableFor(legs, analysis) };
}

function checkHotCoil(analysis: TraceAnalysis, hotCoil: string | undefined): void {
  const keys = analysis.coils.map((coil) => coil.key);
  if (hotCoil === undefined || keys.includes(hotCoil)) return;
  const known = keys.length > 0 ? `Choose one of ${keys.join(', ')}.` : 'Trace a coil first.';
  throw new TraceProblem(`"${hotCoil}" is no coil of ${analysis.subject}.`, known, {
    field: 'hotCoil',
    value: hotCoil,
  });
}

function usesTypicalMeter(input: TraceInput): boolean {
  return prepareTrace(input).readings.some(
    (reading) => reading.kind === 'pair' && reading.ohms !== null && reading.uncertaintyOhms === undefined,
  );
}

function draftsOf(legs: readonly Leg[]): Draft[] {
  const [first, second, ...more] = legs;
  if (!first) return [];
  const coilCount = legs.flatMap((leg) => leg.coils).length;
  if (coilCount === 1)
    return [
      { circuit: fitting([first], inSeries), head: { id: 'as it is', kind: 'as it is', title: 'As it is' } },
    ];
  const isTwo = second !== undefined && more.length === 0;
  return [
    seriesDraft(legs),
    ...(second
      ? [
          {
            circuit: fitting(legs, inParallel),
            head: { id: 'parallel', kind: 'parallel' as const, title: 'Parallel' },
          },
        ]
      : []),
    ...splitDrafts(legs),
    ...legs.flatMap((leg) => aloneDrafts(leg, legs)),
    ...(isTwo ? [outOfPhase(first, second)] : []),
  ];
}

/** Orders and ways round that keep the strings as they are, until no end on the metal is kept off ground. */
function fitting(legs: readonly Leg[], join: (legs: readonly Leg[]) => Circuit): Circuit {
  const circuits = ordersOf(legs).flatMap((order) => [join(order), join(order.map(reversed))]);
  const usual = join(legs);
  return [usual, ...circuits].find((circuit) => metalClashes(circuit).length === 0) ?? usual;
}

function ordersOf(legs: readonly Leg[]): Leg[][] {
  if (legs.length < 2) return [[...legs]];
  return legs.flatMap((leg) => ordersOf(legs.filter((other) => other !== leg)).map((rest) => [leg, ...rest]));
}

function seriesDraft(legs: readonly Leg[]): Draft {
  const isLinked = legs.length === 1;
  const title = isLinked ? 'Series, as linked inside' : 'Series';
  return { circuit: fitting(legs, inSeries), head: { id: 'series', kind: 'series', title } };
}

function splitDrafts(legs: readonly Leg[]): Draft[] {
  const count = linksOf(legs).length;
  const both = ['ground', 'hot'] as const;
  return Array.from({ length: count }, (_, link) =>
    both.map((to): Draft => {
      const circuit = fitting(legs, (order) => split(order, link, to));
      const which = count > 1 ? ` ${link + 1}` : '';
      const stays = circuit.branches.flat().map(sayCoil).join(' and ');
      return {
        circuit,
        head: {
          id: `split${which} to ${to}`,
          kind: 'split',
          title: `Split, link${which} to ${to}: ${stays} stays`,
        },
      };
    }),
  ).flat();
}

function aloneDrafts(leg: Leg, legs: readonly Leg[]): Draft[] {
  const others = legs.filter((other) => other !== leg);
  const whole = others.length > 0 && leg.coils.length > 1 ? [[0, leg.coils.length - 1] as const] : [];
  return [...whole, ...leg.coils.map((_, at) => [at, at] as const)].map(([from, to]) => {
    const coils = leg.coils.slice(from, to + 1);
    const last = leg.coils.length - 1;
    const circuits = [alone(leg, from, to, others), alone(reversed(leg), last - to, last - from, others)];
    const circuit =
      circuits.find((one) => metalClashes(one).length === 0) ?? circuits[0] ?? alone(leg, from, to, others);
    return {
      circuit,
      head: {
        id: `alone ${coils.map((coil) => coil.key).join('+')}`,
        kind: 'alone',
        title: `${coils.map(sayCoil).join(' and ')} alone`,
      },
    };
  });
}

/** Series with the second coil turned round: the strings take from each other, a thin and hollow sound. */
function outOfPhase(first: Leg, second: Leg): Draft {
  const circuit = fitting([first, second], ([one, two]) => inSeries(one && two ? [one, reversed(two)] : []));
  return { circuit, head: { id: 'out of phase', kind: 'out of phase', title: 'Series, out of phase' } };
}

function unavailableFor(legs: readonly Leg[], analysis: TraceAnalysis): WiringPlans['unavailable'] {
  const unsettled = analysis.strands.find(
    (strand) => strand.shape === 'unsettled' || strand.shape === 'branching',
  );
  const names = unsettled?.points.flat().join(', ') ?? '';
  const kinds: Plan['kind'][] = ['series', 'parallel', 'split', 'out of phase'];
  if (legs.length === 0) {
    const why = unsettled
      ? `It is not settled yet what lies between ${names}.`
      : 'No coil has been found yet.';
    return [...kinds, 'alone' as const].map((kind) => ({ kind, why }));
  }
  const coilCount = legs.flatMap((leg) => leg.coils).length;
  if (coilCount === 1) return kinds.map((kind) => ({ kind, why: oneCoilWhy(unsettled ? names : null) }));
  if (legs.length > 1)
    return legs.length === 2
      ? []
      : [{ kind: 'out of phase', why: 'With more than two coils, choose which one to turn round.' }];
  const why = 'The coils are linked inside: open the link first to bring out all four ends.';
  return [
    { kind: 'parallel', why },
    { kind: 'out of phase', why },
  ];
}

function oneCoilWhy(unsettled: string | null): string {
  return unsettled
    ? `Only one coil is certain; it is not settled yet what lies between ${unsettled}.`
    : 'Only one winding is brought out.';
}
