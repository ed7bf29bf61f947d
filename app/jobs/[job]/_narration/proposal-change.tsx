'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { HeardProposal } from '@/shared/narration';
import styles from '../_sheet/sheet.module.css';

interface ProposalChangeProps {
  heard: HeardProposal;
  onAccept: (payload: Record<string, unknown>) => void;
  onCancel: () => void;
}

/** The payload of a proposal, field by field, to be put right before it is accepted. */
export function ProposalChange({ heard, onAccept, onCancel }: ProposalChangeProps) {
  const fields = fieldsOf(heard);
  const [values, setValues] = useState<Record<string, string>>(
    Object.fromEntries(fields.map(({ name, value }) => [name, value])),
  );
  return (
    <form
      className={styles.changeForm}
      onSubmit={(event) => {
        event.preventDefault();
        onAccept(Object.fromEntries(fields.map(({ name, read }) => [name, read(values[name] ?? '')])));
      }}
      onKeyDown={(event) => event.key === 'Escape' && onCancel()}
    >
      {fields.map(({ name, label, options }, index) => (
        // biome-ignore lint/a11y/noLabelWithoutControl: the control stands inside, a choice or a box.
        <label key={name} className={styles.changeField}>
          <span>{label}</span>
          {options ? (
            <select
              value={values[name]}
              onChange={(event) => setValues({ ...values, [name]: event.currentTarget.value })}
            >
              {options.map((option) => (
                <option key={option}>{option}</option>
              ))}
            </select>
          ) : (
            <input
              value={values[name]}
              // biome-ignore lint/a11y/noAutofocus: it opens because the repairer asked to write here.
              autoFocus={index === 0}
              onChange={(event) => setValues({ ...values, [name]: event.currentTarget.value })}
            />
          )}
        </label>
      ))}
      <Button type="submit" weight="main">
        Accept as changed
      </Button>
      <Button onClick={onCancel}>Leave it</Button>
    </form>
  );
}

interface ChangeField {
  name: string;
  label: string;
  value: string;
  options?: readonly string[];
  read: (text: string) => unknown;
}

const asWords = (text: string) => text.trim();
const asPair = (text: string) => text.split(/[,–/]| and /).flatMap((part) => part.trim() || []);
const asPairOrNone = (text: string) => (text.trim() === '' ? null : asPair(text));
const asDigits = (text: string) => text.trim().replace(',', '.');
const words = (name: string, label: string, value: string): ChangeField => ({
  name,
  label,
  value,
  read: asWords,
});
const choice = (name: string, label: string, value: string, options: readonly string[]): ChangeField => ({
  name,
  label,
  value,
  options,
  read: asWords,
});

function fieldsOf(heard: HeardProposal): ChangeField[] {
  switch (heard.type) {
    case 'marker':
      return [
        words('title', 'Title', heard.payload.title),
        choice('markerKind', 'Kind', heard.payload.markerKind, [
          'intake',
          'diagnosis',
          'measurement',
          'work',
          'result',
        ]),
      ];
    case 'reading':
      return [
        {
          name: 'digits',
          label: 'Digits',
          value: heard.payload.digits ?? '',
          read: (text) => asDigits(text) || null,
        },
        words('unit', 'Unit', heard.payload.unit),
        words('subject', 'Of what', heard.payload.subject || (heard.about ?? '')),
        {
          name: 'between',
          label: 'Between',
          value: heard.payload.between?.join(', ') ?? '',
          read: asPairOrNone,
        },
      ];
    case 'coil-pair':
      return [
        { name: 'conductors', label: 'Conductors', value: heard.payload.conductors.join(', '), read: asPair },
        { name: 'row', label: 'Row', value: heard.payload.row ?? '', read: (text) => text.trim() || null },
      ];
    case 'role':
      return [
        words('conductor', 'Conductor', heard.payload.conductor),
        choice('role', 'Role', heard.payload.role, ['hot', 'ground', 'positive', 'negative']),
      ];
    case 'joint':
      return [
        { name: 'conductors', label: 'Conductors', value: heard.payload.conductors.join(', '), read: asPair },
      ];
    case 'work':
      return [
        words('description', 'What', heard.payload.description),
        choice('origin', 'Origin', heard.payload.origin, ['asked', 'offered', 'found']),
        choice('outcome', 'Outcome', heard.payload.outcome, ['promised', 'done', 'not done', 'declined']),
        choice('charge', 'Charge', heard.payload.charge, ['paid', 'free']),
      ];
    case 'private':
      return [choice('reason', 'What it is', heard.payload.reason, ['name', 'phone', 'email', 'address'])];
    case 'camera-stop':
      return [];
  }
}
