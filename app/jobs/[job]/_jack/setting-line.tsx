'use client';

import { useId, useMemo, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { filmTimeOf, layOut, shortTime } from '@/lib/film';
import { asSayable, sayValue } from '@/lib/readings';
import type { Meter, Reading } from '@/shared/readings';
import { canRead } from '../_desk/use-meter';
import { useReadingChanges } from '../_desk/use-reading-changes';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import styles from './jack.module.css';
import { type MeterValue, readMeter } from './meter-text';
import type { SettingRow } from './settings-rows';
import { VerdictMark } from './verdict-mark';

/** One setting: what is expected, what was read, and whether it fits. */
export function SettingLine({ row, meter }: { row: SettingRow; meter: Meter | null }) {
  const { record } = useDesk();
  const { label, expected, explanation, check } = row;
  const reading = check && record.readings.find(({ id }) => id === check.readingId);
  return (
    <tr data-verdict={check?.verdict ?? 'unread'}>
      <th scope="row">
        {label}
        {explanation && <p className={styles.fine}>{explanation}</p>}
      </th>
      <td data-title="A sound harness shows">
        {expected ? (
          <p className={`figures ${styles.expected}`}>
            {expected.map((words) => (
              <span key={words}>{words}</span>
            ))}
          </p>
        ) : (
          <p className={styles.fine}>not worked out</p>
        )}
      </td>
      <td data-title="The meter shows">
        {reading && <NotedReading reading={reading} label={label} />}
        <MeterEntry row={row} meter={meter} isRead={check !== null} />
      </td>
      <td data-title="Verdict">
        <VerdictMark verdict={check?.verdict ?? 'unread'} />
      </td>
    </tr>
  );
}

function NotedReading({ reading, label }: { reading: Reading; label: string }) {
  const { record } = useDesk();
  const { remove } = useReadingChanges();
  const player = usePlayer();
  const film = useMemo(() => layOut(record.takes), [record.takes]);
  const { takeId, ms } = reading;
  const at = takeId !== null && ms !== null ? filmTimeOf(film, { takeId, ms }) : null;
  const said = sayValue(asSayable(reading));
  return (
    <p className={styles.noted}>
      <strong className="figures">{said}</strong>
      {at && (
        <Button weight="bare" onClick={() => player?.seek(at.filmMs)}>
          at <span className="figures">{shortTime(at.filmMs)}</span>
        </Button>
      )}
      <Button
        weight="bare"
        aria-label={`Delete the reading ${said} of ${label}`}
        onClick={() => void remove(reading)}
      >
        Delete
      </Button>
    </p>
  );
}

function MeterEntry({ row, meter, isRead }: { row: SettingRow; meter: Meter | null; isRead: boolean }) {
  const { note } = useReadingChanges();
  const player = usePlayer();
  const [text, setText] = useState('');
  const [isTold, setTold] = useState(false);
  const id = useId();
  const heard = readMeter(text);
  const keep = async ({ reading }: MeterValue, entry: HTMLElement | null) => {
    const moment = player?.moment ?? null;
    const noted = await note({
      ...reading,
      between: ['tip', 'sleeve'],
      details: { jack: row.setting },
      meterId: meter && canRead(meter, reading) ? meter.id : null,
      takeId: moment?.takeId ?? null,
      ms: moment?.ms ?? null,
    });
    if (!noted) return;
    setText('');
    toNextEntry(entry);
  };
  return (
    <form
      className={styles.meterEntry}
      onSubmit={(event) => {
        event.preventDefault();
        setTold(true);
        if (heard.state === 'read')
          void keep(heard.value, event.currentTarget.querySelector<HTMLElement>('[data-entry]'));
      }}
    >
      <input
        id={id}
        data-entry={row.key}
        data-read={isRead || undefined}
        className={styles.meterInput}
        aria-label={`The meter shows, ${row.label}`}
        aria-describedby={`${id}-heard`}
        value={text}
        placeholder={isRead ? 'read again' : '8.05k · OL'}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        maxLength={40}
        onChange={(event) => {
          setText(event.currentTarget.value);
          setTold(false);
        }}
      />
      <Button type="submit" aria-label={`Note it, ${row.label}`}>
        Note
      </Button>
      <div id={`${id}-heard`} className={styles.heard} role="status">
        {heard.state === 'read' && <span className={styles.chip}>{heard.value.said}</span>}
        {heard.state === 'unclear' && isTold && <span className={styles.warn}>{heard.missing}</span>}
        {heard.state === 'asks' && (
          <>
            <span>{heard.question}</span>
            {heard.choices.map((choice) => (
              <Button
                key={choice.said}
                onClick={(event) =>
                  void keep(
                    choice,
                    event.currentTarget.form?.querySelector<HTMLElement>('[data-entry]') ?? null,
                  )
                }
              >
                {choice.said}
              </Button>
            ))}
          </>
        )}
      </div>
    </form>
  );
}

/** On to the next line that nobody has read, so that a whole harness is read without the mouse. */
function toNextEntry(from: HTMLElement | null): void {
  const entries = [...document.querySelectorAll<HTMLElement>('[data-entry]')];
  const after = entries.slice(from ? entries.indexOf(from) + 1 : 0);
  const next = after.find((entry) => !entry.hasAttribute('data-read') && entry.checkVisibility());
  (next ?? from)?.focus();
}
