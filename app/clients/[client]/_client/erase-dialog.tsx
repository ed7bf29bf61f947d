'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { Button, ButtonLink } from '@/app/_parts/button';
import { CallError, call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { TextField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { type Client, type Erased, erasedSchema } from '@/shared/clients';
import styles from './client.module.css';

interface EraseDialogProps {
  open: boolean;
  onClose: () => void;
  /** Another entry bears the same name: the two are made one first. */
  onMerge: () => void;
  client: Client;
  jobs: number;
  namingFiles: readonly string[];
}

/** Tells what goes and what stays, and wants the name typed again. */
export function EraseDialog({ open, onClose, onMerge, client, jobs, namingFiles }: EraseDialogProps) {
  const router = useRouter();
  const nameBox = useRef<HTMLInputElement>(null);
  const [erased, setErased] = useState<Erased | null>(null);
  const close = () => {
    onClose();
    if (erased) router.push('/clients');
  };
  return (
    <Dialog
      open={open}
      onClose={close}
      title={erased ? 'Erased' : 'Erase this person'}
      {...(erased ? {} : { startAt: nameBox })}
    >
      {erased ? (
        <WhatWasErased erased={erased} />
      ) : (
        <EraseForm {...{ client, jobs, namingFiles, nameBox, onMerge }} onErased={setErased} />
      )}
    </Dialog>
  );
}

interface EraseFormProps {
  client: Client;
  jobs: number;
  namingFiles: readonly string[];
  nameBox: React.RefObject<HTMLInputElement | null>;
  onMerge: () => void;
  onErased: (erased: Erased) => void;
}

function EraseForm({ client, jobs, namingFiles, nameBox, onMerge, onErased }: EraseFormProps) {
  const { busy, problem, run } = useAttempt();
  const [typed, setTyped] = useState('');
  const [tried, setTried] = useState(false);
  const isMeant = typed.trim() === client.name.trim();
  const erase = (event: React.FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (!isMeant) return nameBox.current?.focus();
    void run(async () =>
      onErased(await call('POST', `/api/clients/${client.id}/erase`, erasedSchema, { name: typed })),
    );
  };
  return (
    <form className={styles.form} onSubmit={erase} noValidate>
      <p className={styles.warning}>
        <strong>It cannot be undone.</strong> Export all of it first where the person wants a copy.
      </p>
      <h3>What goes</h3>
      <ul className={styles.points}>
        <li>The entry: name, public name, ways to be reached, notes.</li>
        <li>
          The name, the numbers and the addresses in every text of the record and of its history: “a client”
          stands there instead. In their own jobs, each word of the name goes too.
        </li>
        <li>
          Copies of the record that Benchtake has put into its backups folder: one made afresh replaces them.
        </li>
      </ul>
      <h3>What stays</h3>
      <ul className={styles.points}>
        <li>
          {jobs === 0 ? 'Instruments' : `${counted(jobs, 'job')} and the instruments`}, with everything else
          that was written, measured and filmed.
        </li>
        <li>The recordings: what is seen and said in them, and their file names.</li>
        <li>Copies that you have made yourself, and files that you have handed out.</li>
      </ul>
      <FileNames files={namingFiles} />
      <TextField
        ref={nameBox}
        label="Type the name again"
        hint={`As it stands on the card: ${client.name}`}
        wrong={tried && !isMeant ? `That is not it. It stands on the card as: ${client.name}` : null}
        autoComplete="off"
        spellCheck={false}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
      />
      {problem !== null && (
        <ProblemNote error={problem}>
          {problem instanceof CallError && problem.status === 409 && (
            <Button onClick={onMerge}>Make one of two entries</Button>
          )}
        </ProblemNote>
      )}
      <div className={styles.buttons}>
        <Button type="submit" weight="alarm" aria-disabled={busy}>
          {busy ? 'Erasing …' : 'Erase for good'}
        </Button>
      </div>
    </form>
  );
}

function WhatWasErased({ erased }: { erased: Erased }) {
  return (
    <div className={styles.form} role="status">
      <p>
        The person is off the record.{' '}
        {erased.texts === 0
          ? 'No other text told of them.'
          : `${counted(erased.texts, 'text')} told of them.`}
      </p>
      <FileNames files={erased.recordings} />
      <ButtonLink href="/clients">To the clients</ButtonLink>
    </div>
  );
}

function FileNames({ files }: { files: readonly string[] }) {
  if (files.length === 0) return null;
  return (
    <section className={styles.happens} aria-label="File names that hold the name">
      <p>
        {counted(files.length, 'recording has', 'recordings have')} the name in the file name. Benchtake never
        renames recordings: do it yourself, and they are found again.
      </p>
      <ul className={styles.files}>
        {files.map((file) => (
          <li key={file}>{file}</li>
        ))}
      </ul>
    </section>
  );
}
