'use client';

import {
  comparedAt20,
  dissipationOf,
  expandedUncertainty,
  sayBase,
  sayDissipation,
  sayUncertainty,
} from '@/lib/readings';
import { cautions } from '@/lib/safety';
import type { Meter, Reading } from '@/shared/readings';
import { useDesk } from '../_desk/use-record';
import styles from './sheet.module.css';

/** What follows from a reading: its uncertainty by its meter, a coil at 20 °C, the dissipation of a valve. */
export function ReadingMargin({ reading }: { reading: Reading }) {
  const { record } = useDesk();
  const meter = record.meters.find(({ id }) => id === reading.meterId);
  const watts = dissipationOf(reading, record.readings);
  const words = [
    meter && sayUncertainty(reading, meter.ranges),
    at20(reading, meter),
    watts && sayDissipation(watts),
  ];
  const said = words.filter(Boolean).join(' · ');
  return said === '' ? null : (
    <span className={styles.tag} title={watts ? cautions[watts.caution] : undefined}>
      {said}
    </span>
  );
}

function at20(reading: Reading, meter: Meter | undefined): string | null {
  const { valueText, unit, kind } = reading;
  const expanded =
    meter && valueText !== null ? expandedUncertainty({ text: valueText, unit }, meter.ranges) : null;
  const coil = comparedAt20(reading, expanded ?? undefined);
  return coil && `${sayBase(Number(coil.ohms.toPrecision(4)), kind)} at 20 °C`;
}
