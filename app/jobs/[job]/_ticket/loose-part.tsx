'use client';

import { useDesk } from '../_desk/use-record';
import { LooseEndList } from './loose-end-list';
import styles from './ticket.module.css';
import { TicketSection } from './ticket-section';
import { goToAnchor } from './use-anchor';

export function LoosePart() {
  const { looseEnds } = useDesk().record;
  return (
    <TicketSection
      id="loose-ends"
      title={looseEnds.length ? `Loose ends (${looseEnds.length})` : 'Loose ends'}
    >
      {looseEnds.length === 0 ? (
        <p className={styles.fine}>Nothing is loose.</p>
      ) : (
        <LooseEndList looseEnds={looseEnds} onAnchor={goToAnchor} />
      )}
    </TicketSection>
  );
}
