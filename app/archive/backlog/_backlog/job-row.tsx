'use client';

import Link from 'next/link';
import { memo } from 'react';
import { counted, ticketNumber } from '@/app/_parts/words';
import type { ProposedJob } from '@/shared/backlog';
import { instrumentTypes } from '@/shared/instruments';
import styles from './backlog.module.css';
import type { ChoiceChange, Decided } from './use-choices';
import { dayOfTakeInWords, daysInWords, lengthInWords, sourcesInWords } from './words';

interface JobRowProps {
  job: ProposedJob;
  choice: Decided;
  onChange: (key: string, change: ChoiceChange) => void;
}

/** One proposed job: whether it is taken in, its title and instrument, and what its takes would be. */
export const JobRow = memo(function JobRow({ job, choice, onChange }: JobRowProps) {
  const when = daysInWords(job);
  const where = job.home === '' ? 'the folder itself' : job.home;
  const about = `${when}, ${where}`;
  const type = choice.instrumentType ?? job.instrumentType;
  return (
    <li className={styles.job} data-left-out={choice.leftOut || undefined}>
      <label className={styles.take}>
        <input
          type="checkbox"
          checked={!choice.leftOut}
          onChange={(event) => onChange(job.key, { leftOut: !event.target.checked })}
        />
        <span className={styles.hiddenWords}>Take in: {about}</span>
      </label>
      {job.joins ? (
        <p className={styles.joins}>
          More for <Link href={`/jobs/${job.joins.id}`}>{job.joins.title}</Link>, job{' '}
          {ticketNumber(job.joins.number)}
        </p>
      ) : (
        <div className={styles.named}>
          <input
            className={styles.box}
            aria-label={`Title: ${about}`}
            value={choice.title ?? job.title}
            maxLength={200}
            disabled={choice.leftOut}
            onChange={(event) => onChange(job.key, { title: event.target.value })}
          />
          <select
            className={styles.box}
            aria-label={`Instrument: ${about}`}
            value={type}
            disabled={choice.leftOut}
            onChange={(event) => onChange(job.key, { instrumentType: event.target.value })}
          >
            {instrumentTypes.map((word) => (
              <option key={word} value={word}>
                {word === 'other' ? 'other, or not known' : word}
              </option>
            ))}
          </select>
        </div>
      )}
      <p className={styles.when}>{when}</p>
      <details className={styles.takes}>
        <summary>{takesInWords(job)}</summary>
        <Takes job={job} />
      </details>
    </li>
  );
});

function takesInWords({ takes, home }: ProposedJob): string {
  const fresh = takes.filter(({ captionsOnly }) => !captionsOnly);
  const spoken = takes.filter(({ captions }) => captions.length > 0).length;
  const length = fresh.reduce((sum, { durationMs }) => sum + durationMs, 0);
  const told = [
    fresh.length > 0 ? `${counted(fresh.length, 'take')}, ${lengthInWords(length)}` : 'captions only',
    spoken > 0 ? `${spoken} with captions` : '',
    sourcesInWords(takes),
    home,
  ];
  return told.filter(Boolean).join(' · ');
}

function Takes({ job: { takes, typeWords } }: { job: ProposedJob }) {
  return (
    <>
      {typeWords !== null && <p className={styles.soft}>The instrument is by the word “{typeWords}”.</p>}
      <ol className={styles.files}>
        {takes.map((take) => (
          <li key={take.path}>
            <span className={styles.file}>{take.path}</span>
            <span className={styles.soft}>
              {dayOfTakeInWords(take)}
              {take.captionsOnly ? ' · a take already' : ''}
              {take.captions[0] === undefined ? '' : ` · captions ${take.captions[0]}`}
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}
