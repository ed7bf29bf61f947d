'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { KeyHint } from '@/app/_parts/key-hint';
import { kindOf, parseQuickEntry, type QuickEntry } from '@/lib/readings';
import { cautions } from '@/lib/safety';
import type { NewReading } from '@/shared/readings';
import { usePlayer } from '../_film/use-film';
import styles from './desk.module.css';
import { MeterChoice } from './meter-choice';
import { canRead, useMeter } from './use-meter';
import { useReadingChanges } from './use-reading-changes';
import { useDesk } from './use-record';

interface QuickReadingProps {
  /** Conductors known from traces, for two-colour names. */
  conductors?: readonly string[];
  label?: string;
  placeholder?: string;
  /** Put before what is typed: the pair that was chosen on the worksheet. */
  before?: string;
  onNoted?: () => void;
}

const usualPlaceholder = 'neck 7.9k · red-green open · low E 12th 1.8mm';

/** One typed line is a reading at the moment shown. It says what it understood as it is typed. */
export function QuickReading({
  conductors = [],
  label = 'Reading at this moment',
  placeholder = usualPlaceholder,
  before = '',
  onNoted,
}: QuickReadingProps) {
  const { record } = useDesk();
  const { note } = useReadingChanges();
  const player = usePlayer();
  const [text, setText] = useState('');
  const [meter, chooseMeter] = useMeter(record.meters);
  const lastSubject = record.readings.at(-1)?.subject;
  const entry = useMemo(
    () =>
      parseQuickEntry(text.trim() === '' ? '' : `${before} ${text}`, {
        instrumentType: record.instrument.type,
        conductors,
        ...(lastSubject ? { lastSubject } : {}),
      }),
    [text, before, record.instrument.type, conductors, lastSubject],
  );
  const keep = async (reading: NewReading) => {
    const moment = player?.moment ?? null;
    const noted = await note({
      ...reading,
      meterId: meter && canRead(meter, reading) ? meter.id : null,
      takeId: moment?.takeId ?? null,
      ms: moment?.ms ?? null,
    });
    if (!noted) return;
    setText('');
    onNoted?.();
  };
  return (
    <form
      className={styles.quick}
      onSubmit={(event) => {
        event.preventDefault();
        if (entry.state === 'understood') void keep(entry.reading);
      }}
    >
      <div className={styles.quickRow}>
        <label className={styles.quickField}>
          <span>
            {label} <KeyHint>N</KeyHint>
          </span>
          <input
            data-quick-reading
            className={styles.quickInput}
            value={text}
            placeholder={placeholder}
            autoComplete="off"
            spellCheck={false}
            maxLength={300}
            onChange={(event) => setText(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Escape') return;
              if (text === '') event.currentTarget.blur();
              setText('');
            }}
          />
        </label>
        <MeterChoice meters={record.meters} value={meter?.id ?? null} onChoose={chooseMeter} />
        <Button type="submit" weight="main" disabled={entry.state !== 'understood'}>
          Note it
        </Button>
      </div>
      <Heard entry={entry} onChoose={(reading) => void keep(reading)} />
    </form>
  );
}

function Heard({ entry, onChoose }: { entry: QuickEntry; onChoose: (reading: NewReading) => void }) {
  if (entry.state === 'empty')
    return <p className={styles.understood}>Subject, terminals, value: in any order.</p>;
  return (
    <div className={styles.understood} role="status">
      {entry.understood.map(({ text, as }) => (
        <span key={`${text} ${as}`} className={styles.chip}>
          {text && as !== text && !as.startsWith(text) ? `${text}: ${as}` : as}
        </span>
      ))}
      {entry.state === 'unfinished' && <span>{entry.missing}</span>}
      {entry.state === 'question' && (
        <>
          <span className={styles.question}>{entry.question}</span>
          {entry.choices.map(({ label, reading }) => (
            <Button key={label} onClick={() => onChoose(reading)}>
              {label}
            </Button>
          ))}
        </>
      )}
      {entry.state === 'understood' && <Cautions reading={entry.reading} />}
    </div>
  );
}

function Cautions({ reading }: { reading: NewReading }) {
  return (kindOf(reading.kind).cautions ?? [])
    .filter((key) => key !== 'ohms without power')
    .map((key) => (
      <span key={key} className={styles.caution}>
        {cautions[key]}
      </span>
    ));
}
