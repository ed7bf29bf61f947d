'use client';

import { useState } from 'react';
import { z } from 'zod';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { origins } from '@/shared/work';
import { useDesk } from '../_desk/use-record';
import { QuickLine } from './quick-line';
import styles from './ticket.module.css';
import { TicketSection } from './ticket-section';
import { useWork } from './use-work';
import { originWords } from './words';
import { WorkLine } from './work-line';

const originSchema = z.enum(origins);
type Origin = z.infer<typeof originSchema>;

/** What was asked for, offered or found, what it costs, and what became of it. */
export function WorkPart({ currency }: { currency: string }) {
  const { work } = useDesk().record;
  const { addItem } = useWork();
  const [origin, setOrigin] = useState<Origin>('asked');
  return (
    <TicketSection id="work" title="Work">
      <QuickLine
        label="Add work"
        placeholder="what is to be done"
        onAdd={(what) => addItem({ what, origin })}
      >
        <KeptChoice
          label="It was"
          name="origin"
          schema={originSchema}
          options={origins}
          words={originWords}
          value={origin}
          onKeep={async (next) => setOrigin(next)}
        />
      </QuickLine>
      {work.length === 0 ? (
        <p className={styles.fine}>Nothing is written down yet.</p>
      ) : (
        <ul className={styles.lines} aria-label="Work items">
          {work.map((item) => (
            <WorkLine key={item.id} item={item} currency={item.currency ?? currency} />
          ))}
        </ul>
      )}
    </TicketSection>
  );
}
