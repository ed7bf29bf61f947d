'use client';

import { useRouter } from 'next/navigation';
import { useId, useRef, useState } from 'react';
import type { BroughtIn } from '@/shared/bundle';
import styles from './bundle-in.module.css';
import { Button, ButtonLink, buttonClass } from './button';
import { Dialog } from './dialog';
import { ProblemNote } from './problem-note';
import { sendBundle } from './send-bundle';
import { useAttempt } from './use-attempt';

/** A job bundle, made here or on another machine, becomes a new job; what came of it is told. */
export function BundleIn({ open, onClose }: { open: boolean; onClose: () => void }) {
  const router = useRouter();
  const [part, setPart] = useState(0);
  const [brought, setBrought] = useState<BroughtIn | null>(null);
  const stopper = useRef<AbortController | null>(null);
  const { busy, problem, run } = useAttempt();
  const close = () => {
    stopper.current?.abort();
    setBrought(null);
    onClose();
  };
  const send = (file: File) =>
    run(async () => {
      stopper.current = new AbortController();
      setPart(0);
      setBrought(null);
      setBrought(await sendBundle(file, setPart, stopper.current.signal));
      router.refresh();
    });
  return (
    <Dialog open={open} onClose={close} title="Bring in a bundle">
      {brought === null && (
        <>
          <p>
            A bundle is the ZIP that “Save the job as a bundle” writes. It becomes a new job; nothing that is
            here already is changed.
          </p>
          <FileButton busy={busy} onPick={(file) => void send(file)} />
        </>
      )}
      {busy && <UnderWay part={part} onStop={() => stopper.current?.abort()} />}
      {problem !== null && <ProblemNote error={problem} />}
      {brought !== null && <Report brought={brought} onAnother={() => setBrought(null)} />}
    </Dialog>
  );
}

function FileButton({ busy, onPick }: { busy: boolean; onPick: (file: File) => void }) {
  const id = useId();
  return (
    <div>
      <input
        id={id}
        className="only-read"
        type="file"
        accept=".zip,application/zip"
        disabled={busy}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file can be picked again.
          event.target.value = '';
          if (file) onPick(file);
        }}
      />
      <label htmlFor={id} className={buttonClass('main')}>
        Choose a bundle
      </label>
    </div>
  );
}

/** Checking and unpacking come after the last byte; how long they take is not known. */
function UnderWay({ part, onStop }: { part: number; onStop: () => void }) {
  const isSent = part >= 1;
  return (
    <div role="status">
      <p>{isSent ? 'Checking and unpacking …' : 'Sending …'}</p>
      <progress
        className={styles.progress}
        aria-label={isSent ? 'Checking and unpacking' : 'Sent'}
        max={1}
        value={isSent ? undefined : part}
      />
      {!isSent && <Button onClick={onStop}>Stop</Button>}
    </div>
  );
}

function Report({ brought: { job, report }, onAnother }: { brought: BroughtIn; onAnother: () => void }) {
  return (
    <div role="status">
      <p>“{job.title}” is here.</p>
      <ul className={styles.said}>
        {report.said.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className={styles.ways}>
        <ButtonLink weight="main" href={`/jobs/${job.id}`}>
          Open job {job.number}
        </ButtonLink>
        <Button onClick={onAnother}>Bring in another</Button>
      </p>
    </div>
  );
}
