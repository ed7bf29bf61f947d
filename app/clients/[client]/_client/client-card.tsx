'use client';

import { useState } from 'react';
import { Button, buttonClass } from '@/app/_parts/button';
import type { ClientView } from '@/shared/jobs';
import { Instruments, Jobs } from './belongings';
import styles from './client.module.css';
import { ClientFields } from './client-fields';
import { EraseDialog } from './erase-dialog';
import { MergeDialog } from './merge-dialog';
import { useTakeOff } from './use-take-off';

interface ClientCardProps {
  view: ClientView;
  /** Recordings whose file names tell of the client. */
  namingFiles: readonly string[];
  /** The day at the workshop, by ISO 8601. */
  today: string;
}

/** All that the workshop knows of one client, on one card. */
export function ClientCard({ view, namingFiles, today }: ClientCardProps) {
  const { client, instruments, jobs } = view;
  const [open, setOpen] = useState<'merge' | 'erase' | null>(null);
  const takeOff = useTakeOff(client);
  const close = () => setOpen(null);
  return (
    <main className={styles.page}>
      <section className={styles.card} aria-labelledby="client-name">
        <h1 id="client-name" className={styles.title}>
          {client.name}
        </h1>
        <ClientFields client={client} />
      </section>
      <Jobs jobs={jobs} today={today} />
      <Instruments instruments={instruments} />
      <section className={styles.sheet} aria-labelledby="entry">
        <h2 id="entry">This entry</h2>
        <ul className={styles.ways}>
          <li>
            <p>One file with everything on record about {client.name}: to hand over when they ask for it.</p>
            <a className={buttonClass()} href={`/api/clients/${client.id}/export`} download>
              Export all of it
            </a>
          </li>
          <li>
            <p>Two entries are the same person: jobs, instruments and notes come together in this one.</p>
            <Button onClick={() => setOpen('merge')}>Make one of two entries</Button>
          </li>
          <li>
            <p>The entry goes, jobs and instruments stay and are nobody’s. It can be undone.</p>
            <Button onClick={() => void takeOff()}>Take the entry off</Button>
          </li>
          <li>
            <p>Asked to forget this person: the name goes out of every text, for good.</p>
            <Button weight="alarm" onClick={() => setOpen('erase')}>
              Erase this person
            </Button>
          </li>
        </ul>
      </section>
      <MergeDialog open={open === 'merge'} onClose={close} into={client} />
      <EraseDialog
        open={open === 'erase'}
        onClose={close}
        onMerge={() => setOpen('merge')}
        client={client}
        jobs={jobs.length}
        namingFiles={namingFiles}
      />
    </main>
  );
}
