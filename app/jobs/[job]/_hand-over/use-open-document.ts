'use client';

import { useCallback, useEffect, useState } from 'react';
import { goToAnchor } from '../_ticket/use-anchor';

export const documentNames = ['chapters', 'notes', 'summary', 'cut'] as const;
export type DocumentName = (typeof documentNames)[number];

/** The document that an anchor lies in: "notes-came-in" in the notes. Null for what stands outside of them. */
function documentOf(anchor: string): DocumentName | null {
  return documentNames.find((name) => anchor === name || anchor.startsWith(`${name}-`)) ?? null;
}

/** Which document lies open, and the way to a place in any of them; the address after its hash leads there too. */
export function useOpenDocument() {
  const [shown, setShown] = useState<DocumentName>('chapters');
  const [wanted, setWanted] = useState<string | null>(null);
  const goTo = useCallback((anchor: string) => {
    const name = documentOf(anchor);
    if (name) setShown(name);
    setWanted(anchor);
  }, []);
  const show = useCallback((name: DocumentName) => {
    setShown(name);
    history.replaceState(history.state, '', `#${name}`);
  }, []);

  useEffect(() => {
    const go = () => {
      if (location.hash !== '') goTo(decodeURIComponent(location.hash.slice(1)));
    };
    go();
    addEventListener('hashchange', go);
    return () => removeEventListener('hashchange', go);
  }, [goTo]);

  // The place is on the page only once its document is drawn.
  useEffect(() => {
    if (wanted === null) return;
    setWanted(null);
    goToAnchor(wanted);
  }, [wanted]);

  return { shown, show, goTo };
}
