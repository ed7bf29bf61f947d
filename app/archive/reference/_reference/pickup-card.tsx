import Link from 'next/link';
import { BasisWord } from '@/app/jobs/[job]/_trace/basis-word';
import { sayOhms } from '@/lib/wiring';
import type { TracedPickup } from '@/shared/reference';
import { Cable } from './cable';
import { Coils } from './coils';
import { JobLink } from './job-link';
import styles from './reference.module.css';

const likenessWords = {
  same: 'the same colours',
  more: 'these colours and more',
  fewer: 'only some of these colours',
} as const;

/** One traced pickup with all that its worksheet came to. */
export function PickupCard({ pickup }: { pickup: TracedPickup }) {
  const { job, subject, coils, totalOhms, joined, said, problem, moment, likeness, trace } = pickup;
  return (
    <li className={styles.card}>
      <h3 className={styles.cardName}>
        <Link href={`/jobs/${job.id}/trace/${trace}`} prefetch={false}>
          {subject}
        </Link>
      </h3>
      <p>
        <JobLink job={job} moment={moment} /> · {job.instrument} · <time dateTime={job.day}>{job.day}</time>
        {likeness && <span className={styles.likeness}>{likenessWords[likeness]}</span>}
      </p>
      <Cable conductors={pickup.conductors} shield={pickup.shield} frame={pickup.frame} />
      {problem !== null && <p className={styles.wrong}>{problem} Open the worksheet and put it right.</p>}
      {coils.length > 0 && <Coils coils={coils} />}
      {coils.length === 0 && problem === null && <p className={styles.soft}>No coil was found yet.</p>}
      <dl className={styles.told}>
        {totalOhms !== null && <Told name="Total, measured" words={sayOhms(totalOhms)} />}
        {joined && <Told name="Joined" words={joined.title} basis={joined.basis} />}
        {said.map(({ text, basis }) => (
          <Told key={text} name="On the record" words={text} basis={basis} />
        ))}
      </dl>
    </li>
  );
}

interface ToldProps {
  name: string;
  words: string;
  basis?: React.ComponentProps<typeof BasisWord>['basis'];
}

function Told({ name, words, basis }: ToldProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {words} {basis && <BasisWord basis={basis} />}
      </dd>
    </div>
  );
}
