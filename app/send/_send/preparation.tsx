'use client';

import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { sizeInWords } from '@/app/_parts/words';
import { heavyForPhonesBytes, type Prepared } from './prepare';
import styles from './send.module.css';
import type { Preparing } from './use-preparing';

interface PreparationProps {
  file: File;
  state: Preparing;
  /** About how large the part is. */
  partBytes: number;
  /** Null where it can be prepared. */
  wrong: string | null;
  onPrepare: () => void;
  onStop: () => void;
  onSend: (file: File) => void;
}

/** Make the recording ready here, or send it as it is. */
export function Preparation({ file, state, partBytes, wrong, onPrepare, onStop, onSend }: PreparationProps) {
  if (state.phase === 'working') return <Working share={state.share} onStop={onStop} />;
  if (state.phase === 'ready')
    return <Ready file={file} prepared={state.prepared} onSend={onSend} onStop={onStop} />;
  const failed = state.phase === 'failed';
  return (
    <>
      {failed && <ProblemNote error={state.error} />}
      <p>
        Preparing happens on this device: the part is copied into an MP4, and the tags that tell where and
        with what it was filmed stay behind. The time of recording is kept. Picture and sound are not changed.
      </p>
      {partBytes > heavyForPhonesBytes && (
        <p>
          The part is about {sizeInWords(partBytes)}, and is prepared in memory: a phone may give up on it. A
          shorter part is surer.
        </p>
      )}
      <div className={styles.choices}>
        <Button weight={failed ? 'plain' : 'main'} disabled={wrong !== null} onClick={onPrepare}>
          {failed ? 'Prepare once more' : 'Prepare'}
        </Button>
        <Button weight={failed ? 'main' : 'plain'} onClick={() => onSend(file)}>
          Send as it is
        </Button>
      </div>
      <p className={styles.soft}>
        As it is, the whole recording is sent with all its tags: {sizeInWords(file.size)}.
      </p>
    </>
  );
}

function Working({ share, onStop }: { share: number | null; onStop: () => void }) {
  return (
    <>
      <p role="status">Preparing … keep this page open.</p>
      <progress
        className={styles.progress}
        aria-label="Prepared"
        {...(share === null ? {} : { value: share })}
      />
      <Button onClick={onStop}>Cancel preparing</Button>
    </>
  );
}

interface ReadyProps {
  file: File;
  prepared: Prepared;
  onSend: (file: File) => void;
  onStop: () => void;
}

function Ready({ file, prepared, onSend, onStop }: ReadyProps) {
  return (
    <>
      <p role="status">
        <strong>Prepared: {sizeInWords(prepared.file.size)}</strong> of {sizeInWords(file.size)}.
      </p>
      <p>{leadInWords(prepared.leadMs)}</p>
      <p>
        Place and device tags are gone.{' '}
        {prepared.keepsRecordedAt
          ? 'The time of recording is still in it.'
          : 'No time of recording was in it; the date of the file goes along.'}
      </p>
      <div className={styles.choices}>
        <Button weight="main" onClick={() => onSend(prepared.file)}>
          Send it
        </Button>
        <Button onClick={onStop}>Choose another part</Button>
      </div>
    </>
  );
}

/** Below this nobody sees a difference: a picture or two. */
const seenMs = 100;

function leadInWords(leadMs: number | null): string {
  if (leadMs === null) return 'A cut starts at the key frame before the moment that was chosen.';
  if (leadMs < seenMs) return 'It starts at the moment that was chosen.';
  return `It starts ${(leadMs / 1000).toFixed(1)} s before the moment that was chosen: a cut without re-encoding starts at the key frame before.`;
}
