import type { ColoursAsked } from '@/shared/reference';
import { Cable } from './cable';
import styles from './reference.module.css';

/** What was made of the typed colours, and what could not be. */
export function AskedColours({ asked }: { asked: ColoursAsked }) {
  return (
    <div className={styles.understood}>
      <h2 className={styles.head}>In the hand</h2>
      {asked.conductors.length > 0 || asked.shield ? (
        <Cable conductors={asked.conductors} shield={asked.shield} />
      ) : (
        <p>No colour was understood.</p>
      )}
      {asked.taken.length > 0 && (
        <p>
          {asked.taken.map(({ said, means }) => `“${said}” was taken for ${means}`).join(', ')}. Write the
          colour out where it is another.
        </p>
      )}
      {asked.unknown.length > 0 && (
        <p className={styles.wrong} role="alert">
          No conductor colour: {asked.unknown.map((word) => `“${word}”`).join(', ')}. Use red, white, green …,
          a letter code such as RD or GNYE, white/red for two colours, bare for the shield.
        </p>
      )}
    </div>
  );
}
