'use client';

import { useRef } from 'react';
import type { UnderstoodPart } from '@/shared/archive';
import { type Asked, asksNothing, countNarrowed, narrowed, notNarrowed } from './asked';
import { basisWords, kindInWords } from './kind-words';
import { sayDays } from './narrow-days';
import styles from './question.module.css';
import { putBack, saidIn, takeAway, takenAway } from './taken-away';
import { sayRange } from './typed-range';

interface UnderstoodProps {
  asked: Asked;
  parts: readonly UnderstoodPart[];
  /** Names of clients that answers can be narrowed to, by their ids. */
  clientName: (id: string) => string;
  onAsk: (change: (now: Asked) => Asked) => void;
}

/** How the question was understood. Each part goes at a touch, and can be put back. */
export function Understood({ asked, parts, clientName, onAsk }: UnderstoodProps) {
  const region = useRef<HTMLElement>(null);
  // What was touched goes from the page: the focus stays in the region.
  const change = (next: (now: Asked) => Asked) => {
    onAsk(next);
    region.current?.focus();
  };
  const gone = takenAway(asked);
  const left = parts.filter(({ id }) => !gone.includes(id));
  const filters = chosenFilters(asked, clientName);
  if (asksNothing(asked) || left.length + gone.length + filters.length === 0) return null;
  return (
    <section
      ref={region}
      tabIndex={-1}
      className={styles.understood}
      aria-label="How the question was understood"
    >
      {left.length > 0 && (
        <Row name="Understood as">
          {left.map((part) => (
            <Chip
              key={part.id}
              says={<Part {...part} />}
              does="Take away"
              onTouch={() => change((now) => takeAway(now, part.id))}
            />
          ))}
        </Row>
      )}
      {filters.length > 0 && (
        <Row name="Narrowed to">
          {filters.map(({ name, says, off }) => (
            <Chip
              key={name}
              says={says}
              does="No longer narrowed to"
              onTouch={() => change((now) => narrowed(now, off))}
            />
          ))}
          {countNarrowed(asked) > 1 && (
            <Chip says="all of these" does="No longer narrowed to" onTouch={() => change(notNarrowed)} />
          )}
        </Row>
      )}
      {gone.length > 0 && (
        <Row name="Taken away">
          {gone.map((id) => (
            <Chip
              key={id}
              says={<s>{saidIn(id)}</s>}
              sign="↩"
              does="Put back"
              onTouch={() => change((now) => putBack(now, id))}
            />
          ))}
        </Row>
      )}
      {left
        .filter(({ kind }) => kind === 'slip')
        .map((part) => (
          <p key={part.id} className={styles.slip}>
            “{part.said}” occurs nowhere: {part.means.replace(`“${part.said}” `, '')}. Take it away to ask
            without it.
          </p>
        ))}
    </section>
  );
}

function Row({ name, children }: { name: string; children: React.ReactNode }) {
  return (
    <div className={styles.row}>
      <h2 className={styles.rowName}>{name}</h2>
      {children}
    </div>
  );
}

interface ChipProps {
  says: React.ReactNode;
  /** What a touch does with it, for those who cannot see the sign. */
  does: string;
  sign?: string;
  onTouch: () => void;
}

function Chip({ says, does, sign = '×', onTouch }: ChipProps) {
  return (
    <button type="button" className={styles.chip} onClick={onTouch}>
      <span className={styles.chipWords}>
        <span className="only-read">{does}: </span>
        {says}
      </span>
      <span aria-hidden="true" className={styles.sign}>
        {sign}
      </span>
    </button>
  );
}

const partWords: Readonly<Record<UnderstoodPart['kind'], string>> = {
  words: 'words',
  slip: 'words',
  time: 'time',
  value: 'value',
  instrument: 'instrument',
  marker: 'kind',
  basis: 'known how',
  client: 'client',
};

function Part({ kind, said, means }: UnderstoodPart) {
  if (kind === 'slip') return <i>{said}</i>;
  if (kind === 'words') return means;
  return (
    <>
      <span className={styles.of}>{partWords[kind]}</span> <i className={styles.said}>{said}</i> {means}
    </>
  );
}

interface Filter {
  name: string;
  says: string;
  /** What takes it off. */
  off: Parameters<typeof narrowed>[1];
}

function chosenFilters(asked: Asked, clientName: (id: string) => string): Filter[] {
  const { instrument, kind, basis, client, from, to, reading, low, high } = asked;
  const filters: (Filter | undefined)[] = [
    instrument === undefined
      ? undefined
      : { name: 'instrument', says: instrument, off: { instrument: undefined } },
    kind && { name: 'kind', says: kindInWords(kind), off: { kind: undefined } },
    basis && { name: 'basis', says: basisWords[basis].toLowerCase(), off: { basis: undefined } },
    client && { name: 'client', says: clientName(client), off: { client: undefined } },
    from || to
      ? { name: 'days', says: sayDays(from, to), off: { from: undefined, to: undefined } }
      : undefined,
    reading && {
      name: 'reading',
      says: sayRange(reading, low, high),
      off: { reading: undefined, low: undefined, high: undefined },
    },
  ];
  return filters.flatMap((filter) => filter ?? []);
}
