'use client';

import { KeptField } from '@/app/_parts/kept-field';
import type { Client } from '@/shared/clients';
import styles from './client.module.css';
import { useKeepClient } from './use-keep-client';

/** The entry itself: each line is kept when it is left. */
export function ClientFields({ client }: { client: Client }) {
  const keep = useKeepClient(client.id);
  return (
    <div className={styles.fields}>
      <KeptField
        label="Name"
        hint="Stays in this workshop."
        name="name"
        value={client.name}
        required
        maxLength={200}
        onKeep={(name, was) => keep({ name }, { name: was }, 'Name kept')}
      />
      <KeptField
        label="In public called"
        hint="Public texts say this instead of the name."
        name="alias"
        value={client.alias}
        required
        maxLength={200}
        onKeep={(alias, was) => keep({ alias }, { alias: was }, 'Public name kept')}
      />
      <KeptField
        label="How to reach them"
        hint="Numbers and addresses, one on a line."
        name="reach"
        value={client.reach ?? ''}
        rows={4}
        maxLength={2000}
        onKeep={(reach, was) => keep({ reach: orNull(reach) }, { reach: orNull(was) }, 'Kept')}
      />
      <KeptField
        label="Notes"
        hint="What is good to know next time. Never in a public text."
        name="notes"
        value={client.notes ?? ''}
        rows={4}
        maxLength={20_000}
        onKeep={(notes, was) => keep({ notes: orNull(notes) }, { notes: orNull(was) }, 'Notes kept')}
      />
    </div>
  );
}

function orNull(text: string): string | null {
  return text.trim() === '' ? null : text;
}
