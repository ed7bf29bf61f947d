'use client';

import { useState } from 'react';
import type { JobRecord } from '@/shared/jobs';
import type { TraceView } from '@/shared/traces';
import { SideDesk } from '../_desk/side-desk';
import { ConductorRow } from './conductor-row';
import { Follows } from './follows';
import { KickEntry } from './kick-entry';
import { MeasureNext } from './measure-next';
import { Outcomes } from './outcomes';
import { PairEntry } from './pair-entry';
import { type Pair, PairGrid } from './pair-grid';
import { Plans } from './plans';
import styles from './trace.module.css';
import { TraceReadings } from './trace-readings';
import { useTrace } from './use-trace';

interface TraceDeskProps {
  firstRecord: JobRecord;
  firstTrace: TraceView;
}

/** A pickup being traced: the film at one side, the worksheet at the other. */
export function TraceDesk({ firstRecord, firstTrace }: TraceDeskProps) {
  return (
    <SideDesk firstRecord={firstRecord} title={`Trace: ${firstTrace.worksheet.subject}`}>
      <Worksheet firstTrace={firstTrace} />
    </SideDesk>
  );
}

function Worksheet({ firstTrace }: { firstTrace: TraceView }) {
  const { trace, patch, join, removeOutcome } = useTrace(firstTrace);
  const [pair, setPair] = useState<Pair | null>(null);
  const { analysis, worksheet } = trace;
  return (
    <div className={styles.sheet}>
      <section className={styles.section} aria-labelledby="conductors">
        <h2 id="conductors">Conductors</h2>
        <ConductorRow analysis={analysis} />
        {worksheet.assumed.length > 0 && (
          <p className={styles.warn}>
            Roles taken over from the {worksheet.assumed[0]?.fromSubject}: assumed until this pickup’s own
            readings prove them.
          </p>
        )}
      </section>
      <MeasureNext analysis={analysis} onPair={setPair} />
      <section className={styles.section} aria-labelledby="pairs">
        <h2 id="pairs">Pairs</h2>
        <PairGrid analysis={analysis} chosen={pair} onChoose={setPair} />
        <PairEntry
          subject={worksheet.subject}
          conductors={worksheet.conductors}
          pair={pair}
          onNoted={() => setPair(null)}
        />
      </section>
      <section className={styles.section} aria-labelledby="kicks">
        <h2 id="kicks">Kicks</h2>
        <KickEntry analysis={analysis} />
      </section>
      <section className={styles.section} aria-labelledby="noted">
        <h2 id="noted">Read so far</h2>
        <TraceReadings subject={worksheet.subject} />
      </section>
      <section className={styles.section} aria-labelledby="follows" aria-live="polite">
        <h2 id="follows">What follows</h2>
        <Follows analysis={analysis} />
      </section>
      <section className={styles.section} aria-labelledby="plans">
        <h2 id="plans">Wiring plans</h2>
        <Plans
          trace={trace}
          onChoose={(planId) => void patch({ planId })}
          onJoin={(planId) => void join(planId)}
        />
      </section>
      <section className={styles.section} aria-labelledby="outcome">
        <h2 id="outcome">What was joined</h2>
        <Outcomes outcomes={trace.outcomes} onRemove={(id) => void removeOutcome(id)} />
      </section>
    </div>
  );
}
