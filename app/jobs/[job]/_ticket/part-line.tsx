'use client';

import type { Part } from '@/shared/work';
import { Fold } from './fold';
import { MomentButton } from './moment-pin';
import { PartDetails } from './part-details';
import styles from './ticket.module.css';
import { deedWords, fateWords, sourceWords } from './words';

/** A part in one line, with what is in doubt about it; everything else behind “Change”. */
export function PartLine({ part }: { part: Part }) {
  const { what, doubt, doubtBasis, evidence, moment } = part;
  return (
    <li id={part.id} tabIndex={-1} className={styles.line}>
      <p className={styles.what}>{what}</p>
      <p className={styles.facts}>
        <span>{factsOf(part)}</span>
        {moment && <MomentButton moment={moment} label={`Go to: ${what}`} />}
      </p>
      {doubt && (
        <p className={styles.doubt}>
          <strong>In doubt:</strong> {doubt}
          {doubtBasis && ` (${doubtBasis})`}
          {evidence && (
            <>
              {' '}
              <q>{evidence}</q>
            </>
          )}
        </p>
      )}
      <Fold label="Change" of={what}>
        <PartDetails part={part} />
      </Fold>
    </li>
  );
}

function factsOf({ deed, source, fate }: Part): string {
  return [deedWords[deed], source && sourceWords[source], fate && `old part ${fateWords[fate]}`]
    .filter(Boolean)
    .join(' · ');
}
