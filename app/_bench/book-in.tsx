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
import { asNewJob, type Booking, emptyBooking } from './booking';
import styles from './booking.module.css';
import { type Faults, firstFault, isFaultFolded, missingIn, refusedIn } from './booking-faults';
import { InstrumentChoice } from './instrument-choice';
import { MoreToBook } from './more-to-book';

const answerSchema = z.object({ job: jobSchema });

interface BookInProps {
  open: boolean;
  onClose: () => void;
  /** Instrument types on the tickets in the rack. */
  usedTypes: readonly string[];
}

/** Books a job in: a title and the instrument's type are enough. What was written stays when the sheet is put away. */
export function BookIn({ open, onClose, usedTypes }: BookInProps) {
  const titleBox = useRef<HTMLInputElement>(null);
  const [booking, setBooking] = useState<Booking>(emptyBooking);
  const [isMoreOpen, setMoreOpen] = useState(false);
  const { faults, problem, busy, bookIn } = useBookingIn(booking, () => setMoreOpen(true));
  const write = (part: Partial<Booking>) => setBooking((before) => ({ ...before, ...part }));
  return (
    <Dialog open={open} onClose={onClose} title="Book in a job" startAt={titleBox}>
      <form className={styles.booking} onSubmit={bookIn} noValidate>
        <TextField
          ref={titleBox}
          label="Title"
          hint="What it is and what is wrong, such as “four-string bass, crackles on the neck pickup”."
          wrong={faults.title ?? null}
          name="title"
          maxLength={200}
          required
          autoComplete="off"
          value={booking.title}
          onChange={(event) => write({ title: event.target.value })}
        />
        <InstrumentChoice booking={booking} write={write} usedTypes={usedTypes} faults={faults} />
        <details
          className={styles.more}
          open={isMoreOpen}
          onToggle={(event) => setMoreOpen(event.currentTarget.open)}
        >
          <summary className={styles.moreHead}>
            More: client, promised day, what was asked, place, what it came with
          </summary>
          <MoreToBook booking={booking} write={write} faults={faults} />
        </details>
        {problem !== null && <ProblemNote error={problem} />}
        <div className={styles.buttons}>
          <Button type="submit" weight="main" aria-disabled={busy}>
            {busy ? 'Booking in …' : 'Book in'}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}

/** @param showMore unfolds the fields below, where one of them is wrong */
function useBookingIn(booking: Booking, showMore: () => void) {
  const router = useRouter();
  const [tried, setTried] = useState(false);
  const [badDay, setBadDay] = useState(false);
  const [going, startGoing] = useTransition();
  const { busy, problem, run } = useAttempt();
  const refused = refusedIn(problem);
  const faults: Faults = {
    ...refused,
    ...(tried && missingIn(booking)),
    ...(badDay && { promisedOn: 'There is no such day. Write a day of the calendar, or leave it empty.' }),
  };
  const bookIn = (event: React.FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = event.currentTarget;
    const isNoDay = hasNoSuchDay(form);
    setTried(true);
    setBadDay(isNoDay);
    const first = firstFault({ ...missingIn(booking), ...(isNoDay && { promisedOn: '' }) });
    if (first !== undefined) return focusField(form, first);
    if (busy || going) return;
    void run(async () => {
      try {
        const { job } = await call('POST', '/api/jobs', answerSchema, asNewJob(booking));
        startGoing(() => router.push(`/jobs/${job.id}`));
      } catch (error) {
        if (isFaultFolded(refusedIn(error))) showMore();
        throw error;
      }
    });
  };
  // What is told at its field need not be told twice.
  const isToldAtField = firstFault(refused) !== undefined;
  return { faults, problem: isToldAtField ? null : problem, busy: busy || going, bookIn };
}

/** A day that does not exist leaves a date field empty for the program, though not for the person. */
function hasNoSuchDay(form: HTMLFormElement): boolean {
  const field = form.elements.namedItem('promisedOn');
  return field instanceof HTMLInputElement && field.validity.badInput;
}

function focusField(form: HTMLFormElement, name: string): void {
  const field = form.elements.namedItem(name);
  if (field instanceof HTMLElement) field.focus();
}
