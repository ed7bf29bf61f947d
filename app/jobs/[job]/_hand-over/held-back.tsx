'use client';

import { Button } from '@/app/_parts/button';
import { counted } from '@/app/_parts/words';
import type { Finding, PublicDocument } from '@/shared/cut';
import { goToAnchor } from '../_ticket/use-anchor';
import styles from './hand-over.module.css';
import { useHandOver } from './use-hand-over';

/** What is not decided in a document yet. */
export function openIn(findings: readonly Finding[], document: PublicDocument): Finding[] {
  return findings.filter(({ decision, documents }) => decision === 'open' && documents.includes(document));
}

/** What stands where a document could be taken away, while something private in it is not decided. */
export function HeldBack({ document, children }: { document: PublicDocument; children: React.ReactNode }) {
  const count = openIn(useHandOver().view.cut.findings, document).length;
  if (count === 0) return children;
  return (
    <div className={styles.held}>
      <p>
        {counted(count, 'private finding')} {count === 1 ? 'stands' : 'stand'} in the way. Decide first, then
        it can go out.
      </p>
      <Button onClick={() => goToAnchor('in-the-way')}>See what stands in the way</Button>
    </div>
  );
}
