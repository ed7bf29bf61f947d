import type { CautionKey } from '@/lib/safety';
import type { Reading } from '@/shared/readings';

/** What follows from two readings of one output valve; it is not measured itself. */
export interface Dissipation {
  watts: number;
  /** Expanded (k = 2). */
  uncertaintyWatts: number;
  basis: 'implied';
  caution: CautionKey;
}

interface ValveReadings {
  plateVolts: number;
  biasAmps: number;
  /** Expanded alike (k = 2). */
  uncertaintyVolts?: number;
  uncertaintyAmps?: number;
}

/**
 * Idle dissipation of a plate: volts across the valve times amperes through it. Amperes read at the cathode hold
 * the screen's too, so the figure is a little high then. A negative reading was taken with the leads swapped.
 */
export function plateDissipation(readings: ValveReadings): Dissipation {
  const { uncertaintyVolts = 0, uncertaintyAmps = 0 } = readings;
  const volts = Math.abs(readings.plateVolts);
  const amps = Math.abs(readings.biasAmps);
  return {
    watts: volts * amps,
    uncertaintyWatts: Math.hypot(amps * uncertaintyVolts, volts * uncertaintyAmps),
    basis: 'implied',
    caution: 'valve amplifier',
  };
}

/**
 * What a bias current of a job implies with the newest plate voltage of the same valve; null where there is none.
 * @param readings the readings of the job, in the order they were noted
 */
export function dissipationOf(bias: Reading, readings: readonly Reading[]): Dissipation | null {
  if (bias.kind !== 'bias-current' || bias.baseValue === null) return null;
  const sameValve = (reading: Reading) => reading.subject.toLowerCase() === bias.subject.toLowerCase();
  const plate = readings.filter((reading) => reading.kind === 'plate-voltage' && sameValve(reading)).at(-1);
  if (!plate || plate.baseValue === null) return null;
  return plateDissipation({ plateVolts: plate.baseValue, biasAmps: bias.baseValue });
}

/** "14.4 W at the plate, implied". */
export function sayDissipation({ watts, basis }: Dissipation): string {
  return `${watts.toPrecision(3)} W at the plate, ${basis}`;
}
