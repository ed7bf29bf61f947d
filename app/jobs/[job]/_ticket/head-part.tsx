'use client';

import { KeptField } from '@/app/_parts/kept-field';
import { ticketNumber } from '@/app/_parts/words';
import { useDesk } from '../_desk/use-record';
import { CameWith } from './came-with';
import { StatePart } from './state-part';
import styles from './ticket.module.css';
import { usePatchJob } from './use-keep';

/** The head of the ticket: its number, what it is, how far it is, and its days. */
export function HeadPart() {
  const { job } = useDesk().record;
  const patch = usePatchJob();
  return (
    <div className={styles.head}>
      <div className={styles.stub}>
        <p className={styles.number}>
          <span className="only-read">Ticket number </span>
          {ticketNumber(job.number)}
        </p>
        <div id="title" tabIndex={-1} className={styles.place}>
          <KeptField
            label="Title"
            name="title"
            value={job.title}
            onKeep={(title, was) => patch({ title }, { title: was })}
            wraps
            required
            maxLength={200}
          />
        </div>
      </div>
      <StatePart />
      <Days />
      <KeptField
        label="Where it stands"
        hint="The place in the workshop: a shelf, a hook, a wall."
        name="place"
        value={job.place ?? ''}
        onKeep={(place, was) => patch({ place: place || null }, { place: was || null })}
        maxLength={200}
      />
      <CameWith />
    </div>
  );
}

const days = [
  { name: 'receivedOn', label: 'Received', required: true },
  { name: 'promisedOn', label: 'Promised for', required: false },
  { name: 'collectedOn', label: 'Collected', required: false },
] as const;

function Days() {
  const { job } = useDesk().record;
  const patch = usePatchJob();
  return (
    <div
      id="dates"
      data-fields={days.map(({ name }) => name).join(' ')}
      tabIndex={-1}
      className={`${styles.place} ${styles.days}`}
      role="group"
      aria-label="Days"
    >
      {days.map(({ name, label, required }) => (
        <KeptField
          key={name}
          label={label}
          name={name}
          type="date"
          required={required}
          value={job[name] ?? ''}
          onKeep={(day, was) => patch({ [name]: day || null }, { [name]: was || null })}
        />
      ))}
    </div>
  );
}
