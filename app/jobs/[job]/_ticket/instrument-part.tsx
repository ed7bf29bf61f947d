'use client';

import { KeptField } from '@/app/_parts/kept-field';
import { instrumentTypes } from '@/shared/instruments';
import { useDesk } from '../_desk/use-record';
import styles from './instrument.module.css';
import { SerialReadings } from './instrument-serial';
import { TicketSection } from './ticket-section';
import { useKeep } from './use-keep';

const freeWords = [
  { name: 'maker', label: 'Maker', hint: 'Unknown is a good answer: leave it empty.' },
  { name: 'model', label: 'Model', hint: 'Unknown is a good answer: leave it empty.' },
  { name: 'serial', label: 'Serial', hint: 'As it stands on the instrument. Never whole in a public text.' },
] as const;

/** What the instrument is, as far as it is known, and what its serial tells by the repairer's own patterns. */
export function InstrumentPart() {
  const { instrument, job } = useDesk().record;
  const keep = useKeep();
  const patch = (fields: object, was: object) =>
    keep('PATCH', `/api/instruments/${instrument.id}?job=${job.id}`, { ...fields, was });
  return (
    <TicketSection id="instrument" title="Instrument">
      <div className={styles.fields}>
        <KeptField
          label="Type"
          hint="One of the list, or a word of your own."
          name="type"
          value={instrument.type}
          onKeep={(type, was) => patch({ type }, { type: was })}
          list="ticket-instrument-types"
          required
          maxLength={60}
        />
        {freeWords.map(({ name, label, hint }) => (
          <KeptField
            key={name}
            label={label}
            hint={hint}
            name={name}
            value={instrument[name] ?? ''}
            onKeep={(next, was) => patch({ [name]: next || null }, { [name]: was || null })}
            maxLength={200}
          />
        ))}
      </div>
      <datalist id="ticket-instrument-types">
        {instrumentTypes.map((type) => (
          <option key={type} value={type} />
        ))}
      </datalist>
      <SerialReadings />
      <KeptField
        label="Features"
        hint="What it is known by: woods, colour, wear, what was changed before."
        name="features"
        value={instrument.features ?? ''}
        onKeep={(next, was) => patch({ features: next || null }, { features: was || null })}
        rows={3}
        maxLength={5000}
      />
    </TicketSection>
  );
}
