import type { NextMeasurement } from '@/shared/wiring';
import type { Model } from './model';
import { nameOf } from './net';
import { isAcross } from './rows';
import type { Section } from './sections';

/** The kick that settles most: where a coil lies and which end is positive, at once. */
export function nextKick(model: Model): NextMeasurement | null {
  const sections = model.strands.flatMap((strand) => strand.sections);
  for (const section of sections) {
    const row = rowToTry(model, section, sections.length === 1);
    if (row !== null) return kickAt(model, section, row, possibilities(model, sections));
  }
  return null;
}

/** Null when the section's row and positive end are proved, or when every row was tried. */
function rowToTry({ net, rows, kicks, trace }: Model, section: Section, isAlone: boolean): string | null {
  const own = kicks.filter((kick) => isAcross(net, kick, section));
  const untried = trace.rows.filter((row) => !own.some((kick) => kick.row === row));
  const [found] = rows.get(section) ?? [];
  const isProved = found?.why === 'kick' && found.positiveBasis !== 'assumed' && found.positive !== null;
  if (isProved && !isAlone) return null;
  if (isProved && trace.rows.length === 2) return untried[0] ?? null;
  if (isProved) return null;
  return untried.find((row) => row === found?.row) ?? untried[0] ?? null;
}

/** Rows and directions that are still possible. Two coils of four conductors share the two rows between them. */
function possibilities({ rows, trace }: Model, sections: readonly Section[]): number {
  const found = sections.map((section) => rows.get(section)?.[0]);
  const unplaced = found.filter((fact) => fact === undefined).length;
  const directions = 2 ** found.filter((fact) => fact?.why !== 'kick' || fact.positive === null).length;
  const isShared = trace.conductors.length === 4 && unplaced === 2;
  const places = isShared ? trace.rows.length : trace.rows.length ** unplaced;
  return Math.max(2, places * directions);
}

function kickAt({ net, rows }: Model, section: Section, row: string, now: number): NextMeasurement {
  const [red, black] = [nameOf(net, section.fact.a), nameOf(net, section.fact.b)];
  const known = (rows.get(section) ?? []).some((fact) => fact.why === 'kick' && fact.positive !== null);
  const why = known
    ? 'a clear kick here as well would mean that two coils are linked inside.'
    : `it shows whether this coil lies there and whether ${red} or ${black} is its positive end.`;
  return {
    kind: 'kick',
    leads: { red, black },
    steel: 'laid on',
    row,
    reason: `Red lead on ${red}, black on ${black}, steel on the ${row} row: ${why}`,
    possibilitiesNow: now,
    possibilitiesAtMost: Math.floor(now / 2),
  };
}
