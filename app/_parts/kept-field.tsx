'use client';

import { useId } from 'react';
import field from './field.module.css';
import styles from './kept-field.module.css';
import { ClashNote } from './kept-field-clash';
import { type KeptText, useKeptText } from './kept-field-text';

export interface KeptFieldProps extends KeptText {
  label: string;
  hint?: string;
  type?: 'text' | 'date';
  /** More than one: a place for longer words, in which Enter begins a new line. */
  rows?: number;
  /** One line of words that may be long: it is shown whole, and Enter keeps it. */
  wraps?: boolean;
  list?: string;
  id?: string;
  /** For a line that was opened because somebody asked to write there. */
  autoFocus?: boolean;
  /** Told when the line was left and nothing in it waits to be kept. */
  onLeave?: () => void;
}

type Box = HTMLInputElement | HTMLTextAreaElement;

/**
 * A line of the record that is kept as soon as it is left, or on Enter. Where another window changed it meanwhile,
 * both stand side by side until one is chosen; Escape brings back what is on the record.
 */
export function KeptField({
  label,
  hint,
  type = 'text',
  rows = 1,
  wraps,
  list,
  id,
  autoFocus,
  onLeave,
  ...kept
}: KeptFieldProps) {
  const ownId = useId();
  const boxId = id ?? ownId;
  const { text, write, changed, problem, tell, clash, busy, keep, giveUp } = useKeptText(kept);
  const leave = async (box: Box) => {
    if (box.validity.badInput) tell('There is no such day. Write one of the calendar.');
    else if (await keep()) onLeave?.();
  };
  const onKeyDown = (event: React.KeyboardEvent<Box>) => {
    if (event.key === 'Escape') {
      if (!changed) return event.currentTarget.blur();
      event.stopPropagation();
      giveUp();
      onLeave?.();
    }
    if (event.key === 'Enter' && rows === 1) {
      event.preventDefault();
      void leave(event.currentTarget);
    }
  };
  const common = {
    id: boxId,
    value: text,
    'aria-invalid': problem !== null,
    'aria-describedby': `${boxId}-more`,
    'aria-busy': busy,
    autoComplete: 'off',
    required: kept.required,
    autoFocus,
    onChange: (event: React.ChangeEvent<Box>) => write(event.currentTarget.value),
    // While two texts wait to be chosen from, leaving the line chooses neither.
    onBlur: (event: React.FocusEvent<Box>) => {
      if (clash === null) void leave(event.currentTarget);
    },
    onKeyDown,
  };
  return (
    <div className={field.field}>
      <label htmlFor={boxId} className={field.label}>
        {label}
      </label>
      {rows > 1 || wraps ? (
        <textarea {...common} className={`${field.box} ${styles.wraps}`} rows={rows} />
      ) : (
        <input {...common} className={field.box} type={type} list={list} />
      )}
      <div
        id={`${boxId}-more`}
        className={problem ? field.wrong : field.hint}
        role={problem ? 'alert' : undefined}
      >
        {problem ?? hint}
      </div>
      {clash !== null && <ClashNote there={clash} onKeepMine={() => void keep(clash)} onTakeThat={giveUp} />}
    </div>
  );
}
