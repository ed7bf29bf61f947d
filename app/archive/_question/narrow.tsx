'use client';

import { useId } from 'react';
import type { ArchiveAnswer } from '@/shared/archive';
import { archiveQuerySchema } from '@/shared/archive';
import { clientIdSchema } from '@/shared/ids';
import { basisSchema } from '@/shared/readings';
import { type Asked, narrowed } from './asked';
import { basisWords, KindShape, kindInWords } from './kind-words';
import styles from './narrow.module.css';
import { NarrowDays } from './narrow-days';
import { NarrowReading } from './narrow-reading';

interface NarrowProps {
  asked: Asked;
  filters: ArchiveAnswer['filters'];
  clientName: (id: string) => string;
  onAsk: (change: (now: Asked) => Asked) => void;
}

/** What the answers can be narrowed by, with how many jobs would stay. */
export function Narrow({ asked, filters, clientName, onAsk }: NarrowProps) {
  const set = (change: Parameters<typeof narrowed>[1]) => onAsk((now) => narrowed(now, change));
  const { reading, low, high } = asked;
  return (
    <div className={styles.narrow}>
      <Choices
        name="Instrument"
        chosen={asked.instrument}
        offered={filters.instruments}
        onChoose={(instrument) => set({ instrument })}
      />
      <Choices
        name="Kind"
        chosen={asked.kind}
        offered={filters.kinds}
        says={kindInWords}
        shape={(kind) => <KindShape kind={kind} />}
        onChoose={(kind) => set({ kind: archiveQuerySchema.shape.kind.safeParse(kind).data })}
      />
      <Choices
        name="Known how"
        chosen={asked.basis}
        offered={filters.bases}
        says={(basis) => basisWords[basisSchema.parse(basis)]}
        onChoose={(basis) => set({ basis: basisSchema.safeParse(basis).data })}
      />
      <Choices
        name="Client"
        chosen={asked.client}
        offered={filters.clients.map(({ id, count }) => ({ value: id, count }))}
        says={clientName}
        onChoose={(client) => set({ client: clientIdSchema.safeParse(client).data })}
      />
      <Group name="Days">
        <NarrowDays from={asked.from} to={asked.to} onDays={set} />
      </Group>
      {(filters.readings.length > 0 || reading) && (
        <Group name="Readings">
          <NarrowReading chosen={{ reading, low, high }} offered={filters.readings} onRange={set} />
        </Group>
      )}
    </div>
  );
}

function Group({ name, children }: { name: string; children: React.ReactNode }) {
  const id = useId();
  return (
    <section className={styles.group} aria-labelledby={id}>
      <h3 id={id} className={styles.name}>
        {name}
      </h3>
      {children}
    </section>
  );
}

interface Offered {
  value: string;
  count: number | null;
}

interface ChoicesProps {
  name: string;
  chosen: string | undefined;
  offered: readonly Offered[];
  says?: (value: string) => string;
  shape?: (value: string) => React.ReactNode;
  /** Undefined takes it off. */
  onChoose: (value: string | undefined) => void;
}

/** So many are shown; the rest is behind a touch. */
const openly = 7;

function Choices({ name, chosen, offered, onChoose, ...look }: ChoicesProps) {
  const isOffered = offered.some(({ value }) => value === chosen);
  const all = chosen === undefined || isOffered ? offered : [{ value: chosen, count: null }, ...offered];
  if (all.length === 0) return null;
  const choice = (each: Offered) => (
    <Choice
      key={each.value}
      {...each}
      {...look}
      isChosen={each.value === chosen}
      onTouch={() => onChoose(each.value === chosen ? undefined : each.value)}
    />
  );
  const [first, rest] = [all.slice(0, openly), all.slice(openly)];
  return (
    <Group name={name}>
      <ul className={styles.choices}>{first.map(choice)}</ul>
      {rest.length > 0 && (
        <details open={rest.some(({ value }) => value === chosen)}>
          <summary className={styles.more}>{rest.length} more</summary>
          <ul className={styles.choices}>{rest.map(choice)}</ul>
        </details>
      )}
    </Group>
  );
}

interface ChoiceProps extends Offered, Pick<ChoicesProps, 'says' | 'shape'> {
  isChosen: boolean;
  onTouch: () => void;
}

function Choice({ value, count, isChosen, says, shape, onTouch }: ChoiceProps) {
  return (
    <li>
      <button type="button" className={styles.choice} aria-pressed={isChosen} onClick={onTouch}>
        {shape?.(value)}
        <span className={styles.choiceWord}>{says?.(value) ?? value}</span>
        {count !== null && <span className={styles.count}>{count}</span>}
      </button>
    </li>
  );
}
