import { counted } from '@/app/_parts/words';
import type { ReadyLook } from '@/shared/loose-ends';
import { When } from './loose-end-list';
import styles from './ticket.module.css';

/** The list that was looked at when the job left the bench, as it was then. */
export function ReadyLookNote({ look: { at, looseEnds } }: { look: ReadyLook }) {
  if (looseEnds.length === 0)
    return (
      <p className={styles.look}>
        <strong>Looked at</strong> <When at={at} />: nothing was loose.
      </p>
    );
  return (
    <details className={styles.look}>
      <summary>
        <strong>Looked at</strong> <When at={at} />{' '}
        <span>and left loose: {counted(looseEnds.length, 'loose end')}</span>
      </summary>
      <ul className={styles.plainList}>
        {looseEnds.map(({ id, sentence }) => (
          <li key={id}>{sentence}</li>
        ))}
      </ul>
    </details>
  );
}
