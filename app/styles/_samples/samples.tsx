'use client';

import { useState } from 'react';
import { Button, ButtonLink } from '@/app/_parts/button';
import { CallError } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { markerKinds } from '@/shared/markers';
import styles from '../styles.module.css';

const refusal = new CallError(
  'There is no such folder.',
  'Check the spelling. A drive must be plugged in while you name a folder on it.',
  422,
);

/** The parts, in the states that they can be in. */
export function Samples() {
  return (
    <>
      <section className={styles.sheet} aria-labelledby="shapes">
        <h2 id="shapes">Marker shapes</h2>
        <ul className={styles.row}>
          {markerKinds.map((kind) => (
            <li key={kind} className={styles.shape}>
              <MarkerShape kind={kind} />
              <MarkerShape kind={kind} size={28} />
              {markerWords[kind]}
            </li>
          ))}
        </ul>
      </section>
      <section className={styles.sheet} aria-labelledby="buttons">
        <h2 id="buttons">Buttons</h2>
        <div className={styles.row}>
          <Button>Plain</Button>
          <Button weight="main">Main: one a view</Button>
          <Button weight="alarm">Alarm: takes away</Button>
          <Button weight="bare">Bare</Button>
          <ButtonLink href="/">A link</ButtonLink>
          <Button disabled>Not now</Button>
          <Button weight="main" aria-disabled>
            Under way …
          </Button>
        </div>
      </section>
      <Fields />
      <States />
    </>
  );
}

function Fields() {
  return (
    <section className={styles.sheet} aria-labelledby="fields">
      <h2 id="fields">Fields</h2>
      <TextField label="A line to write on" hint="What goes here, with an example." />
      <TextField
        label="Something is wrong"
        wrong="What is wrong, and how to put it right."
        defaultValue="7,9,4"
      />
      <ChoiceField label="A choice of one" hint="Where the choices are few and known.">
        <option>bass guitar</option>
        <option>mandolin</option>
      </ChoiceField>
    </section>
  );
}

function States() {
  const notices = useNotices();
  const [open, setOpen] = useState(false);
  return (
    <section className={styles.sheet} aria-labelledby="states">
      <h2 id="states">Notices, dialogs, problems</h2>
      <ProblemNote error={refusal}>
        <Button>Try again</Button>
      </ProblemNote>
      <progress value={0.4} max={1} aria-label="Reading sound" />
      <div className={styles.row}>
        <Button onClick={() => notices.done('Marker moved', () => notices.done('Undone: marker moved'))}>
          A change, with its way back
        </Button>
        <Button onClick={() => notices.wrong(refusal)}>A problem without a place of its own</Button>
        <Button onClick={() => setOpen(true)}>A dialog</Button>
      </div>
      <p>
        <kbd>?</kbd> shows the keys.
      </p>
      <Dialog open={open} onClose={() => setOpen(false)} title="A sheet laid over the bench">
        <p>Escape and the Close button put it away.</p>
      </Dialog>
    </section>
  );
}
