'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type Meter, type MeterRange, meterSchema, type NewMeter } from '@/shared/readings';
import settings from '../settings.module.css';
import { MeterForm } from './meter-form';
import styles from './meters.module.css';

/** The meters of the workshop: name one, write down its accuracy, change it, delete it. */
export function Meters({ meters }: { meters: readonly Meter[] }) {
  const router = useRouter();
  const notices = useNotices();
  const head = useRef<HTMLHeadingElement>(null);
  const [open, setOpen] = useState<string | null>(null);
  const close = () => {
    setOpen(null);
    // The button that was pressed may be gone with its form.
    head.current?.focus();
  };
  const kept = (told: string) => {
    notices.done(told);
    close();
    router.refresh();
  };
  const add = async (meter: NewMeter) => {
    await call('POST', '/api/meters', meterSchema, meter);
    kept('Meter named');
  };
  const change = async (id: string, meter: NewMeter) => {
    await call('PATCH', `/api/meters/${id}`, meterSchema, meter);
    kept('Meter changed');
  };
  const remove = async (id: string) => {
    await call('DELETE', `/api/meters/${id}`, z.unknown());
    kept('Meter deleted');
  };
  return (
    <section className={settings.sheet} aria-labelledby="meters">
      <h2 id="meters" ref={head} tabIndex={-1}>
        Meters
      </h2>
      <p>
        A reading with its meter carries an uncertainty. Copy the accuracy of each range from the meter’s data
        sheet: ± (percent of the reading + counts of the last digit).
      </p>
      {meters.length > 0 && (
        <ul className={styles.meters}>
          {meters.map((meter) => (
            <li key={meter.id} className={styles.meter}>
              {open === meter.id ? (
                <MeterForm meter={meter} onSave={(changed) => change(meter.id, changed)} onLeave={close} />
              ) : (
                <>
                  <MeterCard meter={meter} />
                  <div className={styles.row}>
                    <Button onClick={() => setOpen(meter.id)} aria-label={`Change ${meter.name}`}>
                      Change
                    </Button>
                    <Button
                      weight="alarm"
                      onClick={() => void remove(meter.id).catch(notices.wrong)}
                      aria-label={`Delete ${meter.name}`}
                    >
                      Delete
                    </Button>
                  </div>
                </>
              )}
            </li>
          ))}
        </ul>
      )}
      {open === 'new' ? (
        <MeterForm onSave={add} onLeave={close} />
      ) : (
        <Button weight={meters.length === 0 ? 'main' : 'plain'} onClick={() => setOpen('new')}>
          Name a meter
        </Button>
      )}
    </section>
  );
}

function MeterCard({ meter }: { meter: Meter }) {
  return (
    <div className={styles.scroller}>
      <h3>{meter.name}</h3>
      {meter.ranges.length === 0 ? (
        <p>No ranges yet: its readings carry no uncertainty.</p>
      ) : (
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Reads up to</th>
              <th scope="col">Last digit</th>
              <th scope="col">Accuracy</th>
            </tr>
          </thead>
          <tbody>
            {meter.ranges.map((range) => (
              <tr key={`${range.unit} ${range.fullScale}`}>
                <td>
                  {range.fullScale} {range.unit}
                </td>
                <td>
                  {range.resolution} {range.unit}
                </td>
                <td>{accuracy(range)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}

function accuracy({ percent, counts }: MeterRange): string {
  return `± (${percent} % + ${counts} ${counts === 1 ? 'count' : 'counts'})`;
}
