'use client';

import type { HandOverView } from '@/shared/hand-over';
import type { JobRecord } from '@/shared/jobs';
import { SideDesk } from '../_desk/side-desk';
import { useDesk } from '../_desk/use-record';
import { DocumentTabs } from './document-tabs';
import styles from './hand-over.module.css';
import { HandOverFoot } from './hand-over-foot';
import { InTheWay } from './in-the-way';
import { HandOverProvider, useHandOverDesk } from './use-hand-over';
import { useOpenDocument } from './use-open-document';

interface HandOverDeskProps {
  firstRecord: JobRecord;
  firstView: HandOverView;
}

/** The four hand-over documents of a job, with the film at one side. */
export function HandOverDesk({ firstRecord, firstView }: HandOverDeskProps) {
  return (
    <SideDesk firstRecord={firstRecord} title="Hand-over">
      <HandOverSheet firstView={firstView} />
    </SideDesk>
  );
}

function HandOverSheet({ firstView }: Pick<HandOverDeskProps, 'firstView'>) {
  const { record } = useDesk();
  const desk = useHandOverDesk(record.job.id, firstView);
  const { shown, show, goTo } = useOpenDocument();
  return (
    <HandOverProvider value={desk}>
      <div className={styles.sheet}>
        <InTheWay onAnchor={goTo} />
        <DocumentTabs shown={shown} onShow={show} />
        <HandOverFoot />
      </div>
    </HandOverProvider>
  );
}
