'use client';

import { useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { clientSchema } from '@/shared/clients';
import type { ClientId } from '@/shared/ids';
import styles from './ticket.module.css';

const madeSchema = z.object({ client: clientSchema });

interface NewClientFormProps {
  name: string;
  onMade: (id: ClientId) => void;
  onGiveUp: () => void;
}

/** Writes down a client who is not known yet: the name, and what public texts say instead. */
export function NewClientForm({ name: typed, onMade, onGiveUp }: NewClientFormProps) {
  const { busy, problem, run } = useAttempt();
  const [name, setName] = useState(typed);
  const [alias, setAlias] = useState('');
  const add = () =>
    run(async () => {
      const wanted = { name, ...(alias.trim() === '' ? {} : { alias }) };
      const { client } = await call('POST', '/api/clients', madeSchema, wanted);
      onMade(client.id);
    });
  return (
    <form
      className={styles.group}
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <TextField
        label="Name"
        value={name}
        required
        maxLength={200}
        autoComplete="off"
        onChange={(event) => setName(event.currentTarget.value)}
      />
      <TextField
        label="In public called"
        hint="Such as “a returning client”. Left empty, it is “a client”."
        value={alias}
        maxLength={200}
        autoComplete="off"
        autoFocus
        onChange={(event) => setAlias(event.currentTarget.value)}
      />
      {problem !== null && <ProblemNote error={problem} />}
      <div className={styles.row}>
        <Button type="submit" weight="main" aria-disabled={busy}>
          Write this client down
        </Button>
        <Button onClick={onGiveUp}>Choose a known one</Button>
      </div>
    </form>
  );
}
