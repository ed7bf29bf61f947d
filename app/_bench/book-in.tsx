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
import { jobSchema } from '@/shared/jobs';
import styles from './bench.module.css';
import { asNewJob, type Booking, emptyBooking, missingIn } from './booking';
import { InstrumentChoice } from './instrument-choice';

const answerSchema = z.object({ job: jobSchema });

interface BookInProps {
  open: boolean;
  onClose: () => void;
  /** Instrument types on the tickets in the rack. */
  usedTypes: readonly string[];
}

/** Books a job in: a title and the instrument's type are enough. What was written stays when the sheet is put away. */
export function BookIn({ open, onClose, usedTypes }: BookInProps) {
  const router = useRouter();
  const titleBox = useRef<HTMLInputElement>(null);
  const [booking, setBooking] = useState<Booking>(emptyBooking);
  const [tried, setTried] = useState(false);
  const [going, startGoing] = useTransition();
  const { busy, problem, run } = useAttempt();
  const missing = tried ? missingIn(booking) : {};
  const write = (part: Partial<Booking>) => setBooking((before) => ({ ...before, ...part }));

  const bookIn = (event: React.FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    const first = Object.keys(missingIn(booking))[0];
    if (first !== undefined) return focusField(event.currentTarget, first);
    if (busy || going) return;
    void run(async () => {
      const { job } = await call('POST', '/api/jobs', answerSchema, asNewJob(booking));
      startGoing(() => router.push(`/jobs/${job.id}`));
    });
  };

  return (
    <Dialog open={open} onClose={onClose} title="Book in a job" startAt={titleBox}>
      <form className={styles.booking} onSubmit={bookIn} noValidate>
        <TextField
          ref={titleBox}
          label="Title"
          hint="What it is and what is wrong, such as “four-string bass, crackles on the neck pickup”."
          wrong={missing.title ?? null}
          name="title"
          maxLength={200}
          required
          autoComplete="off"
          value={booking.title}
          onChange={(event) => write({ title: event.target.value })}
        />
        <InstrumentChoice booking={booking} write={write} usedTypes={usedTypes} missing={missing} />
        <TextField
          label="Client (may be left empty)"
          hint="The name stays in the record and out of every public text."
          name="client"
          maxLength={200}
          autoComplete="off"
          value={booking.client}
          onChange={(event) => write({ client: event.target.value })}
        />
        {booking.client.trim() !== '' && (
          <TextField
            label="What to call the client in public"
            hint="Left empty, public texts say “a client”."
            name="alias"
            maxLength={200}
            autoComplete="off"
            value={booking.alias}
            onChange={(event) => write({ alias: event.target.value })}
          />
        )}
        {problem !== null && <ProblemNote error={problem} />}
        <div className={styles.buttons}>
          <Button type="submit" weight="main" aria-disabled={busy || going}>
            {busy || going ? 'Booking in …' : 'Book in'}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}

function focusField(form: HTMLFormElement, name: string): void {
  const field = form.elements.namedItem(name);
  if (field instanceof HTMLElement) field.focus();
}
