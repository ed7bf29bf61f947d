'use client';

import { Dialog } from '@/app/_parts/dialog';
import styles from './desk.module.css';
import { keyCard } from './keys';

export function KeyCard({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} onClose={onClose} title="Keys">
      <dl className={styles.keyCard}>
        {keyCard.map(({ keys, does }) => (
          <div key={does} className={styles.keyRow}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </Dialog>
  );
}
