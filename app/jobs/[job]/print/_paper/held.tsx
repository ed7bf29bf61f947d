import type { PrintedText } from '@/lib/work';
import styles from './paper.module.css';

const held = [styles.held1, styles.held2, styles.held3, styles.held4];

/** A text that takes no more lines than were planned for it. */
export function Held({ of: { text, lines }, strong }: { of: PrintedText; strong?: boolean }) {
  return <span className={`${held[lines - 1] ?? ''} ${strong ? styles.strong : ''}`}>{text}</span>;
}
