import Link from 'next/link';
import { sayBase } from '@/lib/readings';
import type { ReadingKindId } from '@/shared/readings';
import type { ReadingGroup } from '@/shared/reference';
import styles from '../../_reference/reference.module.css';

interface SpreadTableProps {
  kind: ReadingKindId;
  groups: readonly ReadingGroup[];
  chosen: string;
  address: (place: string, instrument: string) => string;
}

/** The figures of the plot, and of all groups that it has no room for. */
export function SpreadTable({ kind, groups, chosen, address }: SpreadTableProps) {
  const say = (value: number | null | undefined) => (value == null ? '–' : sayBase(value, kind));
  return (
    <section className={styles.list} aria-labelledby="figures">
      <h2 id="figures" className={styles.head}>
        Figures
      </h2>
      <p className={styles.rule}>
        Only what was measured, with whichever meter. Over-range readings and those that are implied, assumed
        or stated are counted apart. Quartiles are of type 7 by Hyndman and Fan (1996).
      </p>
      <div className={styles.scroller}>
        <table className={styles.figures} aria-labelledby="figures">
          <thead>
            <tr>
              <th scope="col">measured at</th>
              <th scope="col">instrument</th>
              <th scope="col">n</th>
              <th scope="col">least</th>
              <th scope="col">lower quartile</th>
              <th scope="col">median</th>
              <th scope="col">upper quartile</th>
              <th scope="col">most</th>
              <th scope="col">over range</th>
              <th scope="col">not measured</th>
            </tr>
          </thead>
          <tbody>
            {groups.map((group) => (
              <tr key={`${group.place}|${group.instrument}`} data-chosen={group.place === chosen}>
                <th scope="row">
                  <Link
                    href={address(group.place, group.instrument)}
                    prefetch={false}
                    className={styles.jobLink}
                  >
                    {group.place}
                  </Link>
                </th>
                <td>{group.instrument}</td>
                <td className={styles.number}>{group.n}</td>
                <td className={styles.number}>{say(group.min)}</td>
                {group.quartiles ? (
                  <>
                    <td className={styles.number}>{say(group.quartiles.lower)}</td>
                    <td className={styles.number}>{say(group.quartiles.median)}</td>
                    <td className={styles.number}>{say(group.quartiles.upper)}</td>
                  </>
                ) : (
                  <td colSpan={3}>{few(group, say)}</td>
                )}
                <td className={styles.number}>{say(group.max)}</td>
                <td className={styles.number}>{group.open}</td>
                <td className={styles.number}>{group.notMeasured}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function few({ few }: ReadingGroup, say: (value: number) => string): string {
  return few.length === 0 ? 'no value' : `${few.map(say).join(', ')}: too few to judge`;
}
