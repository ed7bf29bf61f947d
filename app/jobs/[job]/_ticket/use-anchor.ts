'use client';

import { useEffect } from 'react';

/**
 * Goes to a part of the ticket and gives it the focus, which marks it. Nothing where it is not there.
 * @param anchor its id on the page, which is the record's own id for a line, or a field’s name
 */
export function goToAnchor(anchor: string): void {
  const name = CSS.escape(anchor);
  const part =
    document.getElementById(anchor) ?? document.querySelector<HTMLElement>(`[data-fields~="${name}"]`);
  if (!part) return;
  part.scrollIntoView({ block: part.offsetHeight > innerHeight / 2 ? 'start' : 'center' });
  part.focus({ preventScroll: true });
}

/** Gives the focus to a part that is in sight already, when what had it goes away. */
export function stayAt(part: Element | null): void {
  if (part instanceof HTMLElement) part.focus({ preventScroll: true });
}

/** Goes where the address points after its hash, when the page opens and when the hash changes. */
export function useAnchor(): void {
  useEffect(() => {
    const go = () => {
      if (location.hash !== '') goToAnchor(decodeURIComponent(location.hash.slice(1)));
    };
    go();
    addEventListener('hashchange', go);
    return () => removeEventListener('hashchange', go);
  }, []);
}
