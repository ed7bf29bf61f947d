import type { WiringBasis } from '@/shared/wiring';
import styles from './trace.module.css';

/** How a thing is known, as a word in a frame of its own: solid for measured, broken for what is not. */
export function BasisWord({ basis }: { basis: WiringBasis }) {
  return (
    <span className={styles.basis} data-basis={basis}>
      {basis}
    </span>
  );
}
