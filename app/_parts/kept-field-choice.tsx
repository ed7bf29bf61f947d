'use client';

import { Toggle } from '@base-ui/react/toggle';
import { ToggleGroup } from '@base-ui/react/toggle-group';
import { useId } from 'react';
import field from './field.module.css';
import styles from './kept-field.module.css';
import { ClashNote } from './kept-field-clash';
import { type KeptPick, useKeptPick } from './kept-field-pick';

interface KeptChoiceProps<T extends string | null> extends KeptPick<T> {
  label: string;
  /** The label is only read out: what the choices are about stands beside them already. */
  quiet?: boolean;
  hint?: string;
  options: readonly NonNullable<T>[];
  /** How an option is called where it is not by its own word. */
  words?: Readonly<Partial<Record<NonNullable<T>, string>>>;
  /** What nothing chosen stands for; given where the chosen one can be taken off by touching it again. */
  none?: T;
}

/** A few plain choices side by side, of which one stands; a touch keeps it at once. Arrow keys move between them. */
export function KeptChoice<T extends string | null>({
  label,
  quiet = false,
  hint,
  options,
  words,
  none,
  ...kept
}: KeptChoiceProps<T>) {
  const id = useId();
  const { pick, problem, clash, busy, keepMine, takeThat } = useKeptPick(kept);
  const { value } = kept;
  const say = (choice: T) => (choice === null ? '' : (words?.[choice] ?? choice));
  const choose = (pressed: readonly NonNullable<T>[]) => {
    const next = pressed[0] ?? none;
    if (next !== undefined && next !== value) void pick(next);
  };
  return (
    <div className={field.field}>
      <span id={id} className={quiet ? 'only-read' : field.label}>
        {label}
      </span>
      <ToggleGroup
        className={styles.options}
        aria-labelledby={id}
        aria-busy={busy}
        value={value === null ? [] : [value]}
        onValueChange={choose}
      >
        {options.map((option) => (
          <Toggle key={option} value={option} className={styles.option}>
            <span className={styles.hole} aria-hidden="true" />
            <span className={styles.word}>{words?.[option] ?? option}</span>
          </Toggle>
        ))}
      </ToggleGroup>
      {(problem ?? hint) && (
        <div className={problem ? field.wrong : field.hint} role={problem ? 'alert' : undefined}>
          {problem ?? hint}
        </div>
      )}
      {clash !== null && (
        <ClashNote there={say(clash.there)} onKeepMine={() => void keepMine()} onTakeThat={takeThat} />
      )}
    </div>
  );
}
