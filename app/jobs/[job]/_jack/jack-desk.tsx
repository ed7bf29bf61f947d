'use client';

import { useState } from 'react';
import type { JackView } from '@/shared/jack-check';
import type { JobRecord } from '@/shared/jobs';
import { SideDesk } from '../_desk/side-desk';
import { HarnessSection } from './harness-section';
import styles from './jack.module.css';
import { Judgement } from './judgement';
import type { AskedSetting } from './settings-rows';
import { SettingsSection } from './settings-section';
import { useJack } from './use-jack';

interface JackDeskProps {
  firstRecord: JobRecord;
  firstView: JackView;
}

/** A harness being checked at its jack: the film at one side, the measurements at the other. */
export function JackDesk({ firstRecord, firstView }: JackDeskProps) {
  return (
    <SideDesk firstRecord={firstRecord} title="Check at the jack">
      <CheckSheet firstView={firstView} />
    </SideDesk>
  );
}

function CheckSheet({ firstView }: { firstView: JackView }) {
  const { view, keep, remove } = useJack(firstView);
  const [asked, setAsked] = useState<AskedSetting | null>(null);
  return (
    <div className={styles.sheet}>
      <ul className={styles.cautions} aria-label="Take care">
        {view.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <HarnessSection view={view} onKeep={keep} onRemove={() => void remove()} />
      {view.harness && view.judgement && (
        <>
          <SettingsSection view={view} judgement={view.judgement} asked={asked} />
          <Judgement judgement={view.judgement} onAsk={setAsked} />
        </>
      )}
    </div>
  );
}
