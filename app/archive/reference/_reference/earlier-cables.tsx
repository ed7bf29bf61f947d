import { counted } from '@/app/_parts/words';
import type { Assignment, BasisCounts, PickupsAnswer } from '@/shared/reference';
import { Conductor } from './cable';
import { Coils } from './coils';
import { JobLink } from './job-link';
import styles from './reference.module.css';

type Same = NonNullable<PickupsAnswer['same']>;

/** What cables of the very same colours turned out to be, and that this one must be measured all the same. */
export function EarlierCables({ same }: { same: Same }) {
  const { count, lookedAt, assignments, conductors, open } = same;
  const used = conductors.filter(({ uses }) => uses.length > 0);
  return (
    <section className={styles.earlier} aria-labelledby="earlier">
      <h2 id="earlier" className={styles.head}>
        {count === 0
          ? 'No earlier cable had just these colours'
          : `${counted(count, 'earlier cable')} with just these colours`}
      </h2>
      <p className={styles.caution}>
        <strong>Measure this one before anything is joined.</strong> What earlier cables were proves nothing
        of it: two makers, or one maker in two years, use the same colours for other ends.
      </p>
      {lookedAt < count && <p>The newest {lookedAt} of them are looked at here.</p>}
      {assignments.length > 0 && (
        <ol className={styles.assignments}>
          {assignments.map((assignment) => (
            <Turned key={JSON.stringify(assignment.coils)} assignment={assignment} />
          ))}
        </ol>
      )}
      {open > 0 && <p>{counted(open, 'cable')} of these colours was not worked out, or not yet.</p>}
      {used.length > 0 && (
        <>
          <h3 id="ends" className={styles.head}>
            Which end each conductor was
          </h3>
          <p className={styles.rule}>
            Only what was measured, or follows from what was. The positive end is the one on which the red
            lead made the needle kick up with steel laid on the row.
          </p>
          <table className={styles.figures} aria-labelledby="ends">
            <thead>
              <tr>
                <th scope="col">conductor</th>
                <th scope="col">it was</th>
              </tr>
            </thead>
            <tbody>
              {used.map(({ name, uses }) => (
                <tr key={name}>
                  <th scope="row">
                    <Conductor name={name} />
                  </th>
                  <td>{uses.map(({ end, count }) => `${end}: ${count} ×`).join('; ')}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}

function Turned({ assignment: { coils, counts, traces } }: { assignment: Assignment }) {
  return (
    <li className={styles.assignment}>
      <p className={styles.times}>{sayCounts(counts)}</p>
      <Coils coils={coils} />
      <p className={styles.jobs}>
        {traces.map(({ trace, job }) => (
          <JobLink key={trace} job={job} />
        ))}
      </p>
    </li>
  );
}

/** "3 measured, 1 follows from measured · only assumed: 2": nothing assumed is counted with what was measured. */
function sayCounts({ measured, implied, assumed, stated }: BasisCounts): string {
  const proven = [
    measured > 0 ? `${measured} measured` : '',
    implied > 0 ? `${implied} following from what was measured` : '',
  ].filter(Boolean);
  const unproven = [
    assumed > 0 ? `only assumed: ${assumed}` : '',
    stated > 0 ? `only stated: ${stated}` : '',
  ].filter(Boolean);
  return [proven.join(', ') || 'never measured', ...unproven].join(' · ');
}
