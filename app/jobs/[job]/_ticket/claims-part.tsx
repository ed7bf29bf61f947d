'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { type ClaimGroup, groupClaims } from '@/lib/work';
import type { ClaimKind } from '@/shared/claims';
import { useDesk } from '../_desk/use-record';
import styles from './claims.module.css';
import { ClaimCard } from './claims-card';
import { ClaimForm } from './claims-form';
import { TicketSection } from './ticket-section';

const addClaimId = 'add-a-claim';

/** What is said to be so about the instrument. Claims that disagree stand side by side, and none is thrown away. */
export function ClaimsPart() {
  const { claims } = useDesk().record;
  const [adding, setAdding] = useState(false);
  const [next, setNext] = useState<{ id: string } | null>(null);
  const focusNext = (id = addClaimId) => setNext({ id });
  const leave = () => {
    setAdding(false);
    focusNext();
  };
  // What had the focus is gone with its form or its claim.
  useEffect(() => {
    if (next) document.getElementById(next.id)?.focus();
  }, [next]);
  return (
    <TicketSection id="claims" title="Claims">
      {claims.length === 0 && (
        <p className={styles.fine}>
          Nothing is claimed yet. A year, a factory, an original part: each with how it is known and how sure
          it is.
        </p>
      )}
      {groupClaims(claims).map((group) => (
        <Group key={group.sides[0]?.[0]?.id} group={group} onLeft={focusNext} />
      ))}
      {adding ? (
        <ClaimForm onLeave={leave} />
      ) : (
        <div>
          <Button id={addClaimId} onClick={() => setAdding(true)}>
            Add a claim
          </Button>
        </div>
      )}
    </TicketSection>
  );
}

const kindWords: Record<ClaimKind, string> = {
  year: 'Year',
  factory: 'Factory',
  'original part': 'Original part',
  other: 'Other',
};

interface GroupProps {
  group: ClaimGroup;
  /** Called with the id of what is to have the focus; without one it goes to the button that adds a claim. */
  onLeft: (id?: string) => void;
}

function Group({ group: { kind, subject, sides }, onLeft }: GroupProps) {
  const disagrees = sides.length > 1;
  const about = subject ? `${kindWords[kind]}: ${subject}` : kindWords[kind];
  return (
    <div className={styles.group} data-disagrees={disagrees || undefined} role="group" aria-label={about}>
      <h3>{about}</h3>
      {disagrees && (
        <p className={styles.disagrees}>
          <strong>These disagree:</strong> {sides.map((side) => `“${side[0]?.value}”`).join(' against ')}.
          Each stays until it is known which is right.
        </p>
      )}
      <div className={styles.sides}>
        {sides.map((side) => (
          <ul key={side[0]?.id} className={styles.side}>
            {side.map((claim) => (
              <ClaimCard key={claim.id} claim={claim} onLeft={onLeft} />
            ))}
          </ul>
        ))}
      </div>
    </div>
  );
}
