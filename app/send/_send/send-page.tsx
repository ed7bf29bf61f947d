'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { sizeInWords, ticketNumber } from '@/app/_parts/words';
import type { ChosenJob } from './chosen-job';
import { FileChoice } from './file-choice';
import { JobChoice } from './job-choice';
import { OnItsWay } from './on-its-way';
import { type Part, shareOf, wholeRecording, wrongWith } from './part';
import { PartChoice } from './part-choice';
import { Preparation } from './preparation';
import styles from './send.module.css';
import type { Parcel } from './upload';
import { usePreparing } from './use-preparing';
import { useSending } from './use-sending';

interface SendPageProps {
  first: ChosenJob | null;
  jobs: readonly ChosenJob[];
}

/** From the device that holds a recording to the bench machine: job, recording, part, and off it goes. */
export function SendPage({ first, jobs }: SendPageProps) {
  const [job, setJob] = useState(first);
  const [file, setFile] = useState<File | null>(null);
  const [part, setPart] = useState<Part>(wholeRecording);
  const [durationMs, setDurationMs] = useState<number | null>(null);
  const [parcel, setParcel] = useState<Parcel | null>(null);
  const preparing = usePreparing();
  const sending = useSending();
  const underWay = sending.state.phase !== 'none';

  const pick = (picked: File | null) => {
    preparing.stop();
    setFile(picked);
    setPart(wholeRecording);
    setDurationMs(null);
  };
  const send = (from: File, what: File) => {
    if (!job) return;
    const next = { jobId: job.id, file: what, key: keyOf(from, what, part) };
    setParcel(next);
    sending.start(next);
  };

  return (
    <main className={styles.page}>
      <h1 className={styles.title}>Send a recording</h1>
      <p>
        From this device straight to the bench machine; nothing goes anywhere else. It becomes a take of the
        job.
      </p>
      <Step number={1} title="Job">
        {job ? (
          <div className={styles.chosen}>
            <p>
              <span className={styles.number}>{ticketNumber(job.number)}</span> {job.title}
            </p>
            {!underWay && <Button onClick={() => setJob(null)}>Another job</Button>}
          </div>
        ) : (
          <JobChoice first={jobs} onChoose={setJob} />
        )}
      </Step>
      {job && (
        <Step number={2} title="Recording">
          {file && (
            <p className={styles.chosen}>
              <strong>{file.name}</strong> {sizeInWords(file.size)}
            </p>
          )}
          {!underWay && <FileChoice onPick={pick} />}
          {file && !underWay && (
            <PartChoice
              key={`${file.name} ${file.size} ${file.lastModified}`}
              {...{ file, part, durationMs }}
              disabled={preparing.state.phase === 'working' || preparing.state.phase === 'ready'}
              onPart={setPart}
              onDuration={setDurationMs}
            />
          )}
        </Step>
      )}
      {job && file && !underWay && (
        <Step number={3} title="Prepare and send">
          <Preparation
            file={file}
            state={preparing.state}
            partBytes={file.size * (shareOf(part, durationMs) ?? 1)}
            wrong={wrongWith(part, durationMs)}
            onPrepare={() => void preparing.start(file, part)}
            onStop={preparing.stop}
            onSend={(what) => send(file, what)}
          />
        </Step>
      )}
      {job && sending.state.phase !== 'none' && (
        <Step number={3} title="On its way">
          <OnItsWay
            state={sending.state}
            job={job}
            onPause={() => void sending.pause()}
            onResume={sending.resume}
            onCancel={() => void sending.cancel()}
            onAgain={() => parcel && sending.start(parcel)}
            onAnother={() => {
              pick(null);
              sending.putAway();
            }}
          />
        </Step>
      )}
    </main>
  );
}

/** By its name and size a recording is known again; a phone may give it another date each time it is picked. */
function keyOf(from: File, what: File, { startMs, endMs }: Part): string {
  if (what === from) return `${from.name} ${from.size}`;
  return `${from.name} ${from.size} from ${startMs} to ${endMs ?? 'end'} as ${what.size}`;
}

function Step({ number, title, children }: { number: number; title: string; children: React.ReactNode }) {
  const id = `step-${number}`;
  return (
    <section className={styles.step} aria-labelledby={id}>
      <h2 id={id} className={styles.head}>
        <span className={styles.notch} aria-hidden="true">
          {number}
        </span>
        {title}
      </h2>
      {children}
    </section>
  );
}
