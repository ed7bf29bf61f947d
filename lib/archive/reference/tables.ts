import { type Cell, writeCsv } from '@/lib/handover';
import { kindOf } from '@/lib/readings';
import type { ReadingKindId } from '@/shared/readings';
import type { Fault, ReadingGroup, TracedCoil, TracedPickup } from '@/shared/reference';

const mostCoils = 3;

/** A line a pickup; ohms as they were measured. CSV by RFC 4180. */
export function pickupsTable(pickups: readonly TracedPickup[]): string {
  const coilColumns = Array.from({ length: mostCoils }, (_, at) =>
    ['ends', 'row', 'ohms', 'basis'].map((column) => `coil ${at + 1} ${column}`),
  ).flat();
  return writeCsv(
    [
      ...['job', 'day', 'instrument', 'pickup', 'conductors', 'letter codes', 'shield', 'frame'],
      ...coilColumns,
      ...[
        'total ohms',
        'basis',
        'joined',
        'joined basis',
        'on the record',
        'cannot be read because',
        'trace',
      ],
    ],
    pickups.map(pickupRow),
  );
}

function pickupRow(pickup: TracedPickup): Cell[] {
  const { job, conductors, coils, joined } = pickup;
  return [
    ...[job.number, job.day, job.instrument, pickup.subject],
    conductors.map(({ name }) => name).join(' '),
    conductors.map(({ code }) => code).join(' '),
    ...[pickup.shield, pickup.frame],
    ...Array.from({ length: mostCoils }, (_, at) => coilCells(coils[at])).flat(),
    ...[pickup.totalOhms, pickup.basis, joined?.title ?? null, joined?.basis ?? null],
    pickup.said.map(({ text, basis }) => `${text} (${basis})`).join('; '),
    ...[pickup.problem, pickup.trace],
  ];
}

function coilCells(coil: TracedCoil | undefined): Cell[] {
  if (!coil) return [null, null, null, null];
  return [sayEnds(coil), coil.row, coil.ohms, coil.basis];
}

/** "red (positive) – white"; conductors that are one point are joined by "=". */
export function sayEnds({ ends }: Pick<TracedCoil, 'ends'>): string {
  return ends
    .map(({ names, isPositive }) => names.join(' = ') + (isPositive ? ' (positive)' : ''))
    .join(' – ');
}

/** A line a group; figures in the base unit of the kind, which stands beside them. */
export function readingsTable(kind: ReadingKindId | null, groups: readonly ReadingGroup[]): string {
  const named = kind && kindOf(kind);
  return writeCsv(
    [
      ...['kind', 'unit', 'instrument', 'measured at', 'readings', 'least', 'lower quartile', 'median'],
      ...['upper quartile', 'most', 'over range', 'not measured'],
    ],
    groups.map(({ instrument, place, n, min, quartiles, max, open, notMeasured }) => [
      ...[named?.label ?? null, named?.baseUnit ?? null, instrument, place, n, min],
      ...[quartiles?.lower ?? null, quartiles?.median ?? null, quartiles?.upper ?? null, max],
      ...[open, notMeasured],
    ]),
  );
}

/** A line a fault and cure. */
export function faultsTable(faults: readonly Fault[]): string {
  return writeCsv(
    ['instrument', 'fault', 'jobs', 'with a result on film', 'without work told', 'work', 'jobs with it'],
    faults.flatMap(({ instrument, said, jobs, shown, without, cures }) => {
      const fault: Cell[] = [instrument, said, jobs, shown, without];
      return cures.length === 0
        ? [[...fault, null, null]]
        : cures.map((cure): Cell[] => [...fault, cure.said, cure.jobs]);
    }),
  );
}
