'use client';

import { useState } from 'react';
import { z } from 'zod';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { deeds } from '@/shared/work';
import { useDesk } from '../_desk/use-record';
import { PartLine } from './part-line';
import { QuickLine } from './quick-line';
import styles from './ticket.module.css';
import { TicketSection } from './ticket-section';
import { useWork } from './use-work';
import { deedWords } from './words';

const deedSchema = z.enum(deeds);

/** What went in, what came out, what went back in. */
export function PartsPart() {
  const { parts } = useDesk().record;
  const { addPart } = useWork();
  const [deed, setDeed] = useState<z.infer<typeof deedSchema>>('fitted');
  return (
    <TicketSection id="parts" title="Parts">
      <QuickLine label="Add a part" placeholder="which part" onAdd={(what) => addPart({ what, deed })}>
        <KeptChoice
          label="It was"
          name="deed"
          schema={deedSchema}
          options={deeds}
          words={deedWords}
          value={deed}
          onKeep={async (next) => setDeed(next)}
        />
      </QuickLine>
      {parts.length > 0 && (
        <ul className={styles.lines} aria-label="Parts">
          {parts.map((part) => (
            <PartLine key={part.id} part={part} />
          ))}
        </ul>
      )}
    </TicketSection>
  );
}
