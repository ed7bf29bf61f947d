import Link from 'next/link';
import { addressOfMoment } from '@/app/_parts/places';
import { ticketNumber } from '@/app/_parts/words';
import type { FilmMoment } from '@/shared/moments';
import type { ReferenceJob } from '@/shared/reference';
import styles from './reference.module.css';

/** A job by its number, at the moment where there is one. */
export function JobLink({ job, moment = null }: { job: ReferenceJob; moment?: FilmMoment | null }) {
  return (
    <Link
      href={moment ? addressOfMoment(job.id, moment) : `/jobs/${job.id}`}
      prefetch={false}
      className={styles.jobLink}
      title={job.title}
    >
      <span className="figures">{ticketNumber(job.number)}</span>
      {moment ? ' on film' : ''}
    </Link>
  );
}
