'use client';

import { Dialog as Headless } from '@base-ui/react/dialog';
import { buttonClass } from './button';
import styles from './dialog.module.css';

interface DialogProps {
  open: boolean;
  onClose: () => void;
  title: string;
  wide?: boolean;
  /** Where to write first; otherwise the first thing that can be reached by keyboard. */
  startAt?: React.RefObject<HTMLElement | null>;
  children: React.ReactNode;
}

/** A sheet laid over the bench. Escape and the Close button put it away; focus returns to where it was. */
export function Dialog({ open, onClose, title, wide = false, startAt, children }: DialogProps) {
  return (
    <Headless.Root open={open} onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Headless.Portal>
        <Headless.Backdrop className={styles.backdrop} />
        <Headless.Popup className={`${styles.sheet} ${wide ? styles.wide : ''}`} initialFocus={startAt}>
          <div className={styles.head}>
            <Headless.Title className={styles.title}>{title}</Headless.Title>
            <Headless.Close className={buttonClass('bare')}>Close</Headless.Close>
          </div>
          <div className={styles.body}>{children}</div>
        </Headless.Popup>
      </Headless.Portal>
    </Headless.Root>
  );
}
