'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { CallError } from '@/app/_parts/call';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { sayReading } from '@/lib/readings';
import { type Claim, claimKindSchema, claimKinds, sureness } from '@/shared/claims';
import { bases } from '@/shared/readings';
import { useDesk } from '../_desk/use-record';
import styles from './claims.module.css';
import { claimOf, type Draft, draftOf, subjectWords } from './claims-draft';
import { useKeepClaim } from './claims-keep';
import { ClaimPin } from './claims-pin';

interface ClaimFormProps {
  /** The claim to change; none for a new one. */
  claim?: Claim;
  onLeave: () => void;
}

/** Writes a claim down, or changes one. */
export function ClaimForm({ claim, onLeave }: ClaimFormProps) {
  const { record } = useDesk();
  const [draft, setDraft] = useState<Draft>(() => draftOf(claim));
  const { busy, problem, run } = useAttempt();
  const keep = useKeepClaim(claim);
  const first = useRef<HTMLFormElement>(null);
  useEffect(() => first.current?.querySelector('select')?.focus(), []);
  const write = (part: Partial<Draft>) => setDraft((before) => ({ ...before, ...part }));
  // The film of another job does not run here.
  const isOfThisJob = !claim || claim.jobId === record.job.id;
  const subject = subjectWords[draft.kind];
  return (
    <form
      ref={first}
      className={styles.form}
      aria-label={claim ? `Change the claim “${claim.value}”` : 'A new claim'}
      onSubmit={(event) => {
        event.preventDefault();
        void run(async () => {
          await keep(claimOf(draft));
          onLeave();
        });
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        onLeave();
      }}
    >
      <ChoiceField
        label="What is claimed"
        value={draft.kind}
        onChange={(event) => write({ kind: claimKindSchema.parse(event.currentTarget.value) })}
      >
        {claimKinds.map((kind) => (
          <option key={kind}>{kind}</option>
        ))}
      </ChoiceField>
      <TextField
        label={subject.label}
        hint={subject.hint}
        value={draft.subject}
        maxLength={120}
        autoComplete="off"
        required={subject.required}
        onChange={(event) => write({ subject: event.currentTarget.value })}
      />
      <TextField
        label="It is"
        hint={subject.example}
        value={draft.value}
        maxLength={300}
        autoComplete="off"
        required
        onChange={(event) => write({ value: event.currentTarget.value })}
      />
      <Choice label="How it is known" of={bases} value={draft.basis} onChoose={(basis) => write({ basis })} />
      <Choice label="How sure" of={sureness} value={draft.sure} onChoose={(sure) => write({ sure })} />
      <TextField
        label="Evidence in words"
        hint="A stamp, a label, a date in the wood, what the client said."
        value={draft.evidence}
        maxLength={2000}
        autoComplete="off"
        onChange={(event) => write({ evidence: event.currentTarget.value })}
      />
      {isOfThisJob && record.readings.length > 0 && (
        <ChoiceField
          label="Reading"
          value={draft.readingId ?? ''}
          onChange={({ currentTarget: { value } }) =>
            write({ readingId: record.readings.find(({ id }) => id === value)?.id ?? null })
          }
        >
          <option value="">none</option>
          {record.readings.map((reading) => (
            <option key={reading.id} value={reading.id}>
              {sayReading(reading)}
            </option>
          ))}
        </ChoiceField>
      )}
      {isOfThisJob && <ClaimPin moment={draft.moment} onPin={(moment) => write({ moment })} />}
      <div className={styles.row}>
        <Button type="submit" weight="main" aria-disabled={busy}>
          Keep this claim
        </Button>
        <Button weight="bare" onClick={onLeave}>
          Leave it
        </Button>
      </div>
      {problem !== null && (
        <ProblemNote error={problem}>
          {problem instanceof CallError && problem.status === 409 && (
            <p>Keep this claim again to put yours in its place.</p>
          )}
        </ProblemNote>
      )}
    </form>
  );
}

interface ChoiceProps<T extends string> {
  label: string;
  of: readonly T[];
  value: T;
  onChoose: (value: T) => void;
}

function Choice<T extends string>({ label, of, value, onChoose }: ChoiceProps<T>) {
  return (
    <ChoiceField
      label={label}
      value={value}
      onChange={(event) => {
        const chosen = of.find((one) => one === event.currentTarget.value);
        if (chosen) onChoose(chosen);
      }}
    >
      {of.map((one) => (
        <option key={one}>{one}</option>
      ))}
    </ChoiceField>
  );
}
