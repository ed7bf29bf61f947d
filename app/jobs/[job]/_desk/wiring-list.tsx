'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { z } from 'zod';
import { Button, ButtonLink } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { changeIdSchema, traceIdSchema } from '@/shared/ids';
import { type NewTrace, traceViewSchema, type WorksheetRecord } from '@/shared/traces';
import styles from './desk.module.css';
import { useDesk } from './use-record';

const begunSchema = z.object({ change: changeIdSchema, trace: traceViewSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** The pickups that are being traced in this job, and the way to begin another. */
export function WiringList({ open, onClose }: { open: boolean; onClose: () => void }) {
  const { record } = useDesk();
  return (
    <Dialog open={open} onClose={onClose} title="Wiring">
      <ul className={styles.takes}>
        {record.traces.map((worksheet) => (
          <WorksheetRow key={worksheet.id} worksheet={worksheet} />
        ))}
      </ul>
      <div className={styles.row}>
        <ButtonLink href={`/jobs/${record.job.id}/jack`}>Check at the jack</ButtonLink>
      </div>
      <BeginTrace />
    </Dialog>
  );
}

function WorksheetRow({ worksheet }: { worksheet: WorksheetRecord }) {
  const { record, change } = useDesk();
  const joined = record.outcomes.find((outcome) => outcome.traceId === worksheet.id);
  return (
    <li className={styles.take}>
      <span aria-hidden="true" />
      <div className={styles.takeWords}>
        <p className={styles.takeName}>{worksheet.subject}</p>
        <p className={styles.fine}>
          {worksheet.conductors.join(', ')}
          {worksheet.shield && ', bare shield'}
          {joined && ` · joined: ${joined.outcome.title}, ${joined.outcome.basis}`}
        </p>
      </div>
      <div className={styles.row}>
        <ButtonLink href={`/jobs/${record.job.id}/trace/${worksheet.id}`}>Open the trace</ButtonLink>
        <Button
          weight="alarm"
          onClick={() =>
            void change(
              'DELETE',
              `/api/traces/${worksheet.id}`,
              undefined,
              goneSchema,
              `Trace of the ${worksheet.subject} deleted; its readings stay`,
            )
          }
        >
          Delete
        </Button>
      </div>
    </li>
  );
}

/** Colours as they come out of the sleeve, parted by commas. */
function BeginTrace() {
  const { record, change } = useDesk();
  const router = useRouter();
  const [subject, setSubject] = useState('neck pickup');
  const [conductors, setConductors] = useState('red, white, green, black');
  const [rows, setRows] = useState('slug, screw');
  const [shield, setShield] = useState(true);
  const [frame, setFrame] = useState(false);
  const [from, setFrom] = useState('');
  const begin = async () => {
    const wanted: NewTrace = {
      subject,
      conductors: listOf(conductors),
      rows: listOf(rows),
      shield,
      frame,
      ...(from === '' ? {} : { from: traceIdSchema.parse(from) }),
    };
    const begun = await change('POST', `/api/jobs/${record.job.id}/traces`, wanted, begunSchema);
    if (begun) router.push(`/jobs/${record.job.id}/trace/${begun.trace.worksheet.id}`);
  };
  return (
    <form
      className={styles.begin}
      onSubmit={(event) => {
        event.preventDefault();
        void begin();
      }}
    >
      <h3>Trace a pickup</h3>
      <TextField
        label="Pickup"
        value={subject}
        maxLength={120}
        required
        onChange={(event) => setSubject(event.currentTarget.value)}
      />
      <TextField
        label="Conductors"
        hint="Colours or letter codes, parted by commas; two colours as white/red, the same colour twice as black 2. One to six."
        value={conductors}
        required
        onChange={(event) => setConductors(event.currentTarget.value)}
      />
      <TextField
        label="Rows of poles"
        hint="As you call them; one name for a single row."
        value={rows}
        required
        onChange={(event) => setRows(event.currentTarget.value)}
      />
      <div className={styles.row}>
        <label className={styles.tick}>
          <input
            type="checkbox"
            checked={shield}
            onChange={(event) => setShield(event.currentTarget.checked)}
          />
          Bare shield
        </label>
        <label className={styles.tick}>
          <input
            type="checkbox"
            checked={frame}
            onChange={(event) => setFrame(event.currentTarget.checked)}
          />
          Metal frame or cover
        </label>
      </div>
      {record.traces.length > 0 && (
        <ChoiceField
          label="Take the roles over from"
          hint="All of it is assumed until this pickup’s own readings prove it."
          value={from}
          onChange={(event) => setFrom(event.currentTarget.value)}
        >
          <option value="">nothing: measure it afresh</option>
          {record.traces.map((worksheet) => (
            <option key={worksheet.id} value={worksheet.id}>
              {worksheet.subject}
            </option>
          ))}
        </ChoiceField>
      )}
      <Button type="submit" weight="main">
        Begin the trace
      </Button>
    </form>
  );
}

function listOf(words: string): string[] {
  return words.split(/[,;]/).flatMap((word) => word.trim() || []);
}
