import { BasisWord } from '@/app/jobs/[job]/_trace/basis-word';
import { sayOhms } from '@/lib/wiring';
import type { TracedCoil } from '@/shared/reference';
import { Conductor } from './cable';
import styles from './reference.module.css';

type Shown = Pick<TracedCoil, 'row' | 'ends'> & Partial<Pick<TracedCoil, 'ohms' | 'basis'>>;

/** Coils with their two ends, and how each is known. */
export function Coils({ coils }: { coils: readonly Shown[] }) {
  return (
    <ul className={styles.coils}>
      {coils.map((coil) => (
        <li key={coil.ends.map(({ names }) => names.join()).join()} className={styles.coil}>
          <span className={styles.row}>{coil.row === null ? 'row not known' : `${coil.row} row`}</span>
          <End end={coil.ends[0]} />
          <span aria-hidden="true">–</span>
          <span className="only-read"> to </span>
          <End end={coil.ends[1]} />
          {coil.ohms != null && <span className="figures">{sayOhms(coil.ohms)}</span>}
          {coil.basis && <BasisWord basis={coil.basis} />}
        </li>
      ))}
    </ul>
  );
}

function End({ end: { names, isPositive } }: { end: TracedCoil['ends'][number] }) {
  return (
    <span className={styles.end}>
      {names.map((name) => (
        <Conductor key={name} name={name} />
      ))}
      {isPositive && <span className={styles.positive}>positive end</span>}
    </span>
  );
}
