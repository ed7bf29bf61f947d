'use client';

import { memo, useCallback, useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { dayAndTime, sizeInWords, ticketNumber } from '@/app/_parts/words';
import type { JobId } from '@/shared/ids';
import type { FoundRecording } from '@/shared/takes';
import styles from './picker.module.css';

/** Rows drawn at first, and more each time the end comes into view: thousands at once would hold up typing. */
const rowsAtOnce = 200;

interface RecordingListProps {
  ref: React.RefObject<HTMLUListElement | null>;
  recordings: readonly FoundRecording[];
  jobId: JobId;
  ticked: ReadonlySet<string>;
  onTick: (path: string, on: boolean) => void;
}

/** Recordings to tick. One of them is in the tab order; the arrow keys move among them. */
export function RecordingList({ ref, recordings, jobId, ticked, onTick }: RecordingListProps) {
  const [rows, setRows] = useState(rowsAtOnce);
  const [current, setCurrent] = useState<string | null>(null);
  const more = useCallback(() => setRows((before) => before + rowsAtOnce), []);
  const shown = recordings.slice(0, rows);
  const free = shown.filter((recording) => !isTakeOf(jobId, recording));
  const reachable = free.some(({ path }) => path === current) ? current : free[0]?.path;
  if (recordings.length === 0) return <p>No recording in this folder is called that.</p>;
  return (
    <>
      <ul ref={ref} className={styles.list} onKeyDown={moveFocus} aria-label="Recordings">
        {shown.map((recording) => (
          <RecordingRow
            key={recording.path}
            recording={recording}
            jobId={jobId}
            ticked={ticked.has(recording.path)}
            inTabOrder={recording.path === reachable}
            onTick={onTick}
            onReached={setCurrent}
          />
        ))}
      </ul>
      {rows < recordings.length && <MoreRows left={recordings.length - rows} onMore={more} />}
    </>
  );
}

interface RecordingRowProps {
  recording: FoundRecording;
  jobId: JobId;
  ticked: boolean;
  inTabOrder: boolean;
  onTick: (path: string, on: boolean) => void;
  onReached: (path: string) => void;
}

const RecordingRow = memo(function RecordingRow(props: RecordingRowProps) {
  const { recording, jobId, ticked, inTabOrder, onTick, onReached } = props;
  const { path, name, under, sizeBytes, modifiedAt, usedBy } = recording;
  return (
    <li className={styles.row}>
      <label className={styles.label}>
        <input
          type="checkbox"
          className={styles.tick}
          checked={ticked}
          disabled={isTakeOf(jobId, recording)}
          tabIndex={inTabOrder ? 0 : -1}
          onChange={(event) => onTick(path, event.target.checked)}
          onFocus={() => onReached(path)}
        />
        <span className={styles.name}>
          {under !== '' && <span className={styles.under}>{under}/</span>}
          {name}
        </span>
        <span className={styles.size}>{sizeInWords(sizeBytes)}</span>
        <span className={styles.date}>{dayAndTime(modifiedAt)}</span>
        {usedBy.length > 0 && (
          <span className={styles.used}>{usedBy.map((job) => jobInWords(job, jobId)).join('; ')}</span>
        )}
      </label>
    </li>
  );
});

/** The same recording twice in one film has no use: it cannot be ticked. */
function isTakeOf(jobId: JobId, { usedBy }: FoundRecording): boolean {
  return usedBy.some((job) => job.jobId === jobId);
}

function jobInWords(job: FoundRecording['usedBy'][number], jobId: JobId): string {
  return job.jobId === jobId
    ? 'already a take of this job'
    : `already a take of ticket ${ticketNumber(job.number)}, ${job.title}`;
}

/** Draws more rows as soon as the end of the list comes near. */
function MoreRows({ left, onMore }: { left: number; onMore: () => void }) {
  const end = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const watch = new IntersectionObserver(
      (entries) => entries.some((entry) => entry.isIntersecting) && onMore(),
      { rootMargin: '600px' },
    );
    if (end.current) watch.observe(end.current);
    return () => watch.disconnect();
  }, [onMore]);
  return (
    <div ref={end}>
      <Button onClick={onMore}>Show more ({left.toLocaleString('en-GB')} left)</Button>
    </div>
  );
}

/** Where an arrow key leads from the row at `index` of `count`. */
const steps: Record<string, (index: number, count: number) => number> = {
  ArrowDown: (index, count) => Math.min(index + 1, count - 1),
  ArrowUp: (index) => Math.max(index - 1, 0),
  PageDown: (index, count) => Math.min(index + 10, count - 1),
  PageUp: (index) => Math.max(index - 10, 0),
  Home: () => 0,
  End: (_index, count) => count - 1,
};

function moveFocus(event: React.KeyboardEvent<HTMLUListElement>): void {
  const step = steps[event.key];
  if (!step) return;
  event.preventDefault();
  const boxes = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input:enabled')];
  const index = boxes.findIndex((box) => box.matches(':focus'));
  boxes[step(index, boxes.length)]?.focus();
}
