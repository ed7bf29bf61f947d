'use client';

import { Button } from '@/app/_parts/button';
import { ProblemNote } from '@/app/_parts/problem-note';
import { counted } from '@/app/_parts/words';
import type { GiveOutPreview } from '@/shared/archive-exports';
import { ChoosePart } from './choose-part';
import { Downloads } from './downloads';
import styles from './give-out.module.css';
import { InTheWay } from './in-the-way';
import { JobsOut } from './jobs-out';
import { useGiveOut } from './use-give-out';

/** Chooses a part of the archive, shows what of it may go out, and hands it over. */
export function GiveOutDesk() {
  const giveOut = useGiveOut();
  const { preview, isBehind, problem, lookAgain } = giveOut;
  return (
    <main className={styles.page}>
      <div className={styles.head}>
        <h1>Give out</h1>
        <p>
          The archive, or a part of it, as pages for any web host, and as tables. Names, numbers, addresses,
          serials and prices are held back; private markers and what is said on film stay here.
        </p>
      </div>
      <ChoosePart giveOut={giveOut} />
      {problem !== null && (
        <ProblemNote error={problem}>
          <Button onClick={lookAgain}>Look again</Button>
        </ProblemNote>
      )}
      <p role="status" className={styles.counts}>
        {preview && !isBehind
          ? sayCounts(preview.counts)
          : problem === null && 'Looking through the jobs. Thousands of them take some seconds.'}
      </p>
      {preview && (
        <div className={styles.found} aria-busy={isBehind}>
          <InTheWay giveOut={giveOut} jobs={preview.jobs} />
          <JobsOut giveOut={giveOut} jobs={preview.jobs} />
          <Downloads chosen={giveOut.chosen} counts={preview.counts} isBehind={isBehind} />
        </div>
      )}
    </main>
  );
}

function sayCounts({
  jobs,
  chapters,
  readings,
  traces,
  inTheWay,
  leftOut,
}: GiveOutPreview['counts']): string {
  const goes = `${counted(jobs, 'job')} ${jobs === 1 ? 'goes' : 'go'} out, with ${counted(chapters, 'chapter')}, ${counted(readings, 'reading')} and ${counted(traces, 'trace')}.`;
  const more = [
    inTheWay > 0 && `${counted(inTheWay, 'job')} held back until what is private is decided.`,
    leftOut > 0 && `${counted(leftOut, 'job')} left out by hand.`,
  ];
  return [goes, ...more].filter(Boolean).join(' ');
}
