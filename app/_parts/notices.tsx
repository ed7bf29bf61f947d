'use client';

import { Toast } from '@base-ui/react/toast';
import { useCallback, useMemo } from 'react';
import { buttonClass } from './button';
import { inWords } from './call';
import styles from './notices.module.css';

export interface Notices {
  /** Tells what was done, with a way back where there is one. */
  done(title: string, undo?: () => void): void;
  /** Tells what went wrong and what to do. */
  wrong(error: unknown): void;
}

export function NoticesProvider({ children }: { children: React.ReactNode }) {
  return (
    <Toast.Provider timeout={8000} limit={3}>
      {children}
      <Toast.Portal>
        <Toast.Viewport className={styles.stack}>
          <Stack />
        </Toast.Viewport>
      </Toast.Portal>
    </Toast.Provider>
  );
}

export function useNotices(): Notices {
  const { add } = Toast.useToastManager();
  const done = useCallback(
    (title: string, undo?: () => void) => {
      add({ title, ...(undo ? { actionProps: { children: 'Undo', onClick: undo } } : {}) });
    },
    [add],
  );
  const wrong = useCallback(
    (error: unknown) => {
      const { title, detail } = inWords(error);
      add({ title, description: detail, type: 'wrong', priority: 'high', timeout: 20_000 });
    },
    [add],
  );
  return useMemo(() => ({ done, wrong }), [done, wrong]);
}

function Stack() {
  const { toasts } = Toast.useToastManager();
  return toasts.map((toast) => (
    <Toast.Root key={toast.id} toast={toast} className={styles.notice} swipeDirection={[]}>
      <Toast.Title className={styles.title} />
      <Toast.Description className={styles.detail} />
      <div className={styles.buttons}>
        <Toast.Action className={buttonClass('bare')} />
        <Toast.Close className={buttonClass('bare')} aria-label="Put this notice away">
          ×
        </Toast.Close>
      </div>
    </Toast.Root>
  ));
}
