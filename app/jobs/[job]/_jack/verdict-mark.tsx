import type { JackCheck } from '@/shared/jack';
import styles from './jack.module.css';
import { verdictWords } from './words';

/** A mark and a word, never a colour alone. */
export function VerdictMark({ verdict }: { verdict: JackCheck['verdict'] | 'unread' }) {
  const { mark, word } = verdictWords[verdict];
  return (
    <span className={styles.verdictMark} data-verdict={verdict}>
      <span aria-hidden="true" className={styles.mark}>
        {mark}
      </span>
      <span>{word}</span>
    </span>
  );
}
