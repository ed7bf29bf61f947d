'use client';

import { useRouter } from 'next/navigation';
import { useEffect } from 'react';

/** When the page shown last was made. */
let shownLast = 0;

/**
 * Asks for the page again when it comes back into sight, or when Back shows it as it was kept.
 * @param madeAt when the server made the page
 */
export function useFreshPage(madeAt: number): void {
  const router = useRouter();
  useEffect(() => {
    if (madeAt === shownLast) router.refresh();
    shownLast = madeAt;
  }, [madeAt, router]);
  useEffect(() => {
    const onSight = () => document.visibilityState === 'visible' && router.refresh();
    document.addEventListener('visibilitychange', onSight);
    return () => document.removeEventListener('visibilitychange', onSight);
  }, [router]);
}
