import Link from 'next/link';
import { counted } from '@/app/_parts/words';
import type { Fault, PlaceFound } from '@/shared/reference';
import { JobLink } from '../../_reference/job-link';
import styles from '../../_reference/reference.module.css';

/** A fault on one type of instrument, what was done about it, and where to see both. */
export function FaultCard({ fault, address }: { fault: Fault; address: string | null }) {
  const { said, instrument, jobs, found, cures, shown, without } = fault;
  return (
    <li className={styles.card}>
      <h3 className={styles.cardName}>
        {address ? (
          <Link href={address} prefetch={false}>
            {said}
          </Link>
        ) : (
          said
        )}
      </h3>
      <p>
        {instrument}: {counted(jobs, 'job')}, {shown} with a result on film
      </p>
      <h4 className={styles.part}>Found</h4>
      <Places places={found} />
      <h4 className={styles.part}>Done in the same jobs</h4>
      <ul className={styles.cures}>
        {cures.map((cure) => (
          <Cure key={cure.word} cure={cure} />
        ))}
      </ul>
      {without > 0 && (
        <p className={styles.soft}>
          {counted(without, 'job')} without work that could be told to belong to it.
        </p>
      )}
    </li>
  );
}

/** Work that is told in its own words says them once. */
function Cure({ cure: { said, jobs, moments } }: { cure: Fault['cures'][number] }) {
  const isVerbatim = moments.every((moment) => moment.said === said);
  return (
    <li>
      <p>
        <strong>{said}</strong> ({counted(jobs, 'job')}){' '}
        {isVerbatim && moments.map(({ job, moment }) => <JobLink key={job.id} job={job} moment={moment} />)}
      </p>
      {!isVerbatim && <Places places={moments} />}
    </li>
  );
}

function Places({ places }: { places: readonly PlaceFound[] }) {
  return (
    <ul className={styles.places}>
      {places.map(({ job, said, moment }) => (
        <li key={`${job.id}${said}`}>
          <JobLink job={job} moment={moment} /> {said}
        </li>
      ))}
    </ul>
  );
}
