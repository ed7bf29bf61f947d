'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { Harness } from '@/shared/jack';
import { type DraftProblem, type HarnessDraft, readDraft } from './draft';
import styles from './jack.module.css';
import { PickupFields } from './pickup-fields';
import { PositionFields } from './position-fields';
import { PotFields } from './pot-fields';
import { SwitchFields } from './switch-fields';

interface HarnessFormProps {
  draft: HarnessDraft;
  onDraft: (draft: HarnessDraft) => void;
  onLeave: () => void;
  onKeep: (harness: Harness) => Promise<void>;
}

/** Describes a harness part by part. What is wrong is said in words when it is to be kept. */
export function HarnessForm({ draft, onDraft, onLeave, onKeep }: HarnessFormProps) {
  const [problem, setProblem] = useState<DraftProblem | null>(null);
  const form = useRef<HTMLFormElement>(null);
  // Who came by keyboard goes on where something is left to fill in.
  useEffect(() => {
    const inputs = [...(form.current?.querySelectorAll<HTMLInputElement>('input[data-ohms]') ?? [])];
    (inputs.find(({ value }) => value === '') ?? inputs[0])?.focus();
  }, []);
  const change = (patch: Partial<HarnessDraft>) => {
    setProblem(null);
    onDraft({ ...draft, ...patch });
  };
  const keep = () => {
    const read = readDraft(draft);
    if ('problem' in read) setProblem(read.problem);
    else void onKeep(read.harness);
  };
  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <PickupFields draft={draft} onChange={change} />
      <PotFields draft={draft} onChange={change} />
      <PositionFields draft={draft} onChange={change} />
      <SwitchFields draft={draft} onChange={change} />
      {problem && (
        <div className={styles.problem} role="alert">
          <p className={styles.problemTitle}>{problem.title}</p>
          <p>{problem.detail}</p>
        </div>
      )}
      <div className={styles.row}>
        <Button type="submit" weight="main">
          Keep this harness
        </Button>
        <Button onClick={onLeave}>Leave it</Button>
      </div>
    </form>
  );
}
