'use client';

import { useRouter } from 'next/navigation';
import { z } from 'zod';
import { Button, ButtonLink } from '@/app/_parts/button';
import { useDesk } from '../_desk/use-record';
import styles from './ticket.module.css';

/** The ticket on paper, and the way into the bin. */
export function TicketFoot() {
  const { record, change } = useDesk();
  const router = useRouter();
  const { id } = record.job;
  const remove = async () => {
    const told = 'Job deleted; it lies in the bin for 30 days, and its recordings are untouched';
    const gone = await change('DELETE', `/api/jobs/${id}`, undefined, z.looseObject({}), told);
    if (gone) router.push('/');
  };
  return (
    <div className={styles.foot}>
      <ButtonLink href={`/jobs/${id}/print`}>Print the ticket</ButtonLink>
      <ButtonLink href={`/jobs/${id}/hand-over`}>Hand over</ButtonLink>
      <Button weight="alarm" onClick={() => void remove()}>
        Delete the job
      </Button>
    </div>
  );
}
