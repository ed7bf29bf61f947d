'use client';

import { Autocomplete } from '@base-ui/react/autocomplete';
import { useId, useState } from 'react';
import field from '@/app/_parts/field.module.css';
import { counted } from '@/app/_parts/words';
import type { ClientLine } from '@/shared/clients';
import styles from './booking.module.css';

interface ClientBoxProps {
  name: string;
  /** Whether the name is that of a known client who was chosen. */
  isKnown: boolean;
  suggestions: readonly ClientLine[];
  wrong: string | null;
  onWrite: (name: string) => void;
  onChoose: (client: ClientLine) => void;
}

/** A line for a name that offers the known clients who fit. */
export function ClientBox({ name, isKnown, suggestions, wrong, onWrite, onChoose }: ClientBoxProps) {
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const hint = isKnown
    ? 'A client you know. Type another name for somebody else.'
    : 'May be left empty. The name stays in the record and out of every public text.';
  return (
    <Autocomplete.Root
      items={suggestions}
      filter={null}
      // An open list hides all else from screen readers, so an empty one must not count as open.
      open={isOpen && suggestions.length > 0}
      onOpenChange={setOpen}
      value={name}
      itemToStringValue={(client: ClientLine) => client.name}
      onValueChange={(typed, { reason }) => {
        // A choice is told by the item itself: two clients may have the same name.
        if (reason !== 'item-press') onWrite(typed);
      }}
    >
      <div className={field.field}>
        <label htmlFor={id} className={field.label}>
          Client
        </label>
        <Autocomplete.Input
          id={id}
          className={field.box}
          name="client"
          // While the list is open, the label above is hidden from screen readers like all else.
          aria-label="Client"
          maxLength={200}
          autoComplete="off"
          aria-invalid={wrong !== null}
          aria-describedby={`${id}-more`}
        />
        <p id={`${id}-more`} className={wrong ? field.wrong : field.hint} role={wrong ? 'alert' : undefined}>
          {wrong ?? hint}
        </p>
      </div>
      <Autocomplete.Portal>
        <Autocomplete.Positioner className={styles.suggestionsAt} sideOffset={2} align="start">
          <Autocomplete.Popup className={styles.suggestions}>
            <Autocomplete.List aria-label="Known clients">
              {(client: ClientLine) => (
                <Autocomplete.Item
                  key={client.id}
                  value={client}
                  className={styles.suggestion}
                  onClick={() => onChoose(client)}
                >
                  <span>{client.name}</span>
                  <span className={styles.soft}>{tellingApart(client)}</span>
                </Autocomplete.Item>
              )}
            </Autocomplete.List>
          </Autocomplete.Popup>
        </Autocomplete.Positioner>
      </Autocomplete.Portal>
    </Autocomplete.Root>
  );
}

/** Two clients may have the same name. */
function tellingApart({ alias, reach, jobs }: ClientLine): string {
  return [alias, reach?.split('\n')[0], counted(jobs, 'job')].filter(Boolean).join(', ');
}
