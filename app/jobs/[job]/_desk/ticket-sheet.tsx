'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { TextField } from '@/app/_parts/field';
import { changeIdSchema } from '@/shared/ids';
import { instrumentTypes } from '@/shared/instruments';
import styles from './desk.module.css';
import { useDesk } from './use-record';

const answerSchema = z.looseObject({ change: changeIdSchema });

/** What is written on the ticket: the job, the instrument, the client; and the way into the bin. */
export function TicketSheet({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} onClose={onClose} title="Ticket">
      <TicketForm onClose={onClose} />
    </Dialog>
  );
}

function TicketForm({ onClose }: { onClose: () => void }) {
  const { record, change } = useDesk();
  const router = useRouter();
  const { job, instrument, client } = record;
  const [values, setValues] = useState({
    title: job.title,
    type: instrument.type,
    maker: instrument.maker ?? '',
    model: instrument.model ?? '',
    serial: instrument.serial ?? '',
    client: client?.name ?? '',
    alias: client?.alias ?? '',
  });
  const box = (
    name: keyof typeof values,
    label: string,
    more: Partial<React.ComponentProps<typeof TextField>> = {},
  ) => (
    <TextField
      label={label}
      value={values[name]}
      maxLength={200}
      autoComplete="off"
      {...more}
      onChange={(event) => setValues({ ...values, [name]: event.currentTarget.value })}
    />
  );
  const keep = async () => {
    const name = values.client.trim();
    const alias = values.alias.trim();
    const kept = await change(
      'PATCH',
      `/api/jobs/${job.id}`,
      {
        title: values.title,
        instrument: {
          type: values.type,
          maker: values.maker.trim() || null,
          model: values.model.trim() || null,
          serial: values.serial.trim() || null,
        },
        client: name === '' ? null : { name, ...(alias === '' ? {} : { alias }) },
      },
      answerSchema,
      'Ticket changed',
    );
    if (kept) onClose();
  };
  const remove = async () => {
    const gone = await change(
      'DELETE',
      `/api/jobs/${job.id}`,
      undefined,
      answerSchema,
      'Job deleted; it lies in the bin for 30 days',
    );
    if (gone) router.push('/');
  };
  return (
    <form
      className={styles.narrationIn}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      {box('title', 'Title', { required: true })}
      {box('type', 'Instrument', { required: true, list: 'instrument-types', maxLength: 60 })}
      <datalist id="instrument-types">
        {instrumentTypes.map((type) => (
          <option key={type} value={type} />
        ))}
      </datalist>
      {box('maker', 'Maker', { hint: 'Unknown is a good answer: leave it empty.' })}
      {box('model', 'Model')}
      {box('serial', 'Serial')}
      {box('client', 'Client', { hint: 'Never in a public text.' })}
      {values.client.trim() !== '' &&
        box('alias', 'In public called', { hint: 'Such as “a returning client”.' })}
      <div className={styles.row}>
        <Button type="submit" weight="main">
          Keep
        </Button>
        <Button weight="alarm" onClick={() => void remove()}>
          Delete the job
        </Button>
      </div>
    </form>
  );
}
