'use client';

import type { Change, JobRecord } from '@/shared/jobs';
import { SideDesk } from '../_desk/side-desk';
import { ClaimsPart } from './claims-part';
import { ClientPart } from './client-part';
import { HeadPart } from './head-part';
import { HistoryPart } from './history-part';
import { InstrumentPart } from './instrument-part';
import { LoosePart } from './loose-part';
import { PartsPart } from './parts-part';
import styles from './ticket.module.css';
import { TicketFoot } from './ticket-foot';
import { useAnchor } from './use-anchor';
import { WorkPart } from './work-part';

interface TicketDeskProps {
  firstRecord: JobRecord;
  firstChanges: readonly Change[];
  currency: string;
}

/** The whole ticket of a job: the film at one side, so that what was said can be pinned to its moment. */
export function TicketDesk({ firstRecord, firstChanges, currency }: TicketDeskProps) {
  return (
    <SideDesk firstRecord={firstRecord} title="Ticket">
      <TicketSheet firstChanges={firstChanges} currency={currency} />
    </SideDesk>
  );
}

function TicketSheet({ firstChanges, currency }: Pick<TicketDeskProps, 'firstChanges' | 'currency'>) {
  useAnchor();
  return (
    <div className={styles.sheet}>
      <HeadPart />
      <LoosePart />
      <WorkPart currency={currency} />
      <PartsPart />
      <ClientPart />
      <InstrumentPart />
      <ClaimsPart />
      <HistoryPart first={firstChanges} />
      <TicketFoot />
    </div>
  );
}
