'use client';

import { TextField } from '@/app/_parts/field';
import { readOhms } from './draft';

interface OhmsFieldProps {
  label: string;
  value: string;
  onChange: (text: string) => void;
}

/** A resistance as it is typed: 8.05k, 500 kΩ. */
export function OhmsField({ label, value, onChange }: OhmsFieldProps) {
  const isUnclear = value.trim() !== '' && readOhms(value) === null;
  return (
    <TextField
      data-ohms
      label={label}
      value={value}
      wrong={isUnclear ? 'With its unit, such as 8.05k' : null}
      maxLength={40}
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}
