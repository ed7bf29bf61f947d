'use client';

import { Button, ButtonLink } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { sizeInWords } from '@/app/_parts/words';
import type { ChosenJob } from './chosen-job';
import { aboutInWords } from './rate';
import styles from './send.module.css';
import type { Progress, SendingState } from './use-sending';

interface OnItsWayProps {
  state: Exclude<SendingState, { phase: 'none' }>;
  job: ChosenJob;
  onPause: () => void;
  onResume: () => void;
  onCancel: () => void;
  onAgain: () => void;
  onAnother: () => void;
}

/** How far the recording is on its way to the bench machine, and what became of it. */
export function OnItsWay({ state, job, onPause, onResume, onCancel, onAgain, onAnother }: OnItsWayProps) {
  if (state.phase === 'refused') {
    return (
      <ProblemNote error={state.error}>
        <div className={styles.choices}>
          <Button onClick={onAgain}>Send once more</Button>
          <Button onClick={onCancel}>Cancel</Button>
        </div>
      </ProblemNote>
    );
  }
  if (state.phase === 'done') {
    return (
      <>
        <p role="status">
          <strong>Arrived whole.</strong> “{state.finished.take.name}” is a take of the job now; every byte
          was checked.
        </p>
        <div className={styles.choices}>
          <ButtonLink weight="main" href={`/jobs/${job.id}`}>
            To the job
          </ButtonLink>
          <Button onClick={onAnother}>Send another</Button>
        </div>
      </>
    );
  }
  return (
    <>
      <p role="status">{phaseInWords[state.phase]}</p>
      <progress
        className={styles.progress}
        aria-label={state.phase === 'checking' ? 'Checked' : 'Sent'}
        value={state.bytes}
        max={state.ofBytes}
      />
      <p className={styles.figures}>{progressInWords(state)}</p>
      <div className={styles.choices}>
        {state.phase === 'paused' ? (
          <Button weight="main" onClick={onResume}>
            Go on
          </Button>
        ) : (
          <Button disabled={state.phase === 'checking'} onClick={onPause}>
            Pause
          </Button>
        )}
        <Button disabled={state.phase === 'checking'} onClick={onCancel}>
          Cancel sending
        </Button>
      </div>
      <p className={styles.soft}>
        Keep this page open and the screen on. If it is interrupted all the same, choose the same job and the
        same recording again: it goes on where it stopped, for a week.
      </p>
    </>
  );
}

const phaseInWords: Record<Progress['phase'], string> = {
  sending: 'Sending …',
  paused: 'Paused. What has arrived is kept.',
  waiting: 'The bench machine does not answer. It goes on by itself as soon as it does.',
  checking: 'All sent. Checking every byte …',
};

function progressInWords({ bytes, ofBytes, bytesPerSecond }: Progress): string {
  const far = `${sizeInWords(bytes)} of ${sizeInWords(ofBytes)}`;
  if (!bytesPerSecond || bytes >= ofBytes) return far;
  return `${far}, ${sizeInWords(bytesPerSecond)} a second, about ${aboutInWords((ofBytes - bytes) / bytesPerSecond)} left`;
}
