import type { ReadingsAnswer } from '@/shared/reference';
import { JobLink } from '../../_reference/job-link';
import styles from '../../_reference/reference.module.css';

type Chosen = NonNullable<ReadingsAnswer['chosen']>;

/** The newest readings of one place, each with its job. */
export function ChosenPlace({ chosen: { place, count, readings } }: { chosen: Chosen }) {
  return (
    <section className={styles.list} aria-labelledby="chosen">
      <h2 id="chosen" className={styles.head}>
        {count === 0
          ? `Nothing was measured at “${place}” before`
          : `Measured at “${place}”: ${count.toLocaleString('en-GB')}`}
      </h2>
      {readings.length < count && <p>The newest {readings.length} of them:</p>}
      <ul className={styles.lines}>
        {readings.map(({ id, job, said, moment }) => (
          <li key={id}>
            <JobLink job={job} moment={moment} />
            <span>{said}</span>
            <span className={styles.soft}>
              {job.instrument}, <time dateTime={job.day}>{job.day}</time>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
