import Link from 'next/link';
import { addressOf } from '@/app/_parts/places';
import { ticketNumber } from '@/app/_parts/words';
import type { JobId } from '@/shared/ids';
import type { LooseEnd } from '@/shared/loose-ends';
import styles from './ticket.module.css';

/** As many sentences are read at a glance; where there are more, the last of them tells how many. */
const atAGlance = 3;

interface LooseEndsProps {
  jobId: JobId;
  number: number;
  looseEnds: readonly LooseEnd[];
}

/** What is loose, in words, each leading to where it is tied up. */
export function LooseEnds({ jobId, number, looseEnds }: LooseEndsProps) {
  if (looseEnds.length === 0) return null;
  const shown = looseEnds.length > atAGlance ? looseEnds.slice(0, atAGlance - 1) : looseEnds;
  const rest = looseEnds.length - shown.length;
  return (
    <ul className={styles.loose} aria-label={`Loose ends of ticket ${ticketNumber(number)}`}>
      {shown.map(({ id, sentence, place }) => (
        <li key={id}>
          <Link href={addressOf(jobId, place)} prefetch={false} className={styles.end}>
            {sentence}
          </Link>
        </li>
      ))}
      {rest > 0 && (
        <li>
          <Link href={`/jobs/${jobId}/ticket#loose-ends`} prefetch={false} className={styles.end}>
            and {rest} more
          </Link>
        </li>
      )}
    </ul>
  );
}
