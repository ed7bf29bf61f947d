import type { NextMeasurement, TraceInput } from '@/shared/wiring';
import { areTogether } from './builds';
import { type Model, modelOf } from './model';
import { areApart, cellOf, type Net, nameOf } from './net';
import { nextKick } from './next-kick';
import { prepareTrace } from './prepare';
import { sayEnd, sayPair } from './say';
import { nodesIn, pairsOf } from './sections';

/**
 * The reading that leaves the fewest possibilities, with its reason in one line; null when nothing is
 * left to find out. Only resistances and kicks of a pickup that is disconnected: never a voltage on
 * anything live.
 * @throws TraceProblem, UnknownColour
 */
export function nextMeasurement(trace: TraceInput): NextMeasurement | null {
  return nextFor(modelOf(prepareTrace(trace)));
}

export function nextFor(model: Model): NextMeasurement | null {
  return (
    againstMetalFirst(model) ??
    splitBuilds(model) ??
    unreadCoil(model) ??
    unsettledChain(model) ??
    acrossCoils(model) ??
    againstMetal(model) ??
    nextKick(model)
  );
}

function pair(net: Net, a: number, b: number, reason: string, now: number, atMost: number): NextMeasurement {
  return {
    kind: 'pair',
    between: [nameOf(net, a), nameOf(net, b)],
    reason: `${sayPair(nameOf(net, a), nameOf(net, b)).replace(/^./, (first) => first.toUpperCase())}: ${reason}`,
    possibilitiesNow: now,
    possibilitiesAtMost: atMost,
  };
}

function isUnread(net: Net, a: number, b: number): boolean {
  const { state } = cellOf(net, a, b);
  return state === 'unread' || state === 'disputed';
}

/** One conductor and a shield: the coil can only lie between them. */
function againstMetalFirst({ own, conductorCount }: Model): NextMeasurement | null {
  const metal = own.terminals.indexOf('shield');
  if (conductorCount !== 1 || metal < 0 || !isUnread(own, 0, metal)) return null;
  return pair(own, 0, metal, 'with one conductor the coil can only end at the shield.', 1, 1);
}

type Candidate = { a: number; b: number; atMost: number; squares: number; isAssumed: boolean };

function splitBuilds({ own, builds, conductorCount, trace }: Model): NextMeasurement | null {
  if (builds.length < 2) return null;
  const conductors = own.terminals.map((_, at) => at).slice(0, conductorCount);
  const assumed = new Set(trace.assumed.flatMap(({ ends: [a, b] }) => [`${a}|${b}`, `${b}|${a}`]));
  const candidates = pairsOf(conductors)
    .filter(([a, b]) => own.componentOf[a] !== own.componentOf[b] && !areApart(own, a, b))
    .map(([a, b]): Candidate => {
      const together = builds.filter((build) => areTogether(build, a, b)).length;
      const others = builds.length - together;
      const isAssumed = assumed.has(`${nameOf(own, a)}|${nameOf(own, b)}`);
      return { a, b, atMost: Math.max(together, others), squares: together ** 2 + others ** 2, isAssumed };
    });
  const best = candidates.reduce<Candidate | null>(
    (kept, one) => (kept && !isBetter(one, kept) ? kept : one),
    null,
  );
  if (!best) return null;
  const { a, b, atMost } = best;
  const reason = `of ${builds.length} ways the conductors can belong together it leaves ${atMost} at most.`;
  return pair(own, a, b, reason, builds.length, atMost);
}

function isBetter(one: Candidate, kept: Candidate): boolean {
  if (one.atMost !== kept.atMost) return one.atMost < kept.atMost;
  if (one.squares !== kept.squares) return one.squares < kept.squares;
  return one.isAssumed && !kept.isAssumed;
}

/** A coil that is known by elimination, by a kick or from elsewhere, but was never read. */
function unreadCoil({ own, net, strands, builds, conductorCount }: Model): NextMeasurement | null {
  const [only] = builds;
  for (const { sections } of strands) {
    const unread = sections.find(({ fact }) => fact.ohms === null);
    if (unread)
      return pair(
        net,
        unread.fact.a,
        unread.fact.b,
        'this coil is not measured yet, its resistance is missing.',
        1,
        1,
      );
  }
  for (const block of only ?? []) {
    for (const [a, b] of pairsOf(block.filter((at) => at < conductorCount))) {
      if (own.componentOf[a] !== own.componentOf[b] && !areApart(own, a, b)) {
        return pair(own, a, b, 'these two should hang together, read them to be sure.', 1, 1);
      }
    }
  }
  return null;
}

/** Three or more points on one winding: what lies between what shows only when every pair is read. */
function unsettledChain({ own }: Model): NextMeasurement | null {
  for (const component of new Set(own.componentOf)) {
    for (const [a, b] of pairsOf(nodesIn(own, component))) {
      const cell = cellOf(own, a, b);
      if (cell.state === 'winding' && cell.ohms === null) {
        return pair(
          own,
          a,
          b,
          `it shows whether ${nameOf(own, a)} and ${nameOf(own, b)} are the outer ends or one of them is a tap.`,
          2,
          1,
        );
      }
    }
  }
  return null;
}

/** Coils that nothing shows apart yet; one reading across does. */
function acrossCoils({ own, conductorCount }: Model): NextMeasurement | null {
  const open = pairsOf(own.terminals.map((_, at) => at).slice(0, conductorCount)).find(([a, b]) =>
    isUnread(own, a, b),
  );
  if (!open) return null;
  return pair(own, ...open, 'it shows that the two are not joined inside.', 2, 1);
}

function againstMetal({ own, conductorCount }: Model): NextMeasurement | null {
  for (let metal = own.terminals.length - 1; metal >= conductorCount; metal--) {
    for (let at = 0; at < metal; at++) {
      if (isUnread(own, at, metal))
        return pair(
          own,
          at,
          metal,
          `it shows whether ${sayEnd(nameOf(own, at))} has a path to ${sayEnd(nameOf(own, metal))}.`,
          2,
          1,
        );
    }
  }
  return null;
}
