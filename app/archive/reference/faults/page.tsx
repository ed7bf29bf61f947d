import type { Metadata } from 'next';
import Form from 'next/form';
import { Button, ButtonLink } from '@/app/_parts/button';
import { counted } from '@/app/_parts/words';
import { database } from '@/db/open';
import { faultsAnswer } from '@/lib/archive/store';
import { faultsQuerySchema } from '@/shared/reference';
import { addressWith, askedOf, type SearchParams } from '../_reference/asked';
import { InstrumentChoice } from '../_reference/instrument-choice';
import styles from '../_reference/reference.module.css';
import { ReferencePage } from '../_reference/reference-page';
import { TakeAway } from '../_reference/take-away';
import { FaultCard } from './_faults/fault-card';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Faults and fixes' };

const here = '/archive/reference/faults';

export default async function FaultsPage({ searchParams }: { searchParams: SearchParams }) {
  const { instrument, fault } = await askedOf(searchParams, faultsQuerySchema);
  const query = { instrument, fault, limit: 40, as: 'json' as const };
  const { instruments, jobs, faults, left } = faultsAnswer(database(), query);
  return (
    <ReferencePage here={here}>
      <search>
        <Form action={here} className={styles.ask}>
          <InstrumentChoice instruments={instruments} chosen={instrument} />
          <p className={styles.buttons}>
            <Button type="submit" weight="main">
              Look
            </Button>
            {(instrument !== '' || fault !== '') && <ButtonLink href={here}>Show all</ButtonLink>}
          </p>
        </Form>
      </search>
      <details className={styles.how}>
        <summary>How this table is put together</summary>
        <p>
          A fault is a word of the trade in a job’s title, in an intake or diagnosis marker, in work that was
          found on the way, or in a claim about the instrument. The words of the archive’s question box bring
          different ways of saying it together. Beside it stands the work of the same job: work markers, work
          items that are done, parts that were fitted. It is counted for a fault where the job had that one
          trouble, or where the archive’s list of troubles names it as a cure; a job may count for several.
          The table says what was done, not that it held: the moments show it.
        </p>
      </details>
      <section className={styles.list} aria-labelledby="faults">
        <h2 id="faults" className={styles.head}>
          {faults.length === 0
            ? `No fault is told of in ${counted(jobs, 'job')}`
            : `Faults in ${counted(jobs, 'job')}`}
        </h2>
        <ul className={styles.cards}>
          {faults.map((each) => (
            <FaultCard
              key={`${each.instrument}|${each.word}`}
              fault={each}
              address={
                fault === '' ? addressWith(here, { instrument: each.instrument, fault: each.word }) : null
              }
            />
          ))}
        </ul>
        {left > 0 && (
          <p>{counted(left, 'more fault')} in fewer jobs. Choose an instrument type to see them.</p>
        )}
        {faults.length > 0 && (
          <TakeAway route="/api/archive/reference/faults" parts={{ instrument, fault }} />
        )}
      </section>
    </ReferencePage>
  );
}
