'use client';

import { Combobox } from '@base-ui/react/combobox';
import { useId, useState } from 'react';
import field from '@/app/_parts/field.module.css';
import { counted } from '@/app/_parts/words';
import type { ClientLine } from '@/shared/clients';
import type { ClientId } from '@/shared/ids';
import styles from './client-choice.module.css';
import { NewClientForm } from './new-client-form';
import { useClients } from './use-clients';

/** A known client, or the words of a name that is not known yet. */
type Choice = { known: ClientLine } | { name: string };

/** How many are offered at once: more are found by more letters. */
const mostOffered = 30;

/** Finds a client as the name is typed; one who is not known is written down. */
export function ClientChoice({ onChoose }: { onChoose: (id: ClientId) => void }) {
  const id = useId();
  const [typed, setTyped] = useState('');
  const [fresh, setFresh] = useState<string | null>(null);
  const name = typed.trim();
  const clients = useClients(name).slice(0, mostOffered);
  const choices: Choice[] = [...clients.map((known) => ({ known })), ...(name === '' ? [] : [{ name }])];
  const choose = (choice: Choice | null) => {
    if (!choice) return;
    if ('known' in choice) onChoose(choice.known.id);
    else setFresh(choice.name);
  };
  if (fresh !== null) return <NewClientForm name={fresh} onMade={onChoose} onGiveUp={() => setFresh(null)} />;
  return (
    <div className={field.field}>
      <label htmlFor={id} className={field.label}>
        Client
      </label>
      <Combobox.Root
        items={choices}
        filter={null}
        value={null}
        inputValue={typed}
        onInputValueChange={setTyped}
        onValueChange={choose}
        itemToStringLabel={labelOf}
      >
        <Combobox.Input id={id} className={field.box} placeholder="Type a name" maxLength={200} />
        <Combobox.Portal>
          <Combobox.Positioner className={styles.positioner} sideOffset={4}>
            <Combobox.Popup className={styles.popup}>
              <Combobox.Empty className={styles.empty}>Nobody is known yet. Type a name.</Combobox.Empty>
              <Combobox.List className={styles.list}>
                {(choice: Choice) => (
                  <Combobox.Item key={keyOf(choice)} value={choice} className={styles.item}>
                    {'known' in choice ? <Known client={choice.known} /> : `New client “${choice.name}”`}
                  </Combobox.Item>
                )}
              </Combobox.List>
            </Combobox.Popup>
          </Combobox.Positioner>
        </Combobox.Portal>
      </Combobox.Root>
      <p className={field.hint}>Known ones are found by any part of the name. Never in a public text.</p>
    </div>
  );
}

function Known({ client: { name, alias, jobs } }: { client: ClientLine }) {
  return (
    <>
      <span>{name}</span>
      <span className={styles.more}>
        {alias} · {counted(jobs, 'job')}
      </span>
    </>
  );
}

function labelOf(choice: Choice): string {
  return 'known' in choice ? choice.known.name : choice.name;
}

function keyOf(choice: Choice): string {
  return 'known' in choice ? choice.known.id : 'new';
}
