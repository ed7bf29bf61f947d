'use client';

import Link from 'next/link';
import { useState } from 'react';
import type { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { ClashNote } from '@/app/_parts/kept-field-clash';
import { useKeptPick } from '@/app/_parts/kept-field-pick';
import { clientIdSchema } from '@/shared/ids';
import { useDesk } from '../_desk/use-record';
import { ClientChoice } from './client-choice';
import styles from './ticket.module.css';
import { TicketSection } from './ticket-section';
import { stayAt } from './use-anchor';
import { usePatchJob } from './use-keep';

const whoseSchema = clientIdSchema.nullable();

/** Who brought it in. The name stays in the workshop; public texts say the alias. */
export function ClientPart() {
  const { client } = useDesk().record;
  const patch = usePatchJob();
  const [choosing, setChoosing] = useState(false);
  const whose = useKeptPick({
    name: 'clientId',
    schema: whoseSchema,
    value: client?.id ?? null,
    onKeep: async (clientId: z.infer<typeof whoseSchema>, was: z.infer<typeof whoseSchema>) => {
      await patch({ clientId }, { clientId: was });
      setChoosing(false);
      stayAt(document.getElementById('client'));
    },
  });
  return (
    <TicketSection id="client" title="Client">
      {client && (
        <div data-fields="alias" tabIndex={-1} className={`${styles.place} ${styles.client}`}>
          <p>
            <Link href={`/clients/${client.id}`} className={styles.clientName}>
              {client.name}
            </Link>
          </p>
          <p className={styles.fine}>In public texts: {client.alias}</p>
          {client.reach && <p className={styles.reach}>{client.reach}</p>}
          <div className={styles.row}>
            <Button aria-expanded={choosing} onClick={() => setChoosing(!choosing)}>
              Another client
            </Button>
            <Button aria-disabled={whose.busy} onClick={() => void whose.pick(null)}>
              Take off
            </Button>
          </div>
        </div>
      )}
      {(client === null || choosing) && <ClientChoice onChoose={(id) => void whose.pick(id)} />}
      {whose.problem && (
        <p className={styles.warn} role="alert">
          {whose.problem}
        </p>
      )}
      {whose.clash && (
        <ClashNote
          there={client?.name ?? ''}
          onKeepMine={() => void whose.keepMine()}
          onTakeThat={whose.takeThat}
        />
      )}
    </TicketSection>
  );
}
