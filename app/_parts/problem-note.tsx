import { inWords } from './call';
import styles from './problem-note.module.css';

/** What was refused and what to do next, beside the thing that it belongs to. */
export function ProblemNote({ error, children }: { error: unknown; children?: React.ReactNode }) {
  const { title, detail } = inWords(error);
  return (
    <div className={styles.note} role="alert">
      <p className={styles.title}>{title}</p>
      <p>{detail}</p>
      {children}
    </div>
  );
}
