'use client';

import { Button } from '@/app/_parts/button';
import { ChoiceField } from '@/app/_parts/field';
import { findableKinds } from '@/shared/archive';
import { markerKinds } from '@/shared/markers';
import { bases, readingKindIdSchema } from '@/shared/readings';
import { basisWords, kindInWords } from '../../_question/kind-words';
import { NarrowDays } from '../../_question/narrow-days';
import { NarrowReading } from '../../_question/narrow-reading';
import { searchOf } from './chosen';
import styles from './give-out.module.css';
import type { GiveOut } from './use-give-out';

/** The filters of the archive, clients apart: nobody is to be told by what goes out. */
export function ChoosePart({ giveOut: { chosen, preview, choose } }: { giveOut: GiveOut }) {
  const kinds = [...new Set([...markerKinds, ...findableKinds])];
  return (
    <section className={styles.part} aria-labelledby="part">
      <h2 id="part">Which part</h2>
      <div className={styles.filters}>
        <Choice
          label="Instrument"
          value={chosen.instrument}
          offered={(preview?.instruments ?? []).map(({ value }) => value)}
          onChoose={(instrument) => choose({ instrument })}
        />
        <Choice
          label="Jobs that hold a"
          value={chosen.kind}
          offered={kinds}
          says={kindInWords}
          onChoose={(kind) => choose({ kind })}
        />
        <Choice
          label="Known how"
          value={chosen.basis}
          offered={bases}
          says={(basis) => basisWords[basis]}
          onChoose={(basis) => choose({ basis })}
        />
      </div>
      <NarrowDays
        from={chosen.from}
        to={chosen.to}
        onDays={({ from = '', to = '' }) => choose({ from, to })}
      />
      <details>
        <summary className={styles.more}>Jobs with a reading in a range</summary>
        <NarrowReading
          chosen={{
            reading: readingKindIdSchema.safeParse(chosen.reading).data,
            low: numberOf(chosen.low),
            high: numberOf(chosen.high),
          }}
          offered={preview?.readings ?? []}
          onRange={({ reading = '', low, high }) =>
            choose({ reading, low: String(low ?? ''), high: String(high ?? '') })
          }
        />
      </details>
      {searchOf(chosen) !== '' && (
        <Button onClick={() => choose(nothingChosen)} className={styles.all}>
          Take the whole archive
        </Button>
      )}
    </section>
  );
}

const nothingChosen = {
  ...{ instrument: '', kind: '', basis: '', from: '', to: '' },
  ...{ reading: '', low: '', high: '', without: '' },
};

function numberOf(text: string | undefined): number | undefined {
  return text === undefined || text === '' ? undefined : Number(text);
}

interface ChoiceProps<Value extends string> {
  label: string;
  value: string | undefined;
  offered: readonly Value[];
  says?: (value: Value) => string;
  onChoose: (value: string) => void;
}

/** What is chosen is offered even where nothing has it any more. */
function Choice<Value extends string>({ label, value = '', offered, says, onChoose }: ChoiceProps<Value>) {
  const isOffered = value === '' || offered.some((each) => each === value);
  return (
    <ChoiceField label={label} value={value} onChange={(event) => onChoose(event.currentTarget.value)}>
      <option value="">Any</option>
      {!isOffered && <option value={value}>{value}</option>}
      {offered.map((each) => (
        <option key={each} value={each}>
          {says?.(each) ?? each}
        </option>
      ))}
    </ChoiceField>
  );
}
