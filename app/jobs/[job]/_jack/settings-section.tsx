'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { KeyHint } from '@/app/_parts/key-hint';
import { counted } from '@/app/_parts/words';
import type { JackJudgement } from '@/shared/jack';
import type { JackView } from '@/shared/jack-check';
import { MeterChoice } from '../_desk/meter-choice';
import { useMeter } from '../_desk/use-meter';
import { useDesk } from '../_desk/use-record';
import styles from './jack.module.css';
import { SettingLine } from './setting-line';
import { type AskedSetting, rowsOf, type SettingRow } from './settings-rows';
import { settingKey } from './words';

interface SettingsSectionProps {
  view: JackView;
  judgement: JackJudgement;
  asked: AskedSetting | null;
}

/** The settings of the instrument, each with what a sound harness shows and a place for what the meter shows. */
export function SettingsSection({ view, judgement, asked }: SettingsSectionProps) {
  const { record } = useDesk();
  const [meter, chooseMeter] = useMeter(record.meters);
  const [isDownOpen, setDownOpen] = useState(false);
  const holder = useRef<HTMLElement>(null);
  const { up, down } = rowsOf(view, judgement, asked);
  // A line behind the fold can take the focus only once the fold is open.
  const reached = useRef<AskedSetting | null>(null);
  useEffect(() => {
    if (!asked || reached.current === asked) return;
    const isFocused = focusOn(holder.current, settingKey(asked.setting));
    if (isFocused) reached.current = asked;
    else if (!isDownOpen) setDownOpen(true);
  });
  const [next] = judgement.missing;
  const readDown = down.filter(({ check }) => check).length;
  return (
    <section ref={holder} className={styles.section} aria-labelledby="settings">
      <h2 id="settings">What the meter shows</h2>
      <p className={styles.fine}>
        Leads on tip and sleeve of the output jack. Each reading is noted at the moment the film shows; the
        last one of a setting counts.
      </p>
      <MeterChoice meters={record.meters} value={meter?.id ?? null} onChoose={chooseMeter} />
      {next && (
        <div className={styles.next} aria-live="polite">
          <p className={styles.nextWhat}>Next: {next.label}</p>
          <Button data-next-pair onClick={() => focusOn(holder.current, settingKey(next.setting))}>
            To its line <KeyHint>N</KeyHint>
          </Button>
        </div>
      )}
      <SettingsTable caption="Pots up" rows={up} meter={meter} />
      {down.length > 0 && (
        <details
          className={styles.fold}
          open={isDownOpen}
          onToggle={(event) => setDownOpen(event.currentTarget.open)}
        >
          <summary>
            With pots down: {counted(down.length, 'setting')}, {readDown} read
          </summary>
          <SettingsTable caption="With pots down" rows={down} meter={meter} />
        </details>
      )}
      {view.passedOver.length > 0 && (
        <div className={styles.warn}>
          <p>Readings that this harness has no place for; they stay on the record:</p>
          <ul className={styles.plainList}>
            {view.passedOver.map(({ reading, setting, why }) => (
              <li key={reading}>
                {setting.position}: {why}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

/** Gives the focus to the entry of a setting. @returns whether it could take it */
function focusOn(holder: HTMLElement | null, key: string): boolean {
  const entry = holder?.querySelector<HTMLInputElement>(`[data-entry="${CSS.escape(key)}"]`) ?? null;
  entry?.focus();
  return entry !== null && document.activeElement === entry;
}

function SettingsTable({
  caption,
  rows,
  meter,
}: {
  caption: string;
  rows: readonly SettingRow[];
  meter: ReturnType<typeof useMeter>[0];
}) {
  return (
    <table className={styles.settings}>
      <caption className="only-read">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Setting</th>
          <th scope="col">A sound harness shows</th>
          <th scope="col">The meter shows</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <SettingLine key={row.key} row={row} meter={meter} />
        ))}
      </tbody>
    </table>
  );
}
