import { ButtonLink } from '@/app/_parts/button';
import { ticketNumber } from '@/app/_parts/words';
import { type Paper, papers } from '@/lib/work';
import type { Job } from '@/shared/jobs';
import styles from './paper-bar.module.css';
import { PrintButton } from './print-button';

const choices: readonly Paper[] = ['a4', 'letter'];

/** What can be done with the page before it goes to the printer. */
export function PaperBar({ job, paper, reachable }: { job: Job; paper: Paper; reachable: boolean }) {
  return (
    <div className={styles.bar}>
      <h1 className={styles.title}>No. {ticketNumber(job.number)} on paper</h1>
      <nav className={styles.papers} aria-label="Paper">
        {choices.map((one) => (
          <ButtonLink
            key={one}
            href={`/jobs/${job.id}/print?paper=${one}`}
            aria-current={one === paper ? 'page' : undefined}
            replace
          >
            {papers[one].name}
          </ButtonLink>
        ))}
      </nav>
      <PrintButton />
      <ButtonLink weight="bare" href={`/jobs/${job.id}`}>
        Back to the job
      </ButtonLink>
      {!reachable && (
        <p className={styles.note}>
          The code opens the job on this machine only. For a phone to open it, stop Benchtake, start it with{' '}
          <code>HOST=0.0.0.0 npm start</code> and print again. There is no password: do that only in a network
          where you trust everybody.
        </p>
      )}
    </div>
  );
}
