'use client';

import { Button } from '@/app/_parts/button';
import { filmTimeOf, layOut, shortTime } from '@/lib/film';
import type { OutcomeRecord } from '@/shared/traces';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { BasisWord } from './basis-word';
import styles from './trace.module.css';

/** What was really joined, with the basis of every line, and the way to its moment. */
export function Outcomes({
  outcomes,
  onRemove,
}: {
  outcomes: readonly OutcomeRecord[];
  onRemove: (id: string) => void;
}) {
  const player = usePlayer();
  const { record } = useDesk();
  const film = layOut(record.takes);
  if (outcomes.length === 0) return <p className={styles.fine}>Nothing is recorded as joined yet.</p>;
  return (
    <ul className={styles.outcomes}>
      {outcomes.map(({ id, takeId, ms, outcome }) => {
        const at = takeId !== null && ms !== null ? filmTimeOf(film, { takeId, ms }) : null;
        return (
          <li key={id}>
            <p className={styles.outcomeHead}>
              <strong>{outcome.title}</strong> <BasisWord basis={outcome.basis} />
              {at && (
                <Button onClick={() => player?.seek(at.filmMs)}>
                  See it at <span className="figures">{shortTime(at.filmMs)}</span>
                </Button>
              )}
              <Button weight="alarm" onClick={() => onRemove(id)}>
                Delete
              </Button>
            </p>
            <table className={styles.lines}>
              <thead>
                <tr>
                  <th scope="col">Role</th>
                  <th scope="col">Conductors</th>
                  <th scope="col">Where</th>
                  <th scope="col">Known</th>
                </tr>
              </thead>
              <tbody>
                {outcome.lines.map((line) => (
                  <tr key={`${line.role} ${line.ends.join(' ')}`}>
                    <td>{line.role}</td>
                    <td>{line.ends.join(' + ')}</td>
                    <td>{line.goesTo}</td>
                    <td>
                      <BasisWord basis={line.basis} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </li>
        );
      })}
    </ul>
  );
}
