'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState, useTransition } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { clientSchema } from '@/shared/clients';
import styles from './clients.module.css';

const madeSchema = z.object({ client: clientSchema });

/** Writes a client down: the name is enough, the rest is written on the card. */
export function AddClient({ open, onClose }: { open: boolean; onClose: () => void }) {
  const router = useRouter();
  const nameBox = useRef<HTMLInputElement>(null);
  const [name, setName] = useState('');
  const [alias, setAlias] = useState('');
  const [missing, setMissing] = useState(false);
  const [going, startGoing] = useTransition();
  const { busy, problem, run } = useAttempt();
  const add = (event: React.FormEvent) => {
    event.preventDefault();
    setMissing(name.trim() === '');
    if (name.trim() === '') return nameBox.current?.focus();
    if (going) return;
    void run(async () => {
      const wanted = { name, ...(alias.trim() !== '' && { alias }) };
      const { client } = await call('POST', '/api/clients', madeSchema, wanted);
      startGoing(() => router.push(`/clients/${client.id}`));
    });
  };
  return (
    <Dialog open={open} onClose={onClose} title="Write down a client" startAt={nameBox}>
      <form className={styles.form} onSubmit={add} noValidate>
        <TextField
          ref={nameBox}
          label="Name"
          hint="It stays in this workshop and out of every public text."
          wrong={missing ? 'Write the name that you know them by.' : null}
          maxLength={200}
          required
          autoComplete="off"
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
        <TextField
          label="In public called (may be left empty)"
          hint="Such as “a returning client”. Left empty, public texts say “a client”."
          maxLength={200}
          autoComplete="off"
          value={alias}
          onChange={(event) => setAlias(event.target.value)}
        />
        {problem !== null && <ProblemNote error={problem} />}
        <div className={styles.buttons}>
          <Button type="submit" weight="main" aria-disabled={busy || going}>
            {busy || going ? 'Writing it down …' : 'Write it down'}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
